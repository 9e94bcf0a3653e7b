const quote = 0x22;
const backslash = 0x5c;

/**
 * Whether JSON text nests more than `limit` levels: one pass over the characters before anything is
 * parsed, so that a deep body costs no stack. Text that is not JSON gets some answer; the parser refuses it.
 */
export function isDeeperThan(text: string, limit: number): boolean {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (inString) {
      if (code === backslash) i++;
      else if (code === quote) inString = false;
    } else if (code === quote) {
      inString = true;
    } else if (code === 0x7b || code === 0x5b) {
      depth++;
      if (depth > limit) return true;
    } else if (code === 0x7d || code === 0x5d) {
      depth--;
    }
  }
  return false;
}
