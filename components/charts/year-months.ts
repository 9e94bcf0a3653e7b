import type { Formatter } from "../../src/words/format.ts";
import type { Svg } from "./measure.ts";

const MS_PER_DAY = 86_400_000;

/**
 * Names of the months under a drawing by days; short where there is room.
 * @returns where each month begins
 */
export function dayMonths(
  svg: Svg,
  firstDay: number,
  days: number,
  { left, right, x }: { left: number; right: number; x: (i: number) => number },
  y: number,
  say: Formatter,
): number[] {
  const form = (right - left) / 12 >= 36 ? "short" : "narrow";
  const starts: { index: number; month: number }[] = [];
  for (let i = 0; i < days; i++) {
    const date = new Date((firstDay + i) * MS_PER_DAY);
    if (date.getUTCDate() === 1 || i === 0) starts.push({ index: i, month: date.getUTCMonth() });
  }
  starts.forEach(({ index, month }, k) => {
    const next = starts[k + 1]?.index ?? days;
    if (next - index < 12) return;
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", (x(index) + x(next)) / 2)
      .attr("y", y)
      .attr("text-anchor", "middle")
      .text(say.month(month, form));
  });
  return starts.map(({ index }) => x(index));
}
