import { html } from "lit";
import { tracedPerimeter_m } from "../../../src/survey/measuring/plan.ts";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { cornersOf } from "../../../src/survey/measuring/ways-areas.ts";
import { errorOfReading } from "../../../src/tables/reading-errors.ts";
import { traceWords } from "../../../src/words/en/walk-trace.ts";
import { type Entry, withTexts } from "../entry.ts";
import { figureSaid } from "../said.ts";
import type { Traced } from "../trace/state.ts";
import type { Aid, AidProps } from "./aid.ts";
import { valueNamed } from "./values.ts";
import "../screens/later.ts";

/** How near a point can be set on a plan, px of its picture: a finger on a screen a third as wide. Ours. */
export const pointError_px = 3;

/** What is traced, in an entry of the plan's way: its blanks are known, known-drawn, point-error, corner. */
export function tracedIn(entry: Entry, term: number): Corner[] {
  const texts = entry.terms[term]?.texts[3] ?? [];
  return cornersOf(texts.filter((text) => text !== "").map(Number));
}

/** An entry with what is marked on the plan. */
export function withTraced(entry: Entry, term: number, { known, corners }: Traced): Entry {
  const round = (value: number) => String(Math.round(value * 10) / 10);
  const [one, other] = known;
  const drawn = one && other ? round(Math.hypot(one[0] - other[0], one[1] - other[1])) : "";
  const flat = corners.flat().map(round);
  const set = (next: Entry, slot: number, texts: string[]) => withTexts(next, term, slot, texts);
  return set(set(set(entry, 1, [drawn]), 2, [String(pointError_px)]), 3, flat.length > 0 ? flat : [""]);
}

/** Tracing is fetched when somebody traces. */
const loadPlan = () => import("../trace/plan-panel.ts");

export const planAid: Aid = {
  fills: ["known-drawn", "point-error", "corner"],
  show: (props) => {
    const { walk, stop, entry, term, tell } = props;
    return html`<gwb-walk-later .load=${loadPlan} .back=${() => walk.go("round")}
        ><gwb-plan-panel
          .walk=${walk}
          .stop=${stop}
          .corners=${tracedIn(entry, term)}
          .metresPerPixel=${scaleOf(props)}
          @trace=${(event: CustomEvent<{ traced: Traced }>) => tell(withTraced(entry, term, event.detail.traced))}
        ></gwb-plan-panel
      ></gwb-walk-later>
      ${perimeter(props)}`;
  },
};

function scaleOf({ walk, entry, term }: AidProps): number | null {
  const known_m = valueNamed(entry, term, "known", walk.typed);
  const known_px = valueNamed(entry, term, "known-drawn", walk.typed);
  return known_m && known_px ? known_m / known_px : null;
}

function perimeter({ walk, entry, term, outcome }: AidProps) {
  const known = valueNamed(entry, term, "known", walk.typed);
  const drawn = valueNamed(entry, term, "known-drawn", walk.typed);
  if (!outcome || "impossible" in outcome || !known || !drawn) return "";
  const around = tracedPerimeter_m(tracedIn(entry, term), {
    known_m: { figure: known, standardError: errorOfReading("tape", known) },
    known_px: drawn,
    point_px: pointError_px,
  });
  return html`<p class="note">${traceWords.around(figureSaid(walk, around, "m"))}</p>`;
}
