/** What the server says: to programs in problem documents, to people in the terminal. */
import { count } from "./count.ts";

export const problemTitles = {
  400: "The request could not be read",
  403: "Refused",
  404: "Nothing here",
  405: "Not done this way here",
  409: "Not possible as things stand",
  412: "Changed meanwhile",
  413: "Too large",
  415: "Not a form of content that is read here",
  422: "Refused, with reasons",
  428: "A condition is needed",
  500: "A fault of this program",
  503: "Not now",
  507: "No room left",
} as const;

export type ProblemStatus = keyof typeof problemTitles;

export const serverWords = {
  foreignHost:
    "This server answers only to the address it printed when it started, on this computer. Open that address.",
  foreignOrigin: "Requests from pages of other sites are refused. Open this server's own page.",
  nothingHere: "There is nothing at this address. The API is described at /api/openapi.json.",
  notAllowed: (methods: readonly string[]) => `This address answers to ${methods.join(", ")} only.`,
  bodyTooLarge: (limit_MB: number) => `The body must be at most ${count(limit_MB)} MB.`,
  notJsonType: "The body must be JSON: send it with the header Content-Type: application/json.",
  encoded: "The body must be sent as it is, without Content-Encoding.",
  notUtf8: "The body must be UTF-8 text. Some of its bytes are not.",
  emptyBody: "The body is empty. JSON is wanted.",
  notJson: "The body must be JSON. It breaks off, or a character is out of place.",
  tooDeep: (limit: number) => `The body must not be nested more than ${count(limit)} levels deep.`,
  refused: (faults: number) =>
    faults === 1 ? "One fault was found: see faults." : `${count(faults)} faults were found: see faults.`,
  ownFault:
    "The calculation stopped on a fault of this program, not of what was sent. The terminal shows where.",

  notAnObject: "The body must be an object with survey and weather.",
  noSurvey: "A survey document is needed, as an object.",
  unknownMember: "There is no such field here. The body holds survey and weather.",
  weatherForm: "Weather must be CSV text or a list of rows, each an object with a date.",
  tooManyBedDays: (limit: number, beds: number, days: number) =>
    `A survey's beds times its record's days must be at most ${count(limit)}. These are ${count(beds)} beds and ${count(days)} days: send fewer beds or a shorter record.`,

  building: "Building the page, once …",
  buildFailed: "The page could not be built; the fault is above. The API is served without it.",
  listening: (address: string) => `Grounds Water Balance is at ${address}  (Ctrl+C stops it)`,
  stopping: "Stopping: requests under way are finished first.",
  portBusy: (port: number) =>
    `Port ${port} is in use by another program. Stop that one, or choose another port: npm start -- --port ${port + 1}`,
  portRefused: (port: number) =>
    `This account may not listen on port ${port}. Choose one above 1023: npm start -- --port 8017`,
  cannotListen: (code: string) => `The server could not start listening (${code}).`,
  portForm: (found: string) => `--port must be a whole number from 0 to 65535. You entered ${found}.`,
  hostRefused: (found: string) =>
    `--host must be 127.0.0.1. You entered ${found}. Other addresses stay closed until access control exists: whoever reached the server could read and change everything.`,
  unknownOption: (found: string) =>
    `There is no option ${found}. The options are --port N, --data FOLDER and --help.`,
  optionNeedsValue: (option: string) => `${option} needs a value.`,
  help: [
    "npm start -- [--port N] [--data FOLDER]",
    "",
    "Prints the demo's answer, then serves the page on this computer only.",
    "  --port N       the port to listen on (8017); 0 takes any free one",
    "  --data FOLDER  where everything is kept, in one file (grounds-data)",
    "  --help         these lines",
  ].join("\n"),
} as const;
