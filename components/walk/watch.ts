import type { Watch } from "./draft.ts";

export const stopped: Watch = { started_ms: null, before_ms: 0 };

/** Time on the watch: from clock readings, not from ticks, so that sleep does not matter. */
export function elapsed_ms({ started_ms, before_ms }: Watch, now_ms: number): number {
  return before_ms + (started_ms === null ? 0 : Math.max(0, now_ms - started_ms));
}

export function started(watch: Watch, now_ms: number): Watch {
  return watch.started_ms === null ? { ...watch, started_ms: now_ms } : watch;
}

export function halted(watch: Watch, now_ms: number): Watch {
  return { started_ms: null, before_ms: elapsed_ms(watch, now_ms) };
}

/** Minutes, seconds and tenths: 1:05.3. */
export function clockText(ms: number): string {
  const tenths = Math.round(ms / 100);
  const minutes = Math.floor(tenths / 600);
  const seconds = ((tenths % 600) / 10).toFixed(1);
  return `${minutes}:${seconds.padStart(4, "0")}`;
}

/** Seconds to a tenth, as a reading. */
export function secondsText(ms: number): string {
  return (Math.round(ms / 100) / 10).toString();
}
