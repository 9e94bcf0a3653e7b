/** On a phone a screen of the walk begins at the top of the glass, past the head of the page. */
export function toTop(walk: HTMLElement): void {
  if (matchMedia("(max-width: 40rem)").matches) walk.scrollIntoView({ block: "start", behavior: "instant" });
  else scrollTo({ top: 0, behavior: "instant" });
}
