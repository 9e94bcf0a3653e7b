import { keptAnswer } from "./kept.ts";

/**
 * Has the browser keep the page, so that a walk goes on without the server. Only where pages are secure, as the
 * loopback is; elsewhere, and in browsers without it, the walk needs the server for parts not opened yet.
 */
export async function keepPage(): Promise<void> {
  if (!isSecureContext || !("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("/keeper.js", { type: "module" });
    await keepWeather();
  } catch {
    // a page served without its keeper works all the same while the server is there
  }
}

/** Weather that was fetched before the page had its keeper is asked for once more, so that it is kept too. */
async function keepWeather(): Promise<void> {
  const { serviceWorker } = navigator;
  if (serviceWorker.controller) return;
  await new Promise((done) => serviceWorker.addEventListener("controllerchange", done, { once: true }));
  const { origin } = location;
  const fetched = new Set(performance.getEntriesByType("resource").map(({ name }) => name));
  for (const name of fetched)
    if (keptAnswer({ method: "GET", mode: "cors", url: new URL(name), origin }) === "weather")
      await fetch(name);
}
