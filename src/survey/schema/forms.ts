/** How text fields are written, as patterns. Day numbers are real ones: no 30 February, 29 February in leap years. */

const dayOfMonth = [
  "(?:0[13578]|1[02])-(?:0[1-9]|[12]\\d|3[01])",
  "(?:0[469]|11)-(?:0[1-9]|[12]\\d|30)",
  "02-(?:0[1-9]|1\\d|2[0-8])",
].join("|");
const leapYear = "(?:\\d\\d[2468][048]|\\d\\d[13579][26]|\\d\\d0[48]|[02468][048]00|[13579][26]00)";
const day = `(?:\\d{4}-(?:${dayOfMonth})|${leapYear}-02-29)`;
const monthDay = `(?:${dayOfMonth}|02-29)`;
const clock = "(?:[01]\\d|2[0-3]):[0-5]\\d";
const zone = "(?:Z|[+-](?:[01]\\d|2[0-3]):[0-5]\\d)";

const whole = (pattern: string) => new RegExp(`^(?:${pattern})$`, "u");

/** An id heads columns of a CSV table, so no comma, quote, dot or space. */
export const id = /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;
/** One line with something on it: no control characters, no line or paragraph separators. */
export const text = /^(?=[\s\S]*\S)[^\p{Cc}\p{Zl}\p{Zp}]*$/u;
export const date = whole(day);
export const monthDayOnly = whole(monthDay);
export const dateOrMonthDay = whole(`${day}|${monthDay}`);
export const dateOrWeekday = whole(`${day}|mon|tue|wed|thu|fri|sat|sun`);
export const time = whole(`${clock}|24:00`);
export const dateOrTime = whole(`${day}(?:[T ]${clock}(?::[0-5]\\d(?:\\.\\d{1,6})?)?${zone}?)?`);
/** A moment in UTC, as this program writes it. */
export const moment = whole(`${day}T${clock}:[0-5]\\d(?:\\.\\d{1,3})?Z`);
export const currency = /^[A-Z]{3}$/;
