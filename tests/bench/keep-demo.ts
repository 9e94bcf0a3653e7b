/** Keeps the demo as a site of a server. @returns its id */
export async function keepDemo(address: string): Promise<string> {
  const demo = (await (await fetch(`${address}api/demo`)).json()) as { survey: object; weather: string };
  return keepSite(address, { survey: demo.survey, weather: demo.weather });
}

/** Keeps a survey and a record as a site. @returns its id */
export async function keepSite(address: string, site: object): Promise<string> {
  const answer = await fetch(`${address}api/sites`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(site),
  });
  if (!answer.ok) throw new Error(`The server kept no site: ${answer.status} ${await answer.text()}`);
  return ((await answer.json()) as { id: string }).id;
}
