import "../../../../src/survey/without-compiling.ts";

import "../../../../components/editor/editor.ts";
import type { Editor } from "../../../../components/editor/editor.ts";
import type { Survey } from "../../../../src/survey/survey.ts";
import type { UnitSystem } from "../../../../src/units.ts";

interface Options {
  system?: UnitSystem;
  draft?: Record<string, unknown>;
  typed?: Editor["typed"];
}

interface Told {
  survey: Survey;
  words: string;
  typed: Editor["typed"];
}

/** The editor in a page of its own, with what it told: journeys start it and look at that. */
interface Harness {
  start(survey: Survey, options?: Options): void;
  told: Told[];
  drafts: unknown[];
}

declare global {
  interface Window {
    harness: Harness;
  }
}

const place = () => decodeURI(location.hash.slice(1));

window.harness = {
  told: [],
  drafts: [],
  start(survey, { system = "metric", draft, typed } = {}) {
    document.querySelector("gwb-editor")?.remove();
    const editor = document.createElement("gwb-editor") as Editor;
    editor.system = system;
    editor.locale = "en-GB";
    if (draft) editor.draft = draft;
    if (typed) editor.typed = typed;
    editor.survey = survey;
    editor.at = place();
    editor.addEventListener("change", (event) => {
      const { detail } = event as CustomEvent<Told>;
      window.harness.told.push(detail);
      editor.survey = detail.survey;
    });
    editor.addEventListener("draft-change", (event) => {
      window.harness.drafts.push((event as CustomEvent<{ draft: unknown }>).detail.draft);
    });
    editor.addEventListener("at-change", (event) => {
      history.pushState(null, "", `#${(event as CustomEvent<{ at: string }>).detail.at}`);
    });
    document.querySelector("main")!.append(editor);
  },
};

addEventListener("popstate", () => {
  const editor = document.querySelector<Editor>("gwb-editor");
  if (editor) editor.at = place();
});
