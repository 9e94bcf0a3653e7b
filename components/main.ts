import "./frame/frame.ts";
