import { addressesToKeep, keptAnswer, nameOf } from "./kept.ts";

/** What of the service worker's own world this file uses. */
interface KeeperScope {
  caches: CacheStorage;
  clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(
    type: "install" | "activate",
    hear: (event: { waitUntil(work: Promise<unknown>): void }) => void,
  ): void;
  addEventListener(
    type: "fetch",
    hear: (event: { request: Request; respondWith(answer: Promise<Response>): void }) => void,
  ): void;
}

const scope = globalThis as unknown as KeeperScope;

/** The whole page with everything that it may fetch later, under a name of its own for each build. */
async function install(): Promise<void> {
  const files = (await (await fetch("/kept.json", { cache: "no-store" })).json()) as string[];
  const box = await caches.open(nameOf(files));
  await box.addAll(addressesToKeep(files));
  await scope.skipWaiting();
}

/** Pages of builds before this one are let go. */
async function activate(): Promise<void> {
  const kept = await fetch("/kept.json")
    .then((answer) => answer.json())
    .catch(() => null);
  const now = kept === null ? null : nameOf(kept as string[]);
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith("grounds-page-") && now !== null && name !== now);
  await Promise.all(old.map((name) => caches.delete(name)));
  await scope.clients.claim();
}

scope.addEventListener("install", (event) => event.waitUntil(install()));
scope.addEventListener("activate", (event) => event.waitUntil(activate()));
scope.addEventListener("fetch", (event) => {
  const { request } = event;
  const kept = keptAnswer({
    method: request.method,
    mode: request.mode,
    url: new URL(request.url),
    origin: location.origin,
  });
  if (kept !== "network") event.respondWith(answers[kept](request));
});

/** The page from the server while it is there, else as it was kept. */
async function page(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = await caches.match("/");
    if (kept) return kept;
    throw error;
  }
}

/** Weather from the server while it is there, else as it was last heard. */
async function weather(request: Request): Promise<Response> {
  try {
    const answer = await fetch(request);
    if (answer.ok) await (await caches.open("grounds-weather")).put(request, answer.clone());
    return answer;
  } catch (error) {
    const kept = await caches.match(request);
    if (kept) return kept;
    throw error;
  }
}

/** A file whose name carries its hash never changes. */
async function asset(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request);
}

const answers = { page, weather, asset } as const;
