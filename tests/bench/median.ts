/** Median time of a job over runs, after as many again to warm up. */
export function median_ms(runs: number, job: () => void): number {
  for (let k = 0; k < runs; k++) job();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    job();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}
