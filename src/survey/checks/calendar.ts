import type { FaultCollector } from "../collector.ts";
import * as forms from "../schema/forms.ts";
import { has, numbersAt, type Row, rowAt, rowsAt, textAt } from "./loose.ts";

const longestMonths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export function checkCalendar(survey: Row, faults: FaultCollector): void {
  const site = rowAt(survey, "site");
  if (site) {
    checkTimeZone(site, faults);
    for (const absence of rowsAt(site, "absences")) checkRhythm(absence, faults);
    for (const hours of rowsAt(site, "hours")) checkTimes(hours, faults);
    checkNormals(rowAt(site, "normals"), faults);
  }
  for (const restriction of rowsAt(survey, "restrictions")) {
    checkRhythm(restriction, faults);
    checkTimes(restriction, faults);
  }
  for (const reading of rowsAt(survey, "readings")) checkRhythm(reading, faults);
}

function checkTimeZone(site: Row, faults: FaultCollector): void {
  const zone = textAt(site, "timeZone");
  if (zone === null || zone.length > 64) return;
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
  } catch {
    faults.add([...site.path, "timeZone"], "time-zone", {
      found: zone,
    });
  }
}

/** Both ends MM-DD, every year, perhaps past New Year; or both dates, the first not after the last. */
function checkRhythm(row: Row, faults: FaultCollector): void {
  const from = textAt(row, "from");
  const to = textAt(row, "to");
  const known = (end: string | null) => end === null || forms.dateOrMonthDay.test(end);
  if (!known(from) || !known(to)) return;
  const yearly = (end: string) => forms.monthDayOnly.test(end);
  if (from !== null && to !== null) {
    if (yearly(from) !== yearly(to)) faults.add([...row.path, "to"], "ends-mixed", { from, to });
    else if (!yearly(from) && from > to) faults.add([...row.path, "to"], "ends-reversed", { from, to });
  } else if (from !== null && !has(row, "to") && yearly(from))
    faults.add([...row.path, "to"], "end-wanted", { other: from });
  else if (to !== null && !has(row, "from") && yearly(to))
    faults.add([...row.path, "from"], "end-wanted", { other: to });
}

/** Hours have two different ends; they may pass midnight. */
function checkTimes(row: Row, faults: FaultCollector): void {
  const from = textAt(row, "fromTime");
  const to = textAt(row, "toTime");
  if (from !== null && from === to) faults.add([...row.path, "toTime"], "times-same", { time: from });
  if (row.path[0] !== "restrictions") return;
  if (from !== null && !has(row, "toTime"))
    faults.add([...row.path, "toTime"], "end-wanted", { other: from });
  if (to !== null && !has(row, "fromTime"))
    faults.add([...row.path, "fromTime"], "end-wanted", { other: to });
}

function checkNormals(normals: Row | null, faults: FaultCollector): void {
  if (!normals) return;
  const temperatures = ["tmin_c", "tmax_c"].filter((name) => has(normals, name));
  if (temperatures.length === 0 && !has(normals, "et0_mm")) faults.add(normals.path, "normals-short");
  if (temperatures.length === 1)
    faults.add([...normals.path, temperatures[0] === "tmin_c" ? "tmax_c" : "tmin_c"], "normals-pair", {
      other: temperatures[0]!,
    });
  const tmax = numbersAt(normals, "tmax_c");
  numbersAt(normals, "tmin_c").forEach((low, month) => {
    const high = tmax[month] ?? null;
    if (low !== null && high !== null && low > high)
      faults.add([...normals.path, "tmin_c", month], "normals-crossed", { month: month + 1, low, high });
  });
  numbersAt(normals, "rainDays").forEach((days, month) => {
    const most = longestMonths[month];
    if (days !== null && most !== undefined && days > most && days <= 31)
      faults.add([...normals.path, "rainDays", month], "normals-days", {
        month: month + 1,
        found: days,
        most,
      });
  });
}
