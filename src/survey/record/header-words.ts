import { type WeatherColumn, weatherColumns } from "../../engine/weather/record.ts";
import type { DatePart } from "./mapping.ts";

/** A way to call a column, with how sure it makes us (0–1), read on a header in the form `headerWords` gives. */
interface Wording {
  words: RegExp;
  sure: number;
}

interface FieldWording {
  like: readonly Wording[];
  /** Words that make it something else. */
  unlike: RegExp;
}

/** Times of day, marks of quality, and the like: never the day's own value. */
const side =
  /\b(flags?|quality|qc|qf|qn|code|source|attributes?|count|number|days? of accumulation|period|time|normals?|departure|anomaly|(0?[39]|15|[39]) ?(am|pm|00)|soil|grass|ground|road)\b/;
const extreme = /\b(max\w*|min\w*|gusts?|peak|high\w*|low\w*|dir\w*|fastest|run)\b/;

function likely(words: RegExp, sure = 0.95): Wording {
  return { words, sure };
}

const fields: Readonly<Record<WeatherColumn, FieldWording>> = {
  rain_mm: {
    like: [
      likely(/\b(precip\w*|prec|prcp|prectot\w*|pcp\w*|ppt)\b/),
      likely(/\b(rain ?fall|rain)\b/, 0.9),
      likely(
        /\b(regen\w*|niederschlag\w*|rsk?|pluie|rr|pluviometrie|lluvia|precipitacio\w*|chuva|neerslag|pioggia)\b/,
        0.9,
      ),
    ],
    unlike:
      /\b(snow\w*|prob\w*|chance|hours?|duration|intensity|rate|max\w*|type|form|cover|rainy|wet|last|month\w*|year to date|ytd|mtd)\b/,
  },
  et0_mm: {
    like: [
      likely(
        /\b(et ?0|eto|et o|et short crop|fao ?56|fao et\w*|reference (evapo ?)?(et|transpiration)|ref et|et ref|et0 fao \w+)\b/,
      ),
      likely(/\b(et|etp|pet|evapo ?transpiration|potential evapo ?transpiration|evtrn|ev24)\b/, 0.7),
    ],
    unlike: /\b(pan|actual|aet|eta|etc|crop et|tall|lake|sum month)\b/,
  },
  tmin_c: {
    like: [
      likely(
        /\b(t ?min|tmn|min(imum)? (air |daily )?(temp\w*|t)|temp\w* (air )?min\w*|air (temp\w* )?min\w*|t2m min|low temp\w*|temp\w* low)\b/,
      ),
      likely(/\b(temperature 2m min|daily min\w*|tnk|tn)\b/, 0.9),
      likely(/^(daily )?(low|min|minimum)( [cfk])?$/, 0.6),
    ],
    unlike: /\b(dew\w*|hum\w*|rh|wet bulb|wind|pres\w*|apparent|feels|chill|range|water|sea)\b/,
  },
  tmax_c: {
    like: [
      likely(
        /\b(t ?max|tmx|max(imum)? (air |daily )?(temp\w*|t)|temp\w* (air )?max\w*|air (temp\w* )?max\w*|t2m max|high temp\w*|temp\w* high)\b/,
      ),
      likely(/\b(temperature 2m max|daily max\w*|txk|tx)\b/, 0.9),
      likely(/^(daily )?(high|max|maximum)( [cfk])?$/, 0.6),
    ],
    unlike: /\b(dew\w*|hum\w*|rh|wet bulb|wind|pres\w*|apparent|feels|chill|range|water|sea)\b/,
  },
  tdew_c: {
    like: [likely(/\b(dew ?point\w*|t ?dew|tdp|dewp|dew|dew pt|t2mdew|taupunkt)\b/)],
    unlike: /\b(max\w*|min\w*|depression|frost)\b/,
  },
  vp_kpa: {
    like: [likely(/\b(vap\w* pres\w*|vp|ea|dampfdruck|vpm|actual vap\w*)\b/, 0.9)],
    unlike: /\b(deficit|vpd|def|sat\w*)\b/,
  },
  rhmin_pct: {
    like: [
      likely(
        /\b(rh ?min|min\w* (rel\w* )?(rh|hum\w*)|(rel\w* )?hum\w* min\w*|rhn|hurs ?min|relative humidity 2m min)\b/,
      ),
      likely(/\brh (at )?t ?max\b/, 0.8),
    ],
    unlike: /\b(specific|absolute)\b/,
  },
  rhmax_pct: {
    like: [
      likely(
        /\b(rh ?max|max\w* (rel\w* )?(rh|hum\w*)|(rel\w* )?hum\w* max\w*|rhx|hurs ?max|relative humidity 2m max)\b/,
      ),
      likely(/\brh (at )?t ?min\b/, 0.8),
    ],
    unlike: /\b(specific|absolute)\b/,
  },
  rhmean_pct: {
    like: [
      likely(
        /\b(rh|rh ?(mean|avg|ave)|(mean|avg|average) (rel\w* )?(rh|hum\w*)|rel\w* hum\w*|hum\w*|rh2m|upm|ug|hurs)\b/,
        0.9,
      ),
    ],
    unlike: /\b(specific|absolute|max\w*|min\w*|tmin|tmax)\b/,
  },
  wind_ms: {
    like: [
      likely(
        /\b(wind|wind ?speed\w*|wind (speed )?(mean|avg|average)|wspd|wdsp|awnd|ws2m|ws10m|ws|wind ?spd|u2|u10|ff|fm|fg|windgeschwindigkeit|vent|viento)\b/,
        0.9,
      ),
    ],
    unlike: extreme,
  },
  solar_MJ_m2: {
    like: [
      likely(
        /\b(solar\w*|rad\w*|global (solar )?(rad\w*|exposure|irradia\w*)|irradia\w*|sol ?rad|srad|rs|insolation|ghi|allsky sfc sw dwn|short ?wave\w*|glorad|sw in)\b/,
        0.9,
      ),
    ],
    unlike:
      /\b(net|max\w*|min\w*|diffuse|direct|dni|dhi|clear ?sky|top|toa|toplevel|extra\w*|long ?wave|lw|uv|par|zenith|noon|elevation)\b/,
  },
  sun_h: {
    like: [
      likely(
        /\b(sun ?shine\w*|sun|sun ?hours?|tsun|sdk|sonnenscheindauer|insolation hours|sq|heliophany)\b/,
        0.9,
      ),
    ],
    unlike: /\b(rise|set|max\w*|possible|percent|pct|psun)\b/,
  },
};

