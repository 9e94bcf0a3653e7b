import type {
  ConflictAnswer,
  Fault,
  LogEntry,
  ProblemAnswer,
  SiteLine,
  SiteState,
  VersionLine,
} from "./answers.ts";

/** The server answered, and did not do it. */
export class Answered extends Error {
  override name = "Answered";
  readonly problem: ProblemAnswer;
  constructor(problem: ProblemAnswer) {
    super(problem.detail);
    this.problem = problem;
  }
}

/** The server was not reached, or something on the way answered in its place. */
export class NotReached extends Error {
  override name = "NotReached";
}

type Fetch = (address: string, init?: RequestInit) => Promise<Response>;

/** The addresses of `/api/sites`, one function each. All throw Answered or NotReached. */
export class SitesApi {
  readonly #fetch: Fetch;
  readonly #root: string;

  constructor(fetch: Fetch = (address, init) => globalThis.fetch(address, init), root = "/api/sites") {
    this.#fetch = fetch;
    this.#root = root;
  }

  async list(): Promise<SiteLine[]> {
    return (await this.#json<{ sites: SiteLine[] }>("GET", "")).sites;
  }

  /** @param site a survey with its record and log, or a whole document; sent again with the same key it is made once */
  create(site: object, key: string): Promise<SiteState> {
    return this.#json("POST", "", site, { "Idempotency-Key": key });
  }

  /** The whole site, versions and all, as its document. */
  document(id: string): Promise<object> {
    return this.#json("GET", `/${id}`);
  }

  state(id: string): Promise<SiteState> {
    return this.#json("GET", `/${id}/state`);
  }

  saveSurvey(id: string, etag: string, survey: object): Promise<SiteState> {
    return this.#json("PUT", `/${id}/survey`, survey, ifMatch(etag));
  }

  /** As a survey; as a draft where it has faults. */
  async saveTyped(id: string, etag: string, survey: object): Promise<SiteState> {
    try {
      return await this.saveSurvey(id, etag, survey);
    } catch (error) {
      if (!(error instanceof Answered) || error.problem.status !== 422) throw error;
      return this.saveDraft(id, etag, survey);
    }
  }

  saveDraft(id: string, etag: string, survey: object): Promise<SiteState> {
    return this.#json("PUT", `/${id}/draft`, survey, ifMatch(etag));
  }

  dropDraft(id: string, etag: string): Promise<SiteState> {
    return this.#json("DELETE", `/${id}/draft`, undefined, ifMatch(etag));
  }

  undo(id: string, etag: string): Promise<SiteState> {
    return this.#json("POST", `/${id}/undo`, undefined, ifMatch(etag));
  }

  redo(id: string, etag: string): Promise<SiteState> {
    return this.#json("POST", `/${id}/redo`, undefined, ifMatch(etag));
  }

  restore(id: string, etag: string, version: number): Promise<SiteState> {
    return this.#json("POST", `/${id}/restore`, { version }, ifMatch(etag));
  }

  async versions(id: string): Promise<VersionLine[]> {
    return (await this.#json<{ versions: VersionLine[] }>("GET", `/${id}/versions`)).versions;
  }

  async compare(id: string, from: number, to: number): Promise<Fault[]> {
    return (await this.#json<{ changes: Fault[] }>("GET", `/${id}/compare?from=${from}&to=${to}`)).changes;
  }

  addToLog(id: string, entries: readonly LogEntry[], key: string): Promise<SiteState> {
    return this.#json("POST", `/${id}/log`, { entries }, { "Idempotency-Key": key });
  }

  async #json<T>(
    method: string,
    path: string,
    body?: object,
    headers: Record<string, string> = {},
  ): Promise<T> {
    const init: RequestInit = { method, headers };
    if (body !== undefined) {
      init.body = JSON.stringify(body);
      init.headers = { ...headers, "Content-Type": "application/json" };
    }
    try {
      const answer = await this.#fetch(`${this.#root}${path}`, init);
      const read = await answer.json();
      if (answer.ok) return read;
      throw new Answered({ status: answer.status, detail: read.detail, faults: read.faults ?? [], ...read });
    } catch (error) {
      if (error instanceof Answered) throw error;
      throw new NotReached();
    }
  }
}

export function isConflict(problem: ProblemAnswer): problem is ConflictAnswer {
  return problem.status === 412 && "kept" in problem;
}

function ifMatch(etag: string): Record<string, string> {
  return { "If-Match": `"${etag}"` };
}
