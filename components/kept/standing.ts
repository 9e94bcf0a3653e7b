import type { ConflictAnswer, Fault } from "./answers.ts";

/** How it stands with what was typed. */
export type Standing =
  /** Everything typed is on the server's disk. */
  | { is: "saved"; at: string }
  /** On its way. */
  | { is: "saving" }
  /** The server is not reached, or says why it cannot write; everything goes when it can. */
  | { is: "waiting"; reason: string | null; isInBrowser: boolean }
  /** On the server's disk as a draft: it has faults. */
  | { is: "draft"; at: string; faults: readonly Fault[] }
  /** Somebody else saved meanwhile. Nothing was overwritten; one of three ways on is to be chosen. */
  | { is: "conflict"; conflict: ConflictAnswer }
  /** The server will not take it as it is; it stays here. */
  | { is: "refused"; reason: string };