const dates: Readonly<Record<DatePart, RegExp>> = {
  date: /\b(date|dates|datum|fecha|data|day|time|timestamp|date ?time|datetime|yyyymmdd|yyyy mm dd|mess datum|obs ?date|valid|dt)\b/,
  year: /\b(year|yr|yyyy|jahr|annee|ano|anno)\b/,
  month: /\b(month|mon|mo|mm|mth|monat|mois|mes)\b/,
  day: /\b(day|dy|dd|dom|day of month|tag|jour|dia)\b/,
  dayOfYear: /\b(doy|day of year|yday|jday|julian( day)?|ordinal day|day number)\b/,
};

/** Words that a column of stations or places is called by. */
export const placeWords =
  /\b(location|place|site|station\w*|stn|name|city|town|gauge|id|usaf|wmo|wban|code|region|county|state)\b/;

/** How sure a header makes us that its column is a column of the record: 0 not at all, 1 its own name. */
export function headerSays(column: WeatherColumn, header: string): number {
  if (header.trim().toLowerCase() === column.toLowerCase()) return 1;
  if ((weatherColumns as readonly string[]).includes(header.trim())) return 0;
  const words = headerWords(header);
  const { like, unlike } = fields[column];
  if (unlike.test(words) || side.test(words)) return 0;
  return Math.max(0, ...like.map((wording) => (wording.words.test(words) ? wording.sure : 0)));
}

/** Whether a header is that of a date or of a part of one. */
export function headerIsDate(part: DatePart, header: string): boolean {
  return dates[part].test(headerWords(header));
}

/** Brackets mostly hold a unit; these words in them tell which of the day's values it is. */
const qualifier = /^\s*(daily )?(max|min|mean|avg|average|high|low)/i;

/** A header in plain words: `precipAmt_mm`, `Précip. amt (mm)` and `PRECIP AMT` all begin `precip amt`. */
export function headerWords(header: string): string {
  return header
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[([{]([^)\]}]*)[)\]}]/g, (_, inside: string) => (qualifier.test(inside) ? ` ${inside} ` : " "))
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[^a-z0-9%]+/g, " ")
    .trim();
}

/** The texts in a header that may name its unit, the likeliest first. */
export function unitTexts(header: string): string[] {
  const bracketed = [...header.matchAll(/[([{]([^)\]}]*)[)\]}]/g)].map((match) => match[1]!);
  const afterMark = header.split(/[,;]| \/ |\bin\b(?=\s)/).slice(1);
  const tokens = header.split(/[_\s.]+/);
  const last = [1, 2, 3].flatMap((count) => {
    const ending = tokens.slice(-count);
    return tokens.length > count ? [ending.join(""), ending.join("/")] : [];
  });
  return [...bracketed, ...afterMark, ...last].map((text) => text.trim()).filter((text) => text !== "");
}
