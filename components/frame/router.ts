import { type Route, readRoute } from "./route.ts";

/** Follows the address: links to this page's own screens, back and forth, and what code asks for. */
export class Router {
  readonly #shown: (route: Route, isNew: boolean) => void;

  /** @param shown hears of every route, and whether it is a step forward, so that the reader is led to it */
  constructor(shown: (route: Route, isNew: boolean) => void) {
    this.#shown = shown;
  }

  start(): void {
    addEventListener("popstate", this.#back);
    addEventListener("click", this.#click);
    this.#shown(readRoute(location.pathname), false);
  }

  stop(): void {
    removeEventListener("popstate", this.#back);
    removeEventListener("click", this.#click);
  }

  /** Goes to a screen; the units and the like of the address stay. */
  go(path: string, { replace = false } = {}): void {
    const address = new URL(path, location.href);
    if (!address.search) address.search = location.search;
    if (address.href === location.href) return;
    if (replace) history.replaceState(null, "", address);
    else history.pushState(null, "", address);
    this.#shown(readRoute(address.pathname), !replace);
  }

  readonly #back = (): void => this.#shown(readRoute(location.pathname), false);

  /** A plain click on a link to this host; anything else is the browser's. */
  readonly #click = (event: MouseEvent): void => {
    if (event.defaultPrevented || event.button !== 0) return;
    if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const link = event.composedPath().find((node) => node instanceof HTMLAnchorElement);
    if (!link || link.target || link.hasAttribute("download") || !link.getAttribute("href")) return;
    const to = new URL(link.href, location.href);
    if (to.origin !== location.origin || to.pathname.startsWith("/api/")) return;
    if (to.pathname === location.pathname && to.hash) return;
    event.preventDefault();
    this.go(to.pathname + to.search + to.hash);
  };
}
