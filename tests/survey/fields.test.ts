import { expect, test } from "vitest";
import * as z from "zod";
import { surveySchema } from "../../src/survey/schema/survey.ts";
import * as words from "../../src/survey/words.ts";
import { fieldName, subject } from "../../src/words/en/fields.ts";

function bare(schema: unknown): unknown {
  return schema instanceof z.ZodOptional ? bare(schema.unwrap()) : schema;
}

function paths(schema: unknown, path: string): string[] {
  const inner = bare(schema);
  if (inner instanceof z.ZodArray) return paths(inner.element, `${path}[0]`);
  if (!(inner instanceof z.ZodObject)) return [path];
  const fields = Object.entries(inner.shape).flatMap(([name, field]) =>
    paths(field, path ? `${path}.${name}` : name),
  );
  return path === "" ? fields : [path, ...fields];
}

test("every field of a survey has a name in plain words", () => {
  const all = paths(surveySchema, "");
  expect(all.length).toBeGreaterThan(250);
  for (const path of all) {
    const name = subject(path);
    expect(name, path).toMatch(/^[A-Z]/);
    expect(name, path).not.toMatch(/_|[a-z]{2}[A-Z]/);
  }
});

test("one word may name different fields by where it stands", () => {
  expect(fieldName("beds[2].area_m2")).toBe("Bed area");
  expect(fieldName("roofs[0].area_m2")).toBe("Roof area");
  expect(fieldName("measures[3].addTank.capacity_L")).toBe("Tank capacity");
  expect(subject("beds[2]")).toBe("A bed");
});

test("the lists of words name nothing twice", () => {
  for (const list of Object.values(words)) expect(new Set(list).size).toBe(list.length);
  expect(words.textures).toHaveLength(13);
});
