import { join } from "node:path";
import { createApp } from "../../src/server/app.ts";
import { readDemo, realParts } from "../../src/server/real-parts.ts";
import { root } from "../structure/sources.ts";
import { port } from "./stand-in.ts";

/** The server as it runs, without a page. */
export const realApp = createApp(realParts(root, () => port, []));

export const demo = readDemo(root);

export const scenarios = join(root, "tests/scenarios");
