import { OutOfRange } from '#core/quantity/errors.ts';
import type { Cone } from '#core/depth/cone.ts';
import { assembleRig } from './assemble.ts';
import { closestMagnification } from './lens-in-use.ts';
import type { Part } from './part.ts';
import { solveRig } from './solve.ts';
import type { SharpRig } from './solved-rig.ts';

/** The cones that a chain goes through while one of its lenses is focused from near to far, the camera standing still: what `focusedPlan` asks for. */
export interface ConesByFocusing {
  /** The cone with the sharp plane so many mm farther from the sensor than where the chain was set; from 0 to `farthestStep`. */
  readonly coneAfter: (step: number) => Cone;
  /** How far the plane can be moved; Infinity where the chain reaches infinity. */
  readonly farthestStep: number;
}

/**
 * Focusing a chain by the ring of one of its lenses, from the setting it has.
 *
 * the m₀ at which L is larger by the step, found by halving
 *
 * @param parts the camera first, the foremost last, set to the nearest frame
 * @param part place of the lens that is focused
 * @returns see {@link ConesByFocusing}. Below life size the plane goes away as the lens is racked in, beyond it as it is racked out.
 * @throws RangeError where no lens stands at that place; OutOfRange for a chain without a sharp plane near, and from the function for a step out of reach
 *
 * Assumes that L changes one way only from the setting to the end of the ring.
 * Source: derived in [README](README.md#focusing).
 */
export function conesByFocusing(parts: readonly Part[], part: number): ConesByFocusing {
  const lens = parts[part];
  if (lens?.part !== 'lens') throw new RangeError(`part ${part} is ${lens?.part ?? 'none'}; accepted: a lens`);
  const solvedAt = (focusMagnification: number): SharpRig | null => {
    const solved = solveRig(assembleRig(parts.with(part, { ...lens, focusMagnification })));
    return solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside' ? solved : null;
  };
  const start = lens.focusMagnification;
  const first = solvedAt(start);
  if (!first) throw new OutOfRange('magnification', 0, 'above 0: a chain with a sharp plane near');

  const movedAt = (setting: number) => (solvedAt(setting)?.focusDistance ?? Infinity) - first.focusDistance;
  const closest = closestMagnification(lens.lens);
  const nudge = 1e-6 * closest;
  const end = start > 0 && movedAt(Math.max(0, start - nudge)) > 0 ? 0 : closest;
  const farthestStep = Math.max(0, movedAt(end));

  const coneAfter = (step: number): Cone => {
    if (step === 0) return first;
    if (!(step > 0 && step <= farthestStep && step < Infinity)) {
      throw new OutOfRange('frame-step', step, `from 0 to ${farthestStep} mm, which focusing reaches`);
    }
    let [near, far] = [start, end];
    for (;;) {
      const middle = (near + far) / 2;
      if (middle === near || middle === far) break;
      if (movedAt(middle) < step) near = middle;
      else far = middle;
    }
    // The nearer of two neighbours: the farther one may be infinity.
    return solvedAt(near) as SharpRig;
  };
  return { coneAfter, farthestStep };
}
