/** Addresses of the page's files: the page itself, and everything that it may fetch. */
export function addressesToKeep(files: readonly string[]): string[] {
  const assets = files
    .filter((file) => !file.endsWith(".html") && file !== "keeper.js")
    .map((file) => `/${file}`);
  return ["/", ...assets];
}

/** One name for one build: file names carry their hashes. */
export function nameOf(files: readonly string[]): string {
  let hash = 0x811c9dc5;
  for (const sign of files.join("\n")) hash = Math.imul(hash ^ sign.codePointAt(0)!, 0x01000193) >>> 0;
  return `grounds-page-${hash.toString(16).padStart(8, "0")}`;
}

interface Asked {
  method: string;
  mode: string;
  url: URL;
  origin: string;
}

/** What a survey is worked out on: a site's record, a place's means. */
const weather = /^\/api\/(?:sites\/[^/]+\/weather|normals)$/;

/**
 * Who answers a request: the server alone (what is kept of sites, and anything written), the page as kept or the
 * weather as last heard where the server is not reached, or a kept file.
 */
export function keptAnswer({ method, mode, url, origin }: Asked): "network" | "page" | "weather" | "asset" {
  if (method !== "GET" || url.origin !== origin) return "network";
  if (weather.test(url.pathname)) return "weather";
  if (url.pathname.startsWith("/api/")) return "network";
  if (mode === "navigate") return "page";
  return url.pathname.startsWith("/assets/") ? "asset" : "network";
}
