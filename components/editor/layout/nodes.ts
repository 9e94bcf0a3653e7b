/** What stands on a screen of the editor, in order. Names are fields of the survey, dots between them. */
export type Node =
  | FieldNode
  | GroupNode
  | RowsNode
  | FormsNode
  | {
      readonly special: "habit" | "mulch" | "dry-days" | "change" | "id" | "about";
      readonly of: string;
      readonly nodes?: readonly Node[];
    }
  | { readonly drawing: "skyline" | "tank" | "outline" }
  | { readonly more: readonly Node[] };

export interface FieldNode {
  readonly field: string;
  /** A blank one stays in the document as a blank: it is what tells the form it belongs to. */
  readonly keeps?: boolean;
}

/** Fields that are there together or not at all. */
export interface GroupNode {
  readonly group: string;
  readonly nodes: readonly Node[];
  /** It is all there is on its screen, and has no heading of its own. */
  readonly isAlone?: boolean;
}

/** Entries without ids of their own. */
export interface RowsNode {
  readonly rows: string;
  readonly nodes: readonly Node[];
  /** What a new one begins with. */
  readonly begin: Readonly<Record<string, unknown>>;
}

/** Exactly one of several forms, told by the fields that only it has. */
export interface FormsNode {
  readonly forms: string;
  /** Where its fields stand; blank for where the node itself does. */
  readonly in: string;
  readonly options: readonly FormNode[];
  /** Whether none of them is an answer. */
  readonly mayBeNone: boolean;
}

export interface FormNode {
  readonly key: string;
  readonly marks: readonly string[];
  readonly nodes: readonly Node[];
  readonly begin: Readonly<Record<string, unknown>>;
}

export const field = (name: string): FieldNode => ({ field: name });
export const fields = (...names: readonly string[]): readonly FieldNode[] => names.map(field);
const kept = (...names: readonly string[]): readonly FieldNode[] =>
  names.map((name) => ({ field: name, keeps: true }));

/** A form of plain fields: each begins blank and is wanted. */
export function form(key: string, ...names: readonly string[]): FormNode {
  return {
    key,
    marks: names,
    nodes: kept(...names),
    begin: Object.fromEntries(names.map((name) => [name, ""])),
  };
}

/** Every field that a node shows, below the place that the node stands in; rows and lists of points as `[]`. */
export function fieldsOf(node: Node, within = ""): string[] {
  const at = (name: string) => (within === "" ? name : `${within}.${name}`);
  const all = (nodes: readonly Node[], place: string) => nodes.flatMap((one) => fieldsOf(one, place));
  if ("field" in node) return [at(node.field)];
  if ("group" in node) return all(node.nodes, at(node.group));
  if ("rows" in node) return all(node.nodes, `${at(node.rows)}[]`);
  if ("forms" in node) {
    const place = node.in === "" ? within : at(node.in);
    return node.options.flatMap(({ nodes }) => all(nodes, place));
  }
  if ("special" in node) {
    if (node.special === "habit" || node.special === "mulch") return all(node.nodes ?? [], at(node.of));
    if (node.special === "change") return all(node.nodes ?? [], within);
    return [at(node.of)];
  }
  return "more" in node ? all(node.more, within) : [];
}
