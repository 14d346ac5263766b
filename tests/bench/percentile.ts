/** The value that *share* of *values* do not exceed. */
export function percentile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new Error('No movement was seen: the handle could not be dragged.');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] as number;
}
