import { html } from "lit";
import { traceWords } from "../../../src/words/en/walk-trace.ts";

type Take = (file: File) => void;

function chooser(words: string, take: Take) {
  return html`<label class="press">${words}
    <input
      type="file"
      accept="image/jpeg,image/png,image/webp"
      @change=${(event: Event) => {
        const [file] = (event.target as HTMLInputElement).files ?? [];
        if (file) take(file);
      }}
    />
  </label>`;
}

/** Where a picture is dropped or chosen. */
export function dropTemplate(isOver: boolean, over: (isOver: boolean) => void, take: Take) {
  return html`<div
    class="drop ${isOver ? "over" : ""}"
    @dragover=${(event: DragEvent) => {
      event.preventDefault();
      over(true);
    }}
    @dragleave=${() => over(false)}
    @drop=${(event: DragEvent) => {
      event.preventDefault();
      over(false);
      const [file] = event.dataTransfer?.files ?? [];
      if (file) take(file);
    }}
  >
    ${chooser(traceWords.choose, take)}
    <p class="quiet">${traceWords.stays}</p>
  </div>`;
}

interface Tools {
  canUndo: boolean;
  zoom(by: number): void;
  undo(): void;
  clear(): void;
  take: Take;
}

/** What can be done with the board, for thumbs. */
export function toolsTemplate({ canUndo, zoom, undo, clear, take }: Tools) {
  return html`<div class="tools">
    <button class="press" aria-label=${traceWords.nearer} @click=${() => zoom(1.5)}>+</button>
    <button class="press" aria-label=${traceWords.further} @click=${() => zoom(1 / 1.5)}>−</button>
    <button class="press" ?disabled=${!canUndo} @click=${undo}>${traceWords.undo}</button>
    <button class="plain" @click=${clear}>${traceWords.clear}</button>
    ${chooser(traceWords.another, take)}
  </div>`;
}
