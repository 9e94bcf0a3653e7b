/** Start times of a simple tap timer. Common practice. */
export const usualStarts = 2;
