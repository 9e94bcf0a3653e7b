/**
 * Has the browser keep the page, so that a walk goes on without the server. Only where pages are secure, as the
 * loopback is; elsewhere, and in browsers without it, the walk needs the server for parts not opened yet.
 */
export async function keepPage(): Promise<void> {
  if (!isSecureContext || !("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("/keeper.js", { type: "module" });
  } catch {
    // a page served without its keeper works all the same while the server is there
  }
}
