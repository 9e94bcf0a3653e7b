import { writeFileSync } from "node:fs";
import { schemaFiles } from "./schemaFiles.ts";

for (const { name, text } of schemaFiles())
  writeFileSync(new URL(`../../data/schemas/${name}`, import.meta.url), text);
