import { keeping } from "./keeping.ts";

/** One word for the page, so that a press that was heard twice makes one site. */
let key: string | null = null;

/** Keeps the demo as a site like any other. @returns its id */
export async function keepDemo(): Promise<string> {
  const { api, freshWord } = await keeping();
  key ??= freshWord();
  const demo = await fetch("/api/demo");
  const { survey, weather } = (await demo.json()) as { survey: object; weather: string };
  return (await api.create({ survey, weather }, key)).id;
}
