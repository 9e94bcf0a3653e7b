import "../src/survey/without-compiling.ts";

import "./frame/frame.ts";
