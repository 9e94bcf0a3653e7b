import type { MiddlewareHandler } from "hono";
import { serverWords } from "../words/en/server.ts";
import { Problem } from "./problem.ts";

/** The names by which a browser on this computer reaches a port of it. */
function ownHosts(port: number): string[] {
  const names = ["127.0.0.1", "localhost", "[::1]"];
  return port === 80
    ? [...names, ...names.map((name) => `${name}:80`)]
    : names.map((name) => `${name}:${port}`);
}

/**
 * Refuses what did not come from this computer's own address: a Host of another name is a foreign
 * page whose name was pointed here, a foreign Origin is another site's script.
 * @param port the port listened on, asked at each request since 0 takes any free one
 */
export function ownAddressOnly(port: () => number): MiddlewareHandler {
  return async (c, next) => {
    const hosts = ownHosts(port());
    const host = c.req.header("Host")?.toLowerCase();
    if (host === undefined || !hosts.includes(host)) throw new Problem(403, serverWords.foreignHost);
    const origin = c.req.header("Origin")?.toLowerCase();
    if (origin !== undefined && !hosts.some((own) => origin === `http://${own}`)) {
      throw new Problem(403, serverWords.foreignOrigin);
    }
    await next();
  };
}
