/** How far from the exact number an answer still passes, and why that far and no farther. */
export type Tolerance = {
  /** Completes "… is allowed: ", e.g. `three figures read off a ring`. */
  readonly because: string;
} & (
  | { /** Share of the exact number. */ readonly relative: number }
  | { /** In the base unit; 0 where only the exact number will do. */ readonly absolute: number }
);

/** The greatest difference from *value* that *tolerance* allows, base unit, 0 or above. */
export function marginAt(value: number, tolerance: Tolerance): number {
  return 'relative' in tolerance ? Math.abs(value) * tolerance.relative : tolerance.absolute;
}

/** True where *value* lies within *tolerance* of *target*. The edge belongs to it, whatever rounding does to its last digit. */
export function isWithin(value: number, target: number, tolerance: Tolerance): boolean {
  return Math.abs(value - target) <= marginAt(target, tolerance) + 1e-12 * Math.abs(target);
}
