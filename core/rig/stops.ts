import type { ApertureControl, Rig } from './rig.ts';

/** One stop of a rig, and the cone that would reach the sensor if it alone limited it. */
export interface Stop {
  /** Place of its part in the chain. */
  readonly part: number;
  readonly effectiveFNumber: number;
  /** *N*, as marked; null where nothing is. */
  readonly fNumber: number | null;
  readonly apertureControl: ApertureControl;
}

/**
 * Every stop of a rig with its own effective f-number, the one that limits first.
 *
 * N_w = |height of the axial ray in the exit pupil| / (2 × its radius), the ray leaving the sensor at slope 1
 *
 * @param rig see `assembleRig`
 * @returns the stops, from the one that limits to the one farthest from it: opening the first beyond the second's f-number gains nothing
 *
 * Source: derived in [README](README.md#which-stop-limits).
 */
export function stopsOf({ elements }: Rig): readonly Stop[] {
  const stops: Stop[] = [];
  let height = 0;
  let slope = 1;
  for (const { gap, power, exitRadius, exitDepth, fNumber, part, control } of elements) {
    height += gap * slope;
    if (exitRadius < Infinity) {
      stops.push({
        part,
        effectiveFNumber: Math.abs(height - exitDepth * slope) / (2 * exitRadius),
        fNumber: fNumber > 0 ? fNumber : null,
        apertureControl: control,
      });
    }
    slope -= power * height;
  }
  return stops.sort((one, other) => other.effectiveFNumber - one.effectiveFNumber);
}
