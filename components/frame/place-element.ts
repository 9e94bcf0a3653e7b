import { LitElement } from "lit";
import type { App } from "./app.ts";
import type { SiteModel } from "./site-model.ts";

/**
 * What every place of a site is given.
 *
 * @property model the site, its answer and its weather
 * @property app units, navigation, speech
 * @property place its own name among the places
 * @property rest what follows the place in the address
 * @property turn counts what the model told, so that it is drawn anew
 */
export abstract class PlaceElement extends LitElement {
  static override properties = {
    model: { attribute: false },
    app: { attribute: false },
    place: { attribute: false },
    rest: { attribute: false },
    turn: { attribute: false },
  };

  declare model: SiteModel;
  declare app: App;
  declare place: string;
  declare rest: string;
  declare turn: number;
}
