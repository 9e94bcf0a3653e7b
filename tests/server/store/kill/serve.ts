/** The server with nothing but the sites, on any free port, for tests that kill it: data folder as argument. */
import { createApp } from "../../../../src/server/app.ts";
import { listen, portOf } from "../../../../src/server/listen.ts";
import { openStore } from "../../../../src/server/store/open.ts";
import { surroundings } from "../../../../src/server/store/surroundings.ts";
import { standIn } from "../../stand-in.ts";

const store = openStore(process.argv[2]!, surroundings);
let port = 0;
const app = createApp(standIn({ port: () => port, store, logFault: (error) => console.error(error) }));
port = portOf(await listen(app, 0));
console.log(`port ${port}`);
