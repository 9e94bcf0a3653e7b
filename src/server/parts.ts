import type { WeatherRecord } from "../engine/weather/record.ts";
import type { DocumentSchemas } from "./openapi.ts";
import type { Fault } from "./problem.ts";
import type { ChoicesParts } from "./routes/choices.ts";
import type { PlacesParts } from "./routes/places.ts";
import type { RoundsParts } from "./routes/rounds.ts";
import type { Store } from "./store/open.ts";

/** What reading a document gives: the document, or every fault in it. */
export type Read<T> = { ok: true; value: T } | { ok: false; faults: readonly Fault[] };

export interface Demo {
  name: string;
  survey: unknown;
  /** The demo's record as CSV text. */
  weather: string;
}

/** One file of the built page, held in memory. */
export interface PageFile {
  path: string;
  type: string;
  bytes: Uint8Array<ArrayBuffer>;
  /** The name carries a hash of the content: it never changes under this name. */
  hashed: boolean;
}

/** What the server is made of; tests put in their own. */
export interface ServerParts<Survey extends { beds: readonly unknown[] }> {
  version: string;
  schemas: DocumentSchemas;
  /** The port listened on. */
  port(): number;
  readSurvey(document: unknown): Read<Survey>;
  readRecord(weather: string | readonly unknown[]): Read<WeatherRecord>;
  /** The report, or null where the grounds or the record cannot give one, with the reasons. */
  estimate(survey: Survey, record: WeatherRecord | null): Read<object>;
  /** Watering rounds; without it none are worked out. */
  rounds?: RoundsParts<Survey>["rounds"];
  /** A decision between measures; without it none is worked out. */
  choose?: ChoicesParts<Survey>["choose"];
  demo: Demo;
  page: readonly PageFile[];
  /** Where sites are kept; without it there are none. */
  store?: Store;
  /** Places by name and their monthly means; without it there are none to look up. */
  places?: PlacesParts;
  /** Where faults of the program itself are told. */
  logFault(error: unknown): void;
}
