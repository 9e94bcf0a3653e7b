import { describe, expect, test } from "vitest";
import { type Block, briefOf } from "../../src/report/brief.ts";
import { briefHtml, briefMarkdown } from "../../src/report/brief-forms.ts";
import { choiceCautionCodes } from "../../src/report/choices-cautions.ts";
import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import { cautionCodes } from "../../src/survey/cautions.ts";
import { briefWords } from "../../src/words/en/choices.ts";
import { choiceCautionSentence, proposalsWithWords } from "../../src/words/en/choices-reasons.ts";
import { blocksOf, decisionOf } from "../helpers/decision.ts";
import { recordAt, surveyOf, textOf } from "../helpers/worked.ts";

const survey = () => surveyOf(textOf("demo/school.survey.json"));
const record = recordAt("demo/seattle.csv");
const demo = decisionOf(survey(), record, { draws: 20 });

/** Sentences of a part of the brief. */
function under(blocks: readonly Block[], heading: string): string[] {
  const from = blocks.findIndex((block) => block.kind === "heading" && block.text === heading);
  const rest = blocks.slice(from + 1);
  const to = rest.findIndex((block) => block.kind === "heading" || block.kind === "table");
  return rest
    .slice(0, to < 0 ? undefined : to)
    .flatMap((block) => ("text" in block ? [block.text] : "items" in block ? block.items : []));
}

const changed = (change: (choices: GroundsChoices) => void): Block[] => {
  const copy = structuredClone(demo);
  change(copy);
  return blocksOf(copy);
};

