import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { schemaFiles } from "../../src/cli/schemaFiles.ts";

const folder = new URL("../../data/schemas/", import.meta.url);

test.each(schemaFiles())(
  "data/schemas/$name is as the code makes it (npm run schemas writes it)",
  ({ name, text }) => {
    expect(readFileSync(new URL(name, folder), "utf8")).toBe(text);
  },
);

test.each(schemaFiles())("$name says its draft, its name, and what each field is", ({ name, text }) => {
  const schema = JSON.parse(text);
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.$id).toBe(name);
  expect(schema.title).toMatch(/^Grounds /);
  // a log is a list of entries, the others are documents
  const isList = schema.type === "array";
  expect((isList ? schema.items : schema).additionalProperties).toBe(false);
  const fields = everyField(schema);
  expect(fields.length).toBeGreaterThan(isList ? 8 : 40);
  for (const [path, field] of fields) expect(field.description, path).toMatch(/\w/);
});

/** The unit that a field's name ends in is said in its description. */
const unitOfName: Readonly<Record<string, RegExp>> = {
  _m2: /\(m²\)/,
  _mm: /\((mm|mm a day)\)/,
  _L: /\(L\)/,
  _c: /\(°C\)/,
  _pct: /\(%\)/,
  _deg: /\(°\)/,
  _L_min: /\(L\/min\)/,
};

test("a field whose name ends in a unit says that unit", () => {
  for (const { text } of schemaFiles())
    for (const [path, field] of everyField(JSON.parse(text))) {
      const unit = Object.entries(unitOfName).find(([ending]) => path.endsWith(ending));
      if (unit && field.type !== "object") expect(field.description, path).toMatch(unit[1]);
    }
});

interface Field {
  type?: string;
  description?: string;
  properties?: Record<string, Field>;
  items?: Field;
}

function everyField(schema: Field, path = ""): [string, Field][] {
  const own = Object.entries(schema.properties ?? {}).map(([name, field]): [string, Field] => [
    `${path}.${name}`,
    field,
  ]);
  const inner = own.flatMap(([name, field]) => everyField(field, name));
  return [...own, ...inner, ...(schema.items ? everyField(schema.items, `${path}[]`) : [])];
}
