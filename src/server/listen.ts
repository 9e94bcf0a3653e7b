import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import type { Hono } from "hono";
import { serverWords } from "../words/en/server.ts";

const address = "127.0.0.1";
const requestLimit_ms = 60_000;

/** Why a server cannot listen, as a sentence that says what to do. */
export class CannotListen extends Error {
  override name = "CannotListen";
}

/** Listens on this computer's own address only. */
export function listen(app: Hono, port: number): Promise<Server> {
  const server = createServer(
    { requestTimeout: requestLimit_ms },
    getRequestListener(app.fetch, { overrideGlobalObjects: false }),
  );
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => reject(new CannotListen(reason(error, port))));
    server.listen(port, address, () => resolve(server));
  });
}

/** The port that a listening server has. */
export function portOf(server: Server): number {
  return (server.address() as AddressInfo).port;
}

function reason(error: NodeJS.ErrnoException, port: number): string {
  if (error.code === "EADDRINUSE") return serverWords.portBusy(port);
  if (error.code === "EACCES") return serverWords.portRefused(port);
  return serverWords.cannotListen(error.code ?? error.name);
}
