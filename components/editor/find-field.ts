/** The control of a field, or the first within a group or row, by its key; undefined where none is on the screen. */
export function fieldFor(root: ParentNode, key: string): HTMLElement | undefined {
  const all = fieldsIn(root);
  return (
    all.find(({ dataset }) => dataset.at === key) ??
    all.find(({ dataset }) => dataset.at?.startsWith(`${key}/`))
  );
}

/** The smallest part of the screen that a key is in. */
export function fieldAround(root: ParentNode, key: string): HTMLElement | undefined {
  const around = fieldsIn(root).filter(({ dataset }) => key.startsWith(`${dataset.at}/`));
  return around.sort((a, b) => (b.dataset.at?.length ?? 0) - (a.dataset.at?.length ?? 0))[0];
}

function fieldsIn(root: ParentNode): HTMLElement[] {
  return [...root.querySelectorAll<HTMLElement>("[data-at]")];
}
