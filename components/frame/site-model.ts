import type { Working } from "../../src/explain/working.ts";
import type { Question, Reply } from "../../src/report/questions.ts";
import type { TanksView } from "../../src/report/tanks-view.ts";
import type { ThirstView } from "../../src/report/thirst-view.ts";
import type { AnswerView } from "../../src/report/view.ts";
import { carried } from "../../src/survey/edit/carried.ts";
import type { Draft } from "../../src/survey/edit/document.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { SiteState } from "../kept/answers.ts";
import { KeptSite } from "../kept/kept-site.ts";
import { isSameData } from "../kept/same.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";
import type { Standing } from "../kept/standing.ts";
import type { Keeping } from "./keeping.ts";
import { type SiteWeather, WeatherSource } from "./site-weather.ts";
import type { Compute } from "./work/compute.ts";
import type { AnswerWidth, ToldFault, Wrong } from "./work/messages.ts";

/** How it stands with the answer. */
export type Worked =
  | { is: "working" }
  | { is: "ready" }
  | { is: "wrong"; of: Wrong; faults: readonly ToldFault[] }
  | { is: "crashed"; message: string }
  /** The weather could not be fetched. */
  | { is: "not-reached" };

export interface SiteParts {
  id: string;
  keeping: Keeping;
  compute: Compute;
  /** When working the answer out may begin: what can be shown without it comes first. */
  mayBegin(): Promise<void>;
}

/**
 * A site that a page works on: its survey as typed and as it counts, its weather, the answer worked out beside the
 * page, and how it stands with what is kept. The newest survey wins over every answer under way.
 */
export class SiteModel {
  readonly id: string;
  readonly kept: KeptSite;
  /** The survey that counts. */
  survey: Survey | null = null;
  /** Entries with faults, kept beside it; null where there are none. */
  draft: object | null = null;
  /** The last answer; it stays while the next is worked out. */
  view: AnswerView | null = null;
  worked: Worked = { is: "working" };
  weather: SiteWeather | null = null;
  /** What was typed last, as it was given to be kept. */
  #typed: object | null = null;
  #runs = 0;
  readonly #compute: Compute;
  readonly #mayBegin: () => Promise<void>;
  readonly #source: WeatherSource;
  readonly #listeners = new Set<() => void>();

  constructor({ id, keeping, compute, mayBegin }: SiteParts) {
    this.id = id;
    this.kept = new KeptSite({ id, ...keeping });
    this.#compute = compute;
    this.#mayBegin = mayBegin;
    this.#source = new WeatherSource(id);
  }

  get state(): SiteState | null {
    return this.kept.state;
  }

  get standing(): Standing {
    return this.kept.standing;
  }

  get name(): string {
    return this.survey?.site.name ?? this.state?.name ?? "";
  }

