import { html, nothing } from "lit";
import { pathOf } from "../../src/survey/edit/document.ts";
import { sortAt } from "../../src/survey/edit/sorts.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { faultWords } from "./below.ts";
import type { Editing, PlacedFault, Shown } from "./editing.ts";
import { screenOf } from "./layout/address.ts";
import { entryName } from "./shown.ts";
import { writingFor } from "./writings.ts";

const mostListed = 30;

/** Everything that is wrong, then everything still wanted; each leads to its field. Opened on demand, so that nothing moves. */
export function faultList(editing: Editing): Shown {
  const hard = editing.faults.filter(({ isSoft }) => !isSoft);
  const soft = editing.faults.filter(({ isSoft }) => isSoft);
  if (editing.faults.length === 0) return nothing;
  const titles = [
    ...(hard.length > 0 ? [editorWords.faultsTitle(hard.length)] : []),
    ...(soft.length > 0 ? [editorWords.wantedTitle(soft.length)] : []),
  ];
  return html`<details class="faults">
    <summary><h3>${titles.join(" · ")}</h3></summary>
    ${hard.length > 0 ? lines(editing, hard) : nothing} ${soft.length > 0 ? lines(editing, soft) : nothing}
    <p class="quiet">${editorWords.faultsLead}</p>
  </details>`;
}

function lines(editing: Editing, faults: readonly PlacedFault[]): Shown {
  return html`<ul>
    ${faults.slice(0, mostListed).map((fault) => {
      const at = screenOf(editing.draft, fault.address);
      const path = pathOf(editing.draft, fault.address);
      const sort = path && sortAt(path);
      const words = faultWords(editing, fault, path && sort ? writingFor(path, sort, editing) : null);
      const name = entryName(editing, fault.address);
      const go = (event: Event) => {
        event.preventDefault();
        (event.currentTarget as HTMLElement).closest("details")?.removeAttribute("open");
        editing.go(at, fault.key);
      };
      return html`<li>
        <a href=${editing.href(at)} @click=${go}>${name ? html`<bdi>${name}</bdi>: ` : nothing}${words}</a>
      </li>`;
    })}
  </ul>`;
}
