import { banOnTank } from "../../engine/mains-ban.ts";
import { total_L } from "../../engine/tally.ts";
import { perYear } from "../../engine/years.ts";
import { bedsOnRain, lookedAt, withRoof } from "../../report/choices-sizes.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import { amount } from "../say.ts";
import type { Working } from "../working.ts";
import { type Asked, byOurs, ofRun, sheetOf } from "./book.ts";

/** `choices/ban/BED/rain/short|dry` and `choices/ban/BED/TANK/LITRES/short|dry`: a bed while the mains are banned. */
export function banWorking(asked: Asked): Working | null {
  const [id, tank, ...rest] = asked.rest;
  const { context } = asked.book;
  const isRain = tank === "rain";
  const bed = isRain
    ? bedsOnRain(context).find((one) => one.id === id)
    : onTank(asked, tank, Number(rest[0])).find((one) => one.id === id);
  const what = rest[isRain ? 0 : 1];
  if (!bed || (what !== "short" && what !== "dry")) return null;
  const { name } = context.worked.survey.beds.find((one) => one.id === id)!;
  const on = isRain ? parts.onRain : parts.onTank(amount(Number(rest[0]), "L", asked.say));
  const { days } = context.worked.weather.calendar;
  const sheet = sheetOf(asked);
  if (what === "dry")
    sheet.step("longestDry", { dryDays: ofRun(bed.longestDry_days, parts.banRun(on)) }, bed.longestDry_days);
  else
    sheet.step(
      "stressYear",
      { stressDays: ofRun(bed.stressDays, parts.banRun(on)), recordDays: byOurs(days, parts.countDraws) },
      perYear(bed.stressDays, days),
    );
  return sheet.done(asked.at, titles.ban[what](name, on));
}

function onTank({ book: { context } }: Asked, id: string | undefined, capacity_L: number) {
  const tank = lookedAt(context).find((one) => one.tank === id);
  return tank && capacity_L >= 0 ? banOnTank(tank.inputs, tank.tank, capacity_L) : [];
}

/** `choices/roof/TANK/TIMES`: what a tank saves with more or less roof. */
export function roofWorking(asked: Asked): Working | null {
  const [id, times] = asked.rest;
  const { context } = asked.book;
  const { frame } = context.worked.ready;
  const tank = lookedAt(context).find((one) => one.tank === id);
  const share = Number(times);
  if (!tank || !(share >= 0)) return null;
  const run = withRoof(tank, share, frame);
  const kL = (litres: number) => perYear(litres, frame.weather.calendar.days) / 1000;
  const sheet = sheetOf(asked);
  const roof = asked.say.number(100 * share);
  sheet.step(
    "sizeSaved",
    {
      withoutTank: ofRun(kL(total_L(run.without.mains)), parts.noTankRun),
      withTank: ofRun(kL(total_L(run.with.mains)), parts.roofRun(roof)),
    },
    kL(total_L(run.with.saved)),
  );
  return sheet.done(asked.at, titles.roof(tank.name, roof));
}
