/** What one request may ask for, so that one body cannot hold the computer up. Rows, years and lists have
 * their bounds where they are read. */
export const limits = {
  body_bytes: 32 * 1024 * 1024,
  /** A whole site with its versions, brought in from a file. */
  site_bytes: 64 * 1024 * 1024,
  /** Levels of JSON; a survey document needs seven. */
  depth: 40,
  /** Beds × days of weather: a hundred beds for 200 years, and more. */
  bedDays: 10_000_000,
  /** A survey with faults, kept as it was typed. */
  draft_characters: 5_000_000,
} as const;
