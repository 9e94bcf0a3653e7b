import type { SiteLine } from "../kept/answers.ts";
import { NotReached } from "../kept/sites-api.ts";

/** Sites that were taken out and can be brought back. @throws NotReached */
export async function listDeleted(): Promise<SiteLine[]> {
  const answer = await reached(fetch("/api/deleted-sites"));
  return (await answer.json()).sites;
}

/** @throws NotReached */
export async function recover(id: string): Promise<void> {
  await reached(fetch(`/api/sites/${encodeURIComponent(id)}/recover`, { method: "POST" }));
}

/** Takes a site out of the list. @throws NotReached */
export async function takeOut(id: string): Promise<void> {
  await reached(fetch(`/api/sites/${encodeURIComponent(id)}`, { method: "DELETE" }));
}

async function reached(coming: Promise<Response>): Promise<Response> {
  const answer = await coming.catch(() => null);
  if (!answer?.ok) throw new NotReached();
  return answer;
}
