const minutesADay = 1440;

/** Litres a day of a steady drip. */
export function drip_L_day(dripsAMinute: number, drop_mL: number): number {
  return (dripsAMinute * minutesADay * drop_mL) / 1000;
}

/** Size of a drop, mL, where litres a day and drips a minute are both known. */
export function drop_mL(litresADay: number, dripsAMinute: number): number {
  return (1000 * litresADay) / (dripsAMinute * minutesADay);
}

/** Litres a day of a leak that runs, from litres a minute. */
export function leak_L_day(leak_L_min: number): number {
  return leak_L_min * minutesADay;
}
