import { expect, test } from "vitest";
import { readArgs } from "../../src/server/args.ts";

test("without options the port is 8017", () => {
  expect(readArgs([])).toEqual({ port: 8017, data: "grounds-data", help: false });
});

test.each([
  [["--port", "9000"], 9000],
  [["--port=0"], 0],
  [["--host", "127.0.0.1", "--port", "65535"], 65535],
])("%j", (args, port) => {
  expect(readArgs(args)).toEqual({ port, data: "grounds-data", help: false });
});

test.each(["65536", "-1", "80.5", "http", "", "1e3", "０"])(
  "port %j is refused, with what was entered",
  (text) => {
    expect(readArgs([`--port=${text}`])).toEqual({
      faults: [expect.stringContaining(`You entered ${text}.`)],
    });
  },
);

test("the data folder is the one that is named", () => {
  expect(readArgs(["--data", "/srv/grounds"])).toEqual({ port: 8017, data: "/srv/grounds", help: false });
});

test.each(["0.0.0.0", "::", "192.168.1.20"])("host %s is refused until access is controlled", (host) => {
  expect(readArgs(["--host", host])).toEqual({ faults: [expect.stringMatching(/access control/)] });
});

test("every fault is listed", () => {
  const read = readArgs(["--port", "x", "--prot=1", "stray", "--host"]);
  expect("faults" in read && read.faults).toHaveLength(4);
});