  /** Calls back on every change. @returns what ends it */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /**
   * @throws Answered where there is no such site
   * @throws NotReached where the server is not reached and this browser has not seen the site
   */
  async open(): Promise<void> {
    this.kept.listen(() => this.#heard());
    await this.kept.open();
    this.#adopt();
    if (this.survey === null) throw new NotReached();
    addEventListener("online", this.#online);
  }

  close(): void {
    removeEventListener("online", this.#online);
    this.kept.close();
    this.#listeners.clear();
  }

  /** The survey after an edit, in order. */
  change(survey: Survey): void {
    this.survey = survey;
    this.draft = null;
    this.#keep(survey);
    void this.#workOut();
  }

  /**
   * The survey after something other than the editor changed it: entries with faults stay beside it as they were typed.
   * @param before what was changed
   */
  changeBeside(after: Survey, before = this.survey): void {
    const { draft } = this;
    this.change(after);
    if (draft && before) this.typeDraft(carried(draft as Draft, before as Draft, after as Draft));
  }

  /** Entries with faults to keep beside the survey; null once there are none. */
  typeDraft(draft: object | null): void {
    if (isSameData(draft, this.draft)) return;
    this.draft = draft;
    if (this.survey) this.#keep(draft ?? this.survey);
    this.#tell();
  }

  undo(): Promise<void> {
    return this.kept.undo();
  }

  redo(): Promise<void> {
    return this.kept.redo();
  }

  /** Puts a record in the place of the one before. @throws Answered, NotReached */
  async putWeather(csv: string): Promise<void> {
    await this.#source.put(csv, this.state?.weather?.etag ?? null);
    await this.#reopen();
  }

  /** Takes the record out; made-up years stand in. @throws Answered, NotReached */
  async takeWeatherOut(): Promise<void> {
    const { weather } = this.state ?? {};
    if (weather) await this.#source.takeOut(weather.etag);
    await this.#reopen();
  }

  /** Works the answer out again, after something kept it from being. */
  again(): void {
    void this.#workOut();
  }

  /** The working of a figure of the answer shown, by its address; null where it leads nowhere. */
  async explain(address: string, units: UnitSystem): Promise<Working | null> {
    const told = await this.#compute.ask({ kind: "explain", address, units });
    return told?.working ?? null;
  }

  /** What each bed of the answer shown needs; null where there is none, or a later call overtook it. */
  async thirst(): Promise<ThirstView | null> {
    return (await this.#compute.ask({ kind: "thirst" }))?.view ?? null;
  }

  /** What its roofs and tanks bring; null likewise. */
  async tanks(): Promise<TanksView | null> {
    return (await this.#compute.ask({ kind: "tanks" }))?.view ?? null;
  }

  /** A worked example of one bed's week for a class, a page to print; null where there is none. */
  async classSheet(bed: string, units: UnitSystem): Promise<string | null> {
    return (await this.#compute.ask({ kind: "class-sheet", bed, units }))?.html ?? null;
  }

  /** How far the answer shown may be out. @param each hears it as it becomes surer */
  async width(each: (width: AnswerWidth | null) => void): Promise<void> {
    await this.#compute.follow({ kind: "width" }, ({ width }) => each(width));
  }

  /** What a screen wants to know further of it; null likewise. */
  async ask(question: Question): Promise<Reply | null> {
    return (await this.#compute.ask({ kind: "question", question }))?.reply ?? null;
  }

  async #reopen(): Promise<void> {
    await this.kept.open();
    await this.#workOut();
  }

  #keep(survey: object): void {
    this.#typed = survey;
    void this.kept.change(survey);
  }

  readonly #online = (): void => this.kept.tryNow();

  /** Something moved in what is kept: this tab's own saves change nothing, undo and the like bring another survey. */
  #heard(): void {
    const now = this.kept.survey;
    if (now !== null && this.#typed !== null && !isSameData(now, this.#typed)) this.#adopt();
    this.#tell();
  }

  #adopt(): void {
    const { state } = this;
    const typed = this.kept.survey;
    if (typed === null) return;
    this.#typed = typed;
    const counts = state?.survey ?? (typed as Survey);
    // what waits unsent counts where it can be worked out; the first answer tells
    this.survey = isSameData(typed, state?.draft?.survey ?? null) ? counts : (typed as Survey);
    this.draft = state?.draft?.survey ?? null;
    void this.#workOut();
  }

  async #workOut(): Promise<void> {
    const { survey } = this;
    if (survey === null) return;
    const run = ++this.#runs;
    this.worked = { is: "working" };
    this.#tell();
    try {
      const weather = await this.#source.of(survey, this.state);
      if (run !== this.#runs) return;
      this.weather = weather;
      if (weather.is === "none") return this.#end({ is: "wrong", of: "weather", faults: weather.faults });
      await this.#mayBegin();
      if (run !== this.#runs) return;
      const told = await this.#compute.ask({ kind: "answer", survey, weather: weather.of });
      if (told === null || run !== this.#runs) return;
      if ("view" in told) this.view = told.view;
      else if (this.#fellBack(told.wrong)) return;
      this.#end("view" in told ? { is: "ready" } : { is: "wrong", of: told.wrong, faults: told.faults });
    } catch (error) {
      if (run !== this.#runs) return;
      if (error instanceof NotReached || error instanceof Answered) this.#end({ is: "not-reached" });
      else this.#end({ is: "crashed", message: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Entries with faults that an earlier page left unsent: the last survey in order counts meanwhile. */
  #fellBack(wrong: Wrong): boolean {
    const { state, survey } = this;
    if (wrong !== "survey" || !state || isSameData(survey, state.survey)) return false;
    this.draft = survey;
    this.survey = state.survey;
    void this.#workOut();
    return true;
  }

  #end(worked: Worked): void {
    this.worked = worked;
    this.#tell();
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
