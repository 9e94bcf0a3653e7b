import { expect, test } from "vitest";
import { type Ask, pricesOf, type Told } from "../../../components/choices/messages.ts";
import { Desk } from "../../../components/choices/work.ts";
import { surveyOf, textOf } from "../../helpers/worked.ts";

const survey = surveyOf(textOf("demo/school.survey.json"));
const weather = textOf("demo/seattle.csv");
const decide = (change: Partial<Extract<Ask, { kind: "decide" }>> = {}): Ask => ({
  kind: "decide",
  id: 1,
  survey,
  weather,
  budget: null,
  questions: [],
  draws: 30,
  seed: 1,
  ...change,
});

test("a decision comes first, then draws with what they say so far, and the last says that it is", async () => {
  const told: Told[] = [];
  await new Desk((one) => told.push(one)).hear(decide());
  expect(told[0]!.kind).toBe("decided");
  const drawn = told.flatMap((one) => (one.kind === "drawn" ? one : []));
  expect(drawn.find(({ sureness }) => sureness)).toMatchObject({ done: 25, isLast: false });
  expect(drawn.at(-1)).toMatchObject({ done: 30, of: 30, isLast: true });
  expect(drawn.at(-1)!.sureness!.draws).toBe(30);
});

test("draws that are stopped tell honestly how many there were", async () => {
  const told: Told[] = [];
  const desk: Desk = new Desk((one) => {
    told.push(one);
    if (one.kind === "drawn" && one.done === 10) void desk.hear({ kind: "stop" });
  });
  await desk.hear(decide({ draws: 500 }));
  const last = told.at(-1)!;
  expect(last).toMatchObject({ kind: "drawn", isLast: true });
  if (last.kind !== "drawn") return;
  expect(last.done).toBeLessThan(30);
  expect(last.sureness!.draws).toBe(last.done);
});

test("a changed quote gives the rows that a new decision would give", async () => {
  const measures = survey.measures!.map((measure) =>
    measure.id === "mend-cistern" ? { ...measure, cost: 9000 } : measure,
  );
  const changed = { ...survey, measures };
  const told: Told[] = [];
  const desk = new Desk((one) => told.push(one));
  await desk.hear({ kind: "ready", survey, weather, budget: null });
  expect(told).toEqual([]);
  await desk.hear({ kind: "reprice", id: 2, prices: pricesOf(changed), budget: null });
  await desk.hear(decide({ id: 3, survey: changed, draws: 0 }));
  const [repriced, decided] = told;
  if (repriced?.kind !== "repriced" || decided?.kind !== "decided") throw new Error("told something else");
  for (const [part, rows] of Object.entries(repriced.rows))
    expect(decided.document[part as keyof typeof decided.document], part).toEqual(rows);
});

test("a figure opens at the prices last asked of, and what draws say once they are made", async () => {
  const measures = survey.measures!.map((measure) =>
    measure.id === "mend-cistern" ? { ...measure, cost: 9000 } : measure,
  );
  const told: Told[] = [];
  const desk = new Desk((one) => told.push(one));
  const explain = (id: number, at: string): Ask => ({ kind: "explain", id, at, units: "metric", lang: "en" });
  await desk.hear({ kind: "ready", survey, weather, budget: null });
  await desk.hear(explain(2, "choices/cost/mend-cistern"));
  await desk.hear({ kind: "reprice", id: 3, prices: pricesOf({ ...survey, measures }), budget: null });
  await desk.hear(explain(4, "choices/cost/mend-cistern"));
  await desk.hear(explain(5, "choices/sure/give-up/p50"));
  const workings = told.flatMap((one) => (one.kind === "working" ? one : []));
  expect(workings.map(({ id, working }) => [id, working?.value])).toEqual([
    [2, 180],
    [4, 9000],
    [5, undefined],
  ]);
  const drawing = new Desk((one) => told.push(one));
  await drawing.hear(decide({ id: 6, draws: 6 }));
  await drawing.hear(explain(7, "choices/sure/give-up/p50"));
  const last = told.at(-1);
  expect(last?.kind === "working" && last.working?.given.length).toBeGreaterThan(1);
});

test("faults of survey and record are told, every one with its path", async () => {
  const told: Told[] = [];
  const desk = new Desk((one) => told.push(one));
  await desk.hear(decide({ survey: { ...survey, beds: [{ ...survey.beds[0]!, area_m2: -4 }] } }));
  await desk.hear(decide({ weather: "date,rain_mm\nnever,1\n" }));
  expect(told.map(({ kind }) => kind)).toEqual(["faults", "faults"]);
  expect(told[0]).toHaveProperty("faults.0.path", "beds[0].area_m2");
});
