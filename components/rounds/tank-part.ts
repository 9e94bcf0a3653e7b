import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from "lit";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { orderWords, tankPage as words } from "../../src/words/en/rounds-tanks.ts";
import type { Formatter } from "../../src/words/format.ts";
import { roundAt } from "../../src/words/round-at.ts";
import { saidOf, type WeekSaidAloud } from "../../src/words/rounds-said.ts";
import { fills } from "../charts/textures.ts";
import type { Explain } from "../figure/figure.ts";
import { figure, spoken } from "./figures.ts";
import { withMoved, withoutOrder } from "./order.ts";
import type { BedFacts } from "./week-days.ts";

type Tank = RoundsWeek["tanks"][number];

export interface TankParts {
  week: RoundsWeek;
  aloud: WeekSaidAloud;
  explain: Explain | undefined;
  survey: Survey;
  beds: ReadonlyMap<string, BedFacts>;
  say: Formatter;
  width: number;
  change(survey: Survey, words: string): void;
}

/** Each tank as it stands, how long it lasts, and who gets what of it. */
export function tanksPart(parts: TankParts): TemplateResult | typeof nothing {
  const { week } = parts;
  if (week.tanks.length === 0) return nothing;
  return html`<section class="part">
    <h3 class="ruled">${words.heading}</h3>
    ${week.tanks.map((tank) => oneTank(parts, tank))}
  </section>`;
}

function oneTank(parts: TankParts, tank: Tank): TemplateResult {
  const { survey, say, beds, aloud, explain } = parts;
  const { name, capacity_L } = survey.tanks.find(({ id }) => id === tank.id) ?? {
    name: tank.id,
    capacity_L: 0,
  };
  const short = tank.mainsToKeepAll_L >= 1;
  return html`<div class="tank">
    ${section(tank, name, capacity_L)}
    <div class="tank-words">
      <p class="tank-sentence">${spoken(aloud[saidOf.tank(tank.id)] ?? [tank.sentence], explain)}</p>
      ${tank.daysLeft ? daysLine(tank.daysLeft, Math.min(parts.width - 110, 460)) : nothing}
      ${
        tank.rations.length > 0
          ? html`<h4 class="small-head">${words.who}</h4>
              <ol class="rations">
                ${tank.rations.map(
                  (ration) => html`<li>
                    <span>${beds.get(ration.id)?.name ?? ration.id}</span>
                    ${rationBar(ration, beds.get(ration.id)?.name ?? ration.id)}
                    <span class="quiet">${figure(roundAt.ration(tank.id, ration.id), words.ration(ration, say), explain)}</span>
                  </li>`,
                )}
              </ol>`
          : nothing
      }
      ${
        short
          ? html`<p class="aside">${spoken(
              words.keepAll({ at: roundAt.tank(tank.id, "keep"), text: say.litres(tank.mainsToKeepAll_L) }),
              explain,
            )}</p>`
          : nothing
      }
    </div>
  </div>`;
}

/** A tank cut open: its wall, the water, and the outlet below which nothing comes out. */
function section({ level_L, usable_L }: Tank, name: string, capacity_L: number): SVGTemplateResult {
  const [wide, tall] = [78, 96];
  const share = level_L === null || capacity_L <= 0 ? 0 : Math.min(1, level_L / capacity_L);
  const dead =
    level_L === null || usable_L === null || capacity_L <= 0 ? 0 : (level_L - usable_L) / capacity_L;
  const top = 6 + (1 - share) * (tall - 10);
  const outlet = tall - 4 - dead * (tall - 10);
  return svg`<svg class="section" viewBox="0 0 ${wide} ${tall}" width=${wide} height=${tall} role="img" aria-label=${words.about(name, share)}>
    ${share > 0 ? svg`<rect x="4" y=${top} width=${wide - 8} height=${Math.max(0, Math.min(outlet, tall - 4) - top)} fill=${fills.tank}></rect>` : svg``}
    ${dead > 0 ? svg`<rect x="4" y=${Math.max(outlet, top)} width=${wide - 8} height=${tall - 4 - Math.max(outlet, top)} fill=${fills.below}></rect>` : svg``}
    <path class="wall" d="M3,4 V${tall - 3} H${wide - 3} V4"></path>
    ${level_L === null ? svg`<text class="tick" x=${wide / 2} y=${tall / 2} text-anchor="middle">?</text>` : svg``}
  </svg>`;
}

