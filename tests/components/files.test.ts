import { expect, test } from "vitest";
import { kindOf, LIMIT_BYTES, readPutIn } from "../../components/app/files.ts";
import { textOf } from "../helpers/worked.ts";

test("what a file is, is told by what it holds", () => {
  expect(kindOf(textOf("demo/school.survey.json"))).toBe("survey");
  expect(kindOf(textOf("demo/seattle.csv"))).toBe("weather");
  expect(kindOf("\uFEFF  {\n")).toBe("survey");
  expect(kindOf("date;rain\n2012-01-01;3,5")).toBe("weather");
});

test("a picture, a letter and nothing are neither", () => {
  expect(kindOf("\u0089PNG\u0000,\u0000")).toBeNull();
  expect(kindOf("Dear gardener")).toBeNull();
  expect(kindOf("")).toBeNull();
});

test("a file chosen as a survey is read as one whatever it looks like", async () => {
  const put = await readPutIn(new File(["Dear gardener"], "letter.json"), "survey");
  expect(put).toEqual({ of: "survey", name: "letter.json", text: "Dear gardener" });
});

test("a file past the limit is refused before it is read", async () => {
  const large = { name: "big.csv", size: LIMIT_BYTES + 1, text: () => Promise.reject(new Error("read")) };
  expect(await readPutIn(large as unknown as File)).toEqual({ name: "big.csv", why: "too-large" });
});
