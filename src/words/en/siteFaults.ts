/** What is said of a site's file that is refused. */
import { count } from "./count.ts";
import type { FaultWriter } from "./shapeFaults.ts";
import { foundWords } from "./wanted.ts";

const number = (value: unknown) => count(Number(value));

export const siteFaultWords: Readonly<Record<string, FaultWriter>> = {
  "site-not-fields": (facts) =>
    `The file must be a site: a group of fields in curly brackets. ${foundWords(facts)}`,
  "site-format": (facts) =>
    facts.found === "grounds-survey"
      ? 'This is a survey alone. Send it as { "survey": … }, or bring it in as a new site.'
      : `The format must be "${facts.wanted}". ${foundWords(facts)}`,
  "site-version-newer": ({ found, known }) =>
    `This file is of version ${found}; this program reads up to version ${known}. Update the program, or write the file again where it was made, as version ${known}.`,
  "site-version": (facts) =>
    `The version must be the number ${facts.wanted}, without quotation marks. ${foundWords(facts)}`,
  "site-after": ({ found, number: at }) =>
    `The version before version ${number(at)} must be one listed before it. You entered ${number(found)}.`,
  "site-current": ({ found, most }) =>
    `The version at hand must be one of the ${number(most)} that are listed. You entered ${number(found)}.`,
};
