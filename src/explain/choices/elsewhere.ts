import type { WorkedOut } from "../../report/work-out.ts";
import { weatherName } from "../../words/en/choices-reasons.ts";
import { choicesTitles as titles } from "../../words/en/choices-workings.ts";
import { isAddress } from "../address.ts";
import { explain } from "../explain.ts";
import type { Given, Working } from "../working.ts";
import { type Asked, address, setAt } from "./book.ts";
import { setName } from "./sets.ts";

/** `choices/with/KEY/…`, every figure of the grounds with a set of measures done, by its own address. */
export function withWorking(asked: Asked): Working | null {
  const [key = "", ...below] = asked.rest;
  const of = setAt(asked.book, key, undefined);
  if (!of) return null;
  const worked = asked.book.ways.with(of.context, of.set);
  return opened(asked, worked, ["with", key], below, (title) =>
    titles.with(title, setName({ ...of, by: "habit" })),
  );
}

/** `choices/under/CODE/…`, every figure of the grounds under other weather, by its own address. */
export function underWorking(asked: Asked): Working | null {
  const [code = "", ...below] = asked.rest;
  const { book } = asked;
  const question = book.questions.find((one) => one.code === code);
  if (!question) return code === "record" ? recorded(asked, below) : null;
  const worked = book.ways.under(book.context, question);
  return opened(asked, worked, ["under", code], below, (title) => titles.under(title, weatherName(code)));
}

function recorded(asked: Asked, below: readonly string[]): Working | null {
  return opened(asked, asked.book.context.worked, ["under", "record"], below, (title) => title);
}

/** A working of another run of the grounds; what it leads to is of that run too. */
function opened(
  { say, at }: Asked,
  worked: WorkedOut,
  way: readonly [string, string],
  below: readonly string[],
  titled: (title: string) => string,
): Working | null {
  const inner = below.join("/");
  const working = isAddress(inner) ? explain(worked, inner, say) : null;
  if (!working) return null;
  const led = (given: Given): Given =>
    given.at === undefined ? given : { ...given, at: address(way[0], [way[1], given.at]) };
  return { ...working, at, title: titled(working.title), given: working.given.map(led) };
}
