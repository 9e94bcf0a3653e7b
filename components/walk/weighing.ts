import type { Survey } from "../../src/survey/survey.ts";
import type { SiteWeather } from "../frame/site-weather.ts";
import { Compute } from "../frame/work/compute.ts";
import type { Weighed } from "./context.ts";
import type { Weight } from "./order.ts";
import { weightsOf } from "./weights.ts";

/** Works surveys out for a walk, beside the page and beside the site's own answer. */
export class Weighing {
  private readonly compute = new Compute();
  /** The one under way: the worker's newest call overtakes, so that they go one after another. */
  private last: Promise<unknown> = Promise.resolve();

  stop(): void {
    this.compute.stop();
  }

  /** Litres that a survey comes to. @throws where it cannot be worked out */
  weigh(survey: Survey, weather: SiteWeather | null): Promise<Weighed> {
    return this.inTurn(() => this.weighOne(survey, weather));
  }

  /** @param each hears what each open question does to the answer, as it becomes surer */
  weights(survey: Survey, weather: SiteWeather, each: (weights: Weight[]) => void): Promise<void> {
    return this.inTurn(async () => {
      const weighed = await this.weighOne(survey, weather);
      void this.compute
        .follow({ kind: "width" }, ({ width }) => {
          if (width) each(weightsOf(survey, width, weighed));
        })
        .catch(() => null);
    }).catch(() => {});
  }

  private inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = this.last.then(work);
    this.last = next.catch(() => null);
    return next;
  }

  private async weighOne(survey: Survey, weather: SiteWeather | null): Promise<Weighed> {
    if (!weather || weather.is === "none") throw new Error("no weather to work it out on");
    const told = await this.compute.ask({ kind: "answer", survey, weather: weather.of });
    if (!told || !("view" in told)) throw new Error("the survey cannot be worked out yet");
    const { beds, mains } = told.view;
    return {
      beds: new Map(beds.map(({ id, gross_L_year }) => [id, gross_L_year])),
      need_kL_year: mains.need_kL,
    };
  }
}
