/** Begins to count; the function it returns says how many milliseconds have passed. For how long work takes, never for what is shown. */
export function stopwatch(): () => number {
  const start = performance.now();
  return () => performance.now() - start;
}
