/** Where nothing is painted, as in a tab behind others, it counts as painted after this. */
const limit_ms = 300;

/** After what was rendered last has come onto the screen. */
export function painted(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, limit_ms);
    requestAnimationFrame(() => setTimeout(resolve));
  });
}