describe("the brief", () => {
  const blocks = blocksOf(demo);

  test("makes no claim without its number", () => {
    const claims = ["The answer", "Tanks and roofs", "The best next steps", "What this does not know"];
    for (const heading of claims) {
      const said = under(blocks, heading);
      expect(said.length, heading).toBeGreaterThan(0);
      for (const sentence of said) expect(sentence).toMatch(/\d/);
    }
  });

  test("says the same in gallons and inches where the reader has them, and no claim loses its number", () => {
    const us = briefOf(demo, briefWords(demo.currency, "us"), {
      bed: (id) => id,
      tank: (id) => id,
      bedAt: (place) => `bed ${place}`,
    });
    const texts = us
      .filter((block) => !("text" in block && /quoted|worth it, or/.test(block.text)))
      .flatMap((block) => ("text" in block ? [block.text] : "items" in block ? block.items : block.columns));
    const names = demo.measures.map(({ name }) => name);
    const bare = texts.map((text) => names.reduce((rest, name) => rest.replaceAll(name, ""), text));
    expect(bare.filter((text) => /\bkL\b|\bmm\b|°C/.test(text))).toEqual([]);
    expect(us).toHaveLength(blocks.length);
    expect(under(us, "The answer").every((text) => /\d/.test(text))).toBe(true);
    expect(under(us, "The answer").join(" ")).toMatch(/could fall from [\d,]+ to [\d,]+ gallons a year/);
  });

  test("says first where gardens get less than they need", () => {
    expect(under(blocks, "The answer")[0]).toMatch(/less than they need today.*before any saving/);
  });

  test("asks its question, then answers in words before figures stand in a table", () => {
    const kinds = blocks.map(({ kind }) => kind);
    expect(kinds.slice(0, 3)).toEqual(["title", "question", "heading"]);
    expect(kinds.indexOf("table")).toBeGreaterThan(kinds.indexOf("paragraph"));
  });

  test("says plainly of each tank that does not pay that it is not worth it", () => {
    const said = under(blocks, "Tanks and roofs");
    for (const { name, worth, change } of demo.measures)
      if (["addTank", "resizeTank", "useTank", "connectRoof"].includes(change) && worth === "does-not-pay")
        expect(said.some((sentence) => sentence.startsWith(`${name}: not worth it`))).toBe(true);
    expect(said.some((sentence) => /not worth it/.test(sentence))).toBe(true);
  });

  test("says so too when a tank is worth it", () => {
    const said = under(
      changed(({ measures }) => {
        const tank = measures.find(({ change }) => change === "resizeTank")!;
        Object.assign(tank, { worth: "pays", npv: 900 });
      }),
      "Tanks and roofs",
    );
    expect(said[1]).toMatch(/: worth it\. .* \$900 more than it costs/);
  });

  test("gives three steps, the free one first, and no tank among them that does not pay", () => {
    const steps = under(blocks, "The best next steps");
    expect(steps).toHaveLength(3);
    expect(steps[0]).toMatch(/nothing to buy/);
    const unpaid = demo.measures.filter(({ worth }) => worth !== "pays").map(({ name }) => name);
    for (const name of unpaid) expect(steps.join(" ")).not.toContain(name);
  });

  test("says of a measure not worth its money that it is not, where no better step is left", () => {
    const steps = under(
      changed((choices) => {
        choices.proposals = [];
        choices.best = choices.frontier[0]!;
      }),
      "The best next steps",
    );
    expect(steps[1]).toMatch(/is not worth its \$/);
  });

  test("calls sets that cannot be told apart a draw", () => {
    const draw = under(
      changed(({ spread }) => {
        Object.assign(spread!, { isDraw: true });
        spread!.chance[0]![1] = 0.6;
      }),
      "The answer",
    );
    expect(draw.at(-1)).toMatch(/are a draw: the first does better in 60 of 100 draws/);
    expect(under(blocks, "The answer").join(" ").includes("draw:")).toBe(demo.spread!.isDraw);
  });

  test("claims no saving where there is none", () => {
    const said = under(
      changed(({ mains }) => {
        mains.today_kL_year = mains.plan_kL_year - 10;
      }),
      "The answer",
    ).join(" ");
    expect(said).toMatch(/there is no saving to claim/);
    expect(said).not.toMatch(/could fall/);
  });

  test("claims no saving from what is not known of today: need and plan stand side by side", () => {
    const unwatched = survey();
    for (const bed of unwatched.beds) delete bed.watering.habit;
    const choices = decisionOf(unwatched, record);
    const said = under(blocksOf(choices), "The answer").join(" ");
    expect(said).toMatch(/is not known, so no saving is claimed: watered to need they take [\d,]+ kL/);
    expect(said).not.toMatch(/could fall|less than today|come from watering to need/);
  });

  test("names what it does not know, and how long the record is", () => {
    const said = under(blocks, "What this does not know").join(" ");
    expect(said).toMatch(/hedge/);
    expect(said).toMatch(/4 whole years/);
    expect(under(blocksOf({ ...demo, spread: undefined }), "What this does not know").join(" ")).toMatch(
      /nothing was drawn/,
    );
  });

  test("names what is for the licensed, without sending a committee on to a roof", () => {
    const said = under(blocks, "What must be licensed, permitted or minded").join(" ");
    for (const matter of [
      /footing/,
      /permit/,
      /backflow/,
      /electrician/,
      /verflow/,
      /asbestos/,
      /health authority/,
      /mosquito/,
    ])
      expect(said).toMatch(matter);
  });
});

describe("its forms", () => {
  test("Markdown and HTML hold the same sentences", () => {
    const blocks = blocksOf(demo);
    const html = briefHtml(blocks, "en");
    for (const block of blocks)
      if ("text" in block)
        expect(html).toContain(block.text.replaceAll("'", "&#39;").replaceAll('"', "&quot;"));
    expect(briefMarkdown(blocks).startsWith("# ")).toBe(true);
  });

  test("HTML asks for nothing from anywhere", () => {
    expect(briefHtml(blocksOf(demo), "en")).not.toMatch(/https?:|src=|<script|@import|url\(/);
  });

  test("names are words and never markup", () => {
    const blocks = changed(({ measures }) => {
      measures[0]!.name = "<b>| *Mend* |</b>";
    });
    expect(briefHtml(blocks, "en")).not.toContain("<b>");
    expect(briefMarkdown(blocks)).toContain("\\<b\\>\\| \\*Mend\\* \\|");
  });
});

test("every caution and every reason has its sentence", () => {
  for (const code of choiceCautionCodes) expect(choiceCautionSentence(code)).toMatch(/\w{3}/);
  for (const { code } of demo.proposals) expect(proposalsWithWords).toContain(code);
  expect(cautionCodes.length).toBeGreaterThan(0);
});
