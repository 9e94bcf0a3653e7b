import { netPresentValue, noOutlay } from "../engine/money.ts";
import { enoughSize } from "../engine/size-curve.ts";
import { perYear } from "../engine/years.ts";
import { measuresApart } from "../survey/measures/apart.ts";
import { outlayOf } from "../survey/measures/costs.ts";
import { type Proposal, proposals, type RunFacts } from "../survey/measures/propose.ts";
import type { ChoicesContext } from "./choices-context.ts";
import { beside, with_ } from "./choices-measures.ts";
import type { GroundsChoices } from "./choices-schema.ts";
import { valuerOf } from "./plan-worth.ts";

type ProposalRow = GroundsChoices["proposals"][number];

/** Less than this by itself is not worth a line: 200 L a year. */
const leastSaved_kL = 0.2;

/** A decision's context with all that is proposed among what may be chosen, and nothing of it chosen. */
export interface ProposedContext {
  proposed: Proposal[];
  context: ChoicesContext;
}

export function proposedContext(context: ChoicesContext, watered: RunFacts["watered"]): ProposedContext {
  const { worked, measures, money } = context;
  const proposed = proposals(worked.survey, { watered, tanks: tankFacts(context) });
  const added = proposed.flatMap(({ measure }) => (measure ? { ...measure, chosen: false } : []));
  const all = [...measures, ...added];
  const survey = { ...worked.survey, measures: all };
  const within: ChoicesContext = {
    ...context,
    worked: { ...worked, survey },
    measures: all,
    valuer: valuerOf(survey, all, worked.ready.frame),
    plan: Uint8Array.from(all, (_, k) => context.plan[k] ?? 0),
    outlays: all.map((measure) => outlayOf(measure, money)),
    apart: measuresApart(all),
  };
  return { proposed, context: within };
}

/** What might do something here, with what it saves by itself and after all that is chosen. */
export function proposalRows({ proposed, context }: ProposedContext): ProposalRow[] {
  const { measures, valuer, money } = context;
  const none = new Uint8Array(measures.length);
  const saved = (set: Uint8Array) => valuer.saved_kL_year(set, "need");
  const rows = proposed.map((proposal): ProposalRow => {
    const place = proposal.measure ? measures.findIndex(({ id }) => id === proposal.measure!.id) : -1;
    if (place < 0) return rowOf(proposal, null, null, null);
    const before = beside(context, place);
    const after = with_(before, place);
    const { tariff } = money;
    const worth =
      tariff &&
      valuer.saved_money_year(after, "need", tariff) - valuer.saved_money_year(before, "need", tariff);
    return rowOf(
      proposal,
      saved(with_(none, place)) - saved(none),
      saved(after) - saved(before),
      worth && netPresentValue(noOutlay, worth, context.outlook),
    );
  });
  return bestOfEach(rows).filter(
    ({ measure, alone_kL_year }) => measure === null || alone_kL_year! >= leastSaved_kL,
  );
}

function rowOf(
  { reason, measure }: Proposal,
  alone_kL_year: number | null,
  after_kL_year: number | null,
  worthUpTo: number | null,
): ProposalRow {
  const { code, ...facts } = reason;
  return { code, facts, measure: measure && { ...measure }, alone_kL_year, after_kL_year, worthUpTo };
}

/** A roof goes to one tank: the one to which it brings most. */
function bestOfEach(rows: readonly ProposalRow[]): ProposalRow[] {
  const isBetter = (other: ProposalRow, row: ProposalRow) =>
    other.code === row.code &&
    other.facts.roof !== undefined &&
    other.facts.roof === row.facts.roof &&
    other.alone_kL_year! > row.alone_kL_year!;
  return rows.filter((row) => !rows.some((other) => isBetter(other, row)));
}

function tankFacts({ valuer, worked, measures }: ChoicesContext): RunFacts["tanks"] {
  const { frame } = worked.ready;
  return valuer.evaluator.tanks(new Uint8Array(measures.length), "need").flatMap((inputs) => {
    const { group } = inputs;
    const outcome = worked.outcome.tanks.find(({ id }) => id === group.id);
    if (!group.inUse || !outcome) return [];
    const [first] = group.members;
    const { before, after } = inputs.draws();
    return {
      tank: group.id,
      capacity_L: first!.capacity_L,
      enough_L: group.members.length > 1 ? 0 : enoughSize(inputs, group.id, frame).capacity_L,
      spill_kL_year: perYear(outcome.spill_L, worked.outcome.days) / 1000,
      draws: before.length + after.length > 0,
    };
  });
}
