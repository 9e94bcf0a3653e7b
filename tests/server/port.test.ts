import type { Server } from "node:http";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { afterEach, expect, test } from "vitest";
import { createApp } from "../../src/server/app.ts";
import { CannotListen, listen, portOf } from "../../src/server/listen.ts";
import type { ServerParts } from "../../src/server/parts.ts";
import { stopGracefully } from "../../src/server/stop.ts";
import { type SmallSurvey, standIn } from "./stand-in.ts";

const open: Server[] = [];

afterEach(async () => {
  await Promise.all(open.splice(0).map(stopGracefully));
});

async function start(
  changes: Partial<ServerParts<SmallSurvey>> = {},
): Promise<{ server: Server; port: number }> {
  let port = 0;
  const server = await listen(createApp(standIn({ port: () => port, ...changes })), 0);
  port = portOf(server);
  open.push(server);
  return { server, port };
}

/** Sends bytes as they are and gives back what came. */
function raw(port: number, text: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let came = "";
    const socket = connect(port, "127.0.0.1", () => socket.write(text));
    socket.setEncoding("utf8");
    socket.on("data", (part) => {
      came += part;
    });
    socket.on("close", () => resolve(came));
    socket.on("error", reject);
  });
}

test("answers under the address that it has", async () => {
  const { port } = await start();
  const answer = await fetch(`http://127.0.0.1:${port}/healthz`);
  expect(answer.status).toBe(200);
  expect(await answer.json()).toEqual({ status: "ok" });
});

test("listens on this computer's own address alone", async () => {
  const { server, port } = await start();
  expect(server.address()).toMatchObject({ address: "127.0.0.1" });
  const others = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal);
  for (const { address } of others) {
    await expect(fetch(`http://${address}:${port}/healthz`)).rejects.toThrow();
  }
});

test("a busy port is told in a sentence that says what to do", async () => {
  const { port } = await start();
  const second = listen(createApp(standIn()), port);
  await expect(second).rejects.toThrow(CannotListen);
  await expect(second).rejects.toThrow(
    `Port ${port} is in use by another program. Stop that one, or choose another port: npm start -- --port ${port + 1}`,
  );
});

test.each(["Host: elsewhere.example", "Host: a b", "Host: ", "Host: 127.0.0.1:1"])(
  "%j over the wire",
  async (host) => {
    const { port } = await start();
    const came = await raw(port, `GET /healthz HTTP/1.1\r\n${host}\r\nConnection: close\r\n\r\n`);
    expect(came).toMatch(/^HTTP\/1\.1 4\d\d /);
    expect(came).not.toMatch(/"status":"ok"/);
  },
);

test("a request without a host", async () => {
  const { port } = await start();
  expect(await raw(port, "GET /healthz HTTP/1.1\r\nConnection: close\r\n\r\n")).toMatch(/^HTTP\/1\.1 400 /);
});

test("a path that climbs out of the page's folder finds nothing", async () => {
  const { port } = await start();
  const request = `GET /../../package.json HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`;
  expect(await raw(port, request)).toMatch(/^HTTP\/1\.1 404 /);
});

test("a body that announces 40 MB is refused, and the server goes on", async () => {
  const { port } = await start();
  const head = `POST /api/estimate HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: application/json\r\n`;
  expect(await raw(port, `${head}Content-Length: 40000000\r\nConnection: close\r\n\r\n{`)).toMatch(
    /^HTTP\/1\.1 413 /,
  );
  expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
});

test("a stop lets a request under way finish, and takes no more", async () => {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const { server, port } = await start();
  server.prependListener("request", (_request, response) => {
    const end = response.end.bind(response);
    response.end = ((...args: Parameters<typeof end>) => {
      void held.then(() => end(...args));
      return response;
    }) as typeof response.end;
  });
  const answer = fetch(`http://127.0.0.1:${port}/healthz`);
  await new Promise((resolve) => server.once("request", resolve));
  const stopped = stopGracefully(server);
  await expect(fetch(`http://127.0.0.1:${port}/healthz`)).rejects.toThrow();
  release();
  expect((await answer).status).toBe(200);
  await stopped;
  expect(server.listening).toBe(false);
});
