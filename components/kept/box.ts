import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { LogEntry, SiteState } from "./answers.ts";

/** Entries of one tab that the server has not answered for. */
export interface Waiting {
  site: string;
  tab: string;
  /** The whole survey as it was last typed. */
  survey: object;
  /** The tag of the state that it was typed on. */
  etag: string;
  /** Surveys that were sent and not answered for, oldest first: the server may have any of them. */
  sent: readonly object[];
}

/** Entries for the log that the server has not answered for. */
export interface WaitingLog {
  key: string;
  site: string;
  entries: LogEntry[];
}

/** What this browser keeps until the server has it, and the state last seen, for when it is not reached. */
export interface Box {
  /** Whether what is in it outlives the page. */
  isLasting: boolean;
  waiting(site: string): Promise<Waiting[]>;
  keep(waiting: Waiting): Promise<void>;
  drop(site: string, tab: string): Promise<void>;
  log(site: string): Promise<WaitingLog[]>;
  keepLog(log: WaitingLog): Promise<void>;
  dropLog(key: string): Promise<void>;
  seen(site: string): Promise<SiteState | null>;
  keepSeen(state: SiteState): Promise<void>;
}

interface Stores extends DBSchema {
  waiting: { key: [string, string]; value: Waiting; indexes: { site: string } };
  log: { key: number; value: WaitingLog; indexes: { site: string; key: string } };
  seen: { key: string; value: SiteState };
}

/** The box in the browser's own database. @param name another for tests */
export async function openBox(name = "grounds-kept"): Promise<Box> {
  const db = await openDB<Stores>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore("waiting", { keyPath: ["site", "tab"] }).createIndex("site", "site");
      const log = fresh.createObjectStore("log", { autoIncrement: true });
      log.createIndex("site", "site");
      log.createIndex("key", "key", { unique: true });
      fresh.createObjectStore("seen", { keyPath: "id" });
    },
    // a page of a newer form waits for this one to let go
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  });
  return boxIn(db);
}

function boxIn(db: IDBPDatabase<Stores>): Box {
  return {
    isLasting: true,
    waiting: (site) => db.getAllFromIndex("waiting", "site", site),
    keep: async (waiting) => {
      const change = db.transaction("waiting", "readwrite", { durability: "strict" });
      await Promise.all([change.store.put(waiting), change.done]);
    },
    drop: (site, tab) => db.delete("waiting", [site, tab]),
    log: (site) => db.getAllFromIndex("log", "site", site),
    keepLog: async (log) => {
      const change = db.transaction("log", "readwrite", { durability: "strict" });
      await Promise.all([change.store.add(log), change.done]);
    },
    dropLog: async (key) => {
      const change = db.transaction("log", "readwrite");
      const at = await change.store.index("key").getKey(key);
      if (at !== undefined) await change.store.delete(at);
      await change.done;
    },
    seen: async (site) => (await db.get("seen", site)) ?? null,
    keepSeen: async (state) => {
      await db.put("seen", state);
    },
  };
}

/** A box for browsers that keep nothing: it lasts as long as the page. */
export function passingBox(): Box {
  const waiting = new Map<string, Waiting>();
  const log = new Map<string, WaitingLog>();
  const seen = new Map<string, SiteState>();
  const of = <T extends { site: string }>(all: Map<string, T>, site: string) =>
    [...all.values()].filter((one) => one.site === site);
  return {
    isLasting: false,
    waiting: async (site) => of(waiting, site),
    keep: async (one) => void waiting.set(`${one.site} ${one.tab}`, one),
    drop: async (site, tab) => void waiting.delete(`${site} ${tab}`),
    log: async (site) => of(log, site),
    keepLog: async (one) => void log.set(one.key, one),
    dropLog: async (key) => void log.delete(key),
    seen: async (site) => seen.get(site) ?? null,
    keepSeen: async (state) => void seen.set(state.id, state),
  };
}
