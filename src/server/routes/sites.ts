import type { Hono } from "hono";
import type { Store } from "../store/open.ts";
import { addHistory } from "./sites/history.ts";
import { addSurvey } from "./sites/survey.ts";
import { addTables } from "./sites/tables.ts";
import { addWholeSites } from "./sites/whole.ts";

/** `/api/sites`: everything that is kept. */
export function addSites(app: Hono, store: Store): void {
  addWholeSites(app, store);
  addSurvey(app, store);
  addHistory(app, store);
  addTables(app, store);
}
