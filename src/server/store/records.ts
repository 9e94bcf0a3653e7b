import { formatIso } from "../../engine/weather/dates.ts";
import type { WeatherRecord } from "../../engine/weather/record.ts";
import type { LogEntry } from "../../survey/schema/log.ts";
import { insertEntries, removeEntries } from "./log.ts";
import type { Store } from "./open.ts";
import { doneSite, markDone, siteRow } from "./sites.ts";
import { checkExpected, type Expected, write } from "./surveys.ts";

/** The weather record's CSV text; null for none. */
export function weatherText(store: Store, id: string): string | null {
  siteRow(store, id);
  return store.db
    .prepare<[string], { weather: string | null }>("SELECT weather FROM site WHERE id = ?")
    .get(id)!.weather;
}

/** Puts a weather record in the place of the one before; null takes it out. */
export function saveWeather(
  store: Store,
  id: string,
  expected: Expected,
  weather: { csv: string; record: WeatherRecord } | null,
): void {
  write(store, () => {
    const row = siteRow(store, id);
    if (weatherText(store, id) === (weather?.csv ?? null)) return;
    checkExpected(row.weather_tag, expected);
    setWeather(store, id, weather);
  });
}

function setWeather(store: Store, id: string, weather: { csv: string; record: WeatherRecord } | null): void {
  const now = store.now().toISOString();
  store.db
    .prepare(
      `UPDATE site SET weather = ?, weather_at = ?, weather_from = ?, weather_days = ?, weather_tag = ?,
         changed_at = ? WHERE id = ?`,
    )
    .run(
      weather?.csv ?? null,
      weather && now,
      weather && formatIso(weather.record.firstDay),
      weather?.record.days ?? null,
      store.freshWord(),
      now,
      id,
    );
}

/** Puts a whole log in the place of the one before. */
export function saveLog(store: Store, id: string, expected: Expected, entries: readonly LogEntry[]): void {
  write(store, () => {
    const row = siteRow(store, id);
    checkExpected(row.log_tag, expected);
    removeEntries(store, id);
    insertEntries(store, id, entries);
    touchLog(store, id);
  });
}

/** Adds entries at the end of the log; a request of a key that was carried out before adds nothing. */
export function appendLog(store: Store, id: string, entries: readonly LogEntry[], key: string | null): void {
  write(store, () => {
    siteRow(store, id);
    if (key !== null && doneSite(store, key) !== null) return;
    insertEntries(store, id, entries);
    touchLog(store, id);
    if (key !== null) markDone(store, key, id);
  });
}

function touchLog(store: Store, id: string): void {
  store.db
    .prepare("UPDATE site SET log_tag = ?, changed_at = ? WHERE id = ?")
    .run(store.freshWord(), store.now().toISOString(), id);
}
