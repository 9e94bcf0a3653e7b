/** What the fields of a site's file are called, beside those of the survey in it. */
export const siteFieldNames: Readonly<Record<string, string>> = {
  "survey.version": "The survey's version",
  weather: "The weather record",
  log: "The log",
  versions: "Versions",
  savedAt: "Time of saving",
  words: "The words on what changed",
  after: "The version before",
  current: "The version at hand",
  versionsLeftOut: "Versions left out",
  draft: "The draft",

  "log.date": "Date of the entry",
  "log.kind": "Kind of entry",
  "log.id": "Id of the entry",
  "log.litres": "Litres of watering",
  "log.rain_mm": "Rain",
  "log.days": "Days of rain",
  "log.level_L": "Tank level",
  "log.group": "Group",
};
