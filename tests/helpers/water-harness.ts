import { fileURLToPath } from "node:url";
import { type Harness, harness } from "./harness.ts";

const root = fileURLToPath(new URL("../components/water/harness", import.meta.url));

/**
 * The screens of thirst and of tanks on a page of their own.
 * @param surveys documents by the name that they are asked for
 * @param records weather as CSV, likewise
 */
export function waterHarness(
  surveys: Readonly<Record<string, unknown>>,
  records: Readonly<Record<string, string>>,
  port = 0,
): Promise<Harness> {
  return harness(
    root,
    (app) => {
      app.get("/surveys/:name", (c) => c.json(surveys[c.req.param("name")] as object));
      app.get("/records/:name", (c) => c.text(records[c.req.param("name")] ?? ""));
    },
    port,
  );
}
