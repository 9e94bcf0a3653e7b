import type { Context, Hono } from "hono";
import { describeRoute } from "hono-openapi";
import { siteSchema } from "../../../survey/schema/site-document.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { limits } from "../../limits.ts";
import { expectedOf, keyOf, quoted } from "../../preconditions.ts";
import { Problem } from "../../problem.ts";
import { siteDocument } from "../../store/document.ts";
import type { Store } from "../../store/open.ts";
import { replaceSite, wholeTag } from "../../store/replace.ts";
import { bringBack, createSite, erase, listSites, siteRow, takeOut } from "../../store/sites.ts";
import { siteState } from "../../store/state.ts";
import { listSchema, stateAnswer, stateSchema } from "./answers.ts";
import { limitBody, readSite } from "./bodies.ts";
import { json, route } from "./describe.ts";
import { ask, askWith } from "./failures.ts";

/** Room for the versions in a document; with the rest it stays below what may be brought in again. */
const room_bytes = 48_000_000;

/** Sites as wholes: list, create, read, replace, take out, bring back; a document in and out. */
export function addWholeSites(app: Hono, store: Store): void {
  app.get(
    "/api/sites",
    describeRoute(route({ summary: "The sites kept", gives: json(listSchema), fails: [] })),
    (c) => c.json({ sites: ask(() => listSites(store)) }, 200, noStore),
  );

  app.get(
    "/api/deleted-sites",
    describeRoute(
      route({
        summary: "The sites taken out, which can be brought back",
        gives: json(listSchema),
        fails: [],
      }),
    ),
    (c) => c.json({ sites: ask(() => listSites(store, true)) }, 200, noStore),
  );

  app.post(
    "/api/sites",
    describeRoute(
      route({
        summary: "Keeps a new site, or brings in a site's document",
        description:
          "A grounds-site document, versions and all; or { survey, weather?, log? } without format and version. What is refused changes nothing.",
        takes: json(siteSchema),
        gives: json(stateSchema),
        status: 201,
        fails: [400, 413, 415, 422],
        key: true,
      }),
    ),
    limitBody(limits.site_bytes),
    async (c) => {
      const site = await readSite(c);
      const key = keyOf(c);
      const state = ask(() => siteState(store, createSite(store, site, key)));
      return c.json(stateAnswer(state), 201, {
        ...noStore,
        Location: `/api/sites/${state.row.id}`,
        ETag: quoted(state.row.tag),
      });
    },
  );

  app.get(
    "/api/sites/:id",
    describeRoute(
      route({
        summary: "The whole site as a grounds-site document",
        description: "Its ETag stands for survey, draft, weather record and log together.",
        gives: json(siteSchema),
      }),
    ),
    (c) => wholeSite(c, store, {}),
  );

  app.get(
    "/api/sites/:id/export",
    describeRoute(route({ summary: "The same document, as a file to save", gives: json(siteSchema) })),
    (c) =>
      wholeSite(c, store, {
        "Content-Disposition": `attachment; filename="${c.req.param("id")}.grounds-site.json"`,
      }),
  );

  app.put(
    "/api/sites/:id",
    describeRoute(
      route({
        summary: "Replaces survey, weather record and log",
        description:
          "The survey becomes a new version. The versions kept are the server's: those in the body may be left out, and change nothing.",
        takes: json(siteSchema),
        gives: json(stateSchema),
        fails: [400, 404, 412, 413, 415, 422, 428],
        ifMatch: "must",
      }),
    ),
    limitBody(limits.site_bytes),
    async (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, true);
      ask(() => siteRow(store, id));
      const site = await readSite(c);
      return askWith(c, store, id, site.survey, () => {
        const row = replaceSite(store, id, expected, site);
        return c.json(stateAnswer(siteState(store, id)), 200, { ...noStore, ETag: quoted(wholeTag(row)) });
      });
    },
  );

  app.delete(
    "/api/sites/:id",
    describeRoute(
      route({
        summary: "Takes a site out; it can be brought back",
        description: "With forGood=yes, removes for good one that was taken out before.",
        query: {
          forGood: { description: "yes to remove for good", schema: { type: "string", enum: ["yes"] } },
        },
        fails: [404, 409],
      }),
    ),
    (c) => {
      const id = c.req.param("id");
      if (c.req.query("forGood") !== "yes") ask(() => takeOut(store, id));
      else if (!ask(() => erase(store, id))) throw new Problem(409, siteWords.notTakenOut);
      return c.body(null, 204);
    },
  );

  app.post(
    "/api/sites/:id/recover",
    describeRoute(route({ summary: "Brings back a site that was taken out", gives: json(stateSchema) })),
    (c) => {
      const id = c.req.param("id");
      ask(() => bringBack(store, id));
      const state = ask(() => siteState(store, id));
      return c.json(stateAnswer(state), 200, { ...noStore, ETag: quoted(state.row.tag) });
    },
  );
}

const noStore = { "Cache-Control": "no-store" } as const;

function wholeSite(c: Context, store: Store, headers: Record<string, string>): Response {
  const id = c.req.param("id")!;
  const { document, tag } = ask(() =>
    store.db.transaction(() => ({
      document: siteDocument(store, id, room_bytes),
      tag: wholeTag(siteRow(store, id)),
    }))(),
  );
  return c.json(document as object, 200, { "Cache-Control": "no-cache", ETag: quoted(tag), ...headers });
}
