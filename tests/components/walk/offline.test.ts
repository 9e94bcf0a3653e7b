import { expect, test } from "vitest";
import { addressesToKeep, keptAnswer, nameOf } from "../../../components/walk/offline/kept.ts";

const origin = "http://127.0.0.1:8080";
const ask = (path: string, mode = "cors", method = "GET") =>
  keptAnswer({ method, mode, url: new URL(path, origin), origin });

test("what is kept of sites is the server's alone; pages, files and weather are kept", () => {
  expect(ask("/api/sites/a/survey")).toBe("network");
  expect(ask("/assets/x-12345678.js", "no-cors", "POST")).toBe("network");
  expect(ask("https://elsewhere.example/assets/x.js")).toBe("network");
  expect(ask("/api/sites/a/weather")).toBe("weather");
  expect(ask("/api/normals?latitude=1&longitude=2")).toBe("weather");
  expect(ask("/api/sites/a/weather", "cors", "PUT")).toBe("network");
  expect(ask("/api/sites/a/state")).toBe("network");
  expect(ask("/site/a/walk/stop/beds/oval/area", "navigate")).toBe("page");
  expect(ask("/assets/genera-12345678.js")).toBe("asset");
});

test("everything built is kept but the keeper itself, the page under its address", () => {
  expect(addressesToKeep(["index.html", "keeper.js", "assets/a.js"])).toEqual(["/", "/assets/a.js"]);
});

test("another build has another name", () => {
  expect(nameOf(["assets/a-1.js"])).not.toBe(nameOf(["assets/a-2.js"]));
  expect(nameOf(["assets/a-1.js"])).toMatch(/^grounds-page-[0-9a-f]{8}$/);
});