/** Days left on a line: from a dry year's to a wet one's, the middle one's marked. */
function daysLine({ low, middle, high }: NonNullable<Tank["daysLeft"]>, width: number): SVGTemplateResult {
  const most = [7, 14, 28, 60, 120, 180].find((days) => days >= high) ?? 180;
  const x = (days: number) => 8 + (Math.min(days, most) / most) * (width - 30);
  const step = most / (most === 180 || most === 120 || most === 60 ? 4 : 7);
  const ticks = Array.from({ length: Math.round(most / step) + 1 }, (_, k) => Math.round(k * step));
  return svg`<svg viewBox="0 0 ${width} 46" width=${width} height="46" role="img" aria-label=${words.daysAbout(Math.floor(low), Math.floor(middle), Math.floor(high))}>
    <line class="ground thin" x1=${x(0)} x2=${x(most)} y1="22" y2="22"></line>
    ${ticks.map((day) => svg`<line class="hair" x1=${x(day)} x2=${x(day)} y1="18" y2="26"></line><text class="tick" x=${x(day)} y="42" text-anchor="middle">${day}</text>`)}
    <line class="days-span" x1=${x(low)} x2=${Math.max(x(high), x(low) + 1)} y1="22" y2="22"></line>
    <path class="wall" d="M${x(low)},13 V31 M${x(high)},13 V31"></path>
    <circle class="dot" cx=${x(middle)} cy="22" r="5"></circle>
  </svg>
  `;
}

function rationBar(
  { asks_L, fromTank_L, fromMains_L }: Tank["rations"][number],
  bed: string,
): SVGTemplateResult {
  const [wide, tall] = [180, 14];
  const part = (L: number) => (asks_L > 0 ? (L / asks_L) * (wide - 2) : 0);
  const tank = part(fromTank_L);
  return svg`<svg viewBox="0 0 ${wide} ${tall}" width=${wide} height=${tall} role="img" aria-label=${words.rationAbout(bed)}>
    <rect x="1" y="1" width=${tank} height=${tall - 2} fill=${fills.tank}></rect>
    <rect x=${1 + tank} y="1" width=${part(fromMains_L)} height=${tall - 2} fill=${fills.mains}></rect>
    <rect class="bar hollow" x="1" y="1" width=${wide - 2} height=${tall - 2}></rect>
  </svg>`;
}

/** The order of who goes first, moved a place at a time. */
export function orderPart({ week, survey, beds, change }: TankParts): TemplateResult {
  const served = week.order.filter(({ id }) => beds.get(id)?.supply !== "none");
  const ids = served.map(({ id }) => id);
  const hasOwn = survey.beds.some(({ priority }) => priority !== undefined);
  const move = (id: string, by: -1 | 1) => () =>
    change(withMoved(survey, ids, id, by), orderWords.changed(beds.get(id)!.name));
  return html`<section class="part">
    <h3 class="ruled">${orderWords.heading}</h3>
    <p class="key">${orderWords.lead}</p>
    <ol class="order">
      ${served.map(({ id, sentence }, k) => {
        const { name } = beds.get(id)!;
        return html`<li>
          <span><strong>${name}</strong> <span class="quiet">${sentence}</span></span>
          <span class="moves screen-only">
            <button type="button" class="plain" ?disabled=${k === 0} aria-label=${orderWords.earlier(name)} @click=${move(id, -1)}>${orderWords.earlierShort}</button>
            <button type="button" class="plain" ?disabled=${k === served.length - 1} aria-label=${orderWords.later(name)} @click=${move(id, 1)}>${orderWords.laterShort}</button>
          </span>
        </li>`;
      })}
    </ol>
    ${
      hasOwn
        ? html`<p class="screen-only"><button type="button" class="plain" @click=${() => change(withoutOrder(survey), orderWords.backToOurs)}>${orderWords.ours}</button></p>`
        : nothing
    }
  </section>`;
}
