import * as z from "zod";

/** Has schemas checked without compiling them first: a page's security policy forbids that. */
export function withoutCompiling(): void {
  z.config({ jitless: true });
}
