import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));

export interface Import {
  /** As written. */
  from: string;
  /** The file of this repository that it names, from the root; null for a package. */
  file: string | null;
  typeOnly: boolean;
}

export interface Source {
  /** From the repository's root, with forward slashes. */
  path: string;
  text: string;
  imports: Import[];
}

const skipped = new Set(["node_modules", "dist", ".git"]);

/** Every file below a folder, from the repository's root, in order. */
export function filesBelow(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => !skipped.has(entry.name))
    .flatMap((entry) => {
      const path = posix.join(folder, entry.name);
      return entry.isDirectory() ? filesBelow(path) : [path];
    })
    .sort();
}

export function textOf(path: string): string {
  return readFileSync(join(root, path), "utf8");
}

/** The TypeScript files below the folders, with what each imports. */
export function sourcesBelow(...folders: string[]): Source[] {
  return folders
    .flatMap(filesBelow)
    .filter((path) => path.endsWith(".ts"))
    .map((path) => {
      const text = textOf(path);
      return { path, text, imports: importsOf(path, text) };
    });
}

const statement = /^\s*(?:import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s+)?["']([^"']+)["']/gm;
const dynamic = /\bimport\(\s*["']([^"']+)["']\s*\)/g;

function importsOf(path: string, text: string): Import[] {
  const code = withoutComments(text);
  const named = [...code.matchAll(statement)].map((match) => {
    return { from: match[2] ?? "", typeOnly: match[1] !== undefined };
  });
  const later = [...code.matchAll(dynamic)].map((match) => ({ from: match[1] ?? "", typeOnly: false }));
  return [...named, ...later].map((found) => {
    const file = found.from.startsWith(".")
      ? posix.join(dirname(path), found.from.replace(/\?.*$/, ""))
      : null;
    return { ...found, file };
  });
}

/** Code without block comments and without lines that are only a comment. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");
}
