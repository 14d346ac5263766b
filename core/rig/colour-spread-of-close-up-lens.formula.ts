import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'working-distance' | 'close-up-power' | 'abbe-number';

/**
 * How far apart on the subject a close-up lens of one element focuses blue and red.
 *
 * colour spread = w² Φ/(1000 V)
 *
 * @param given.workingDistance *w*, from the close-up lens, mm, above 0
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.abbeNumber *V*, of its glass, above 0: for the F and C lines
 * @returns mm along the axis, between the sharp planes of the F line (blue) and the C line (red). 1/(ΦV) m for a lens at infinity.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes one thin element and a camera lens without colour error of its own. First order: right to a few per cent. A cemented pair leaves a small part of it.
 * Source: derivative of 1/w = Φ + 1/(s₀ − g), Φ changing by Φ/V; derived in [README](README.md#colour).
 *
 * @example colourSpreadOfCloseUpLens({ workingDistance: 250, closeUpPower: 4, abbeNumber: 50 }) // 5
 */
export function colourSpreadOfCloseUpLens({ workingDistance, closeUpPower, abbeNumber }: Named<Inputs>): number {
  requirePositive('working-distance', workingDistance);
  requirePositive('close-up-power', closeUpPower);
  requirePositive('abbe-number', abbeNumber);
  return (workingDistance ** 2 * closeUpPower) / (metre * abbeNumber);
}

export const colourSpreadOfCloseUpLensFormula = {
  gives: 'colour-spread',
  from: ['working-distance', 'close-up-power', 'abbe-number'],
  tex: String.raw`\q{colour-spread} = \frac{\q{working-distance}^2\,\q{close-up-power}}{1000\,\q{abbe-number}}`,
  evaluate: colourSpreadOfCloseUpLens,
  says: 'A single lens focuses blue nearer than red, by more millimetres the farther away it works.',
  source: 'derived in core/rig/README.md#colour',
  checkedBy: [
    'blue-and-red-by-matrices',
    'close-up-lens-matrices',
    'colour-of-a-single-lens',
    'colour-of-telescope-glasses',
  ],
  // The sharp plane lies in front of the glass.
  sample: { 'working-distance': [1, 50000] },
} as const satisfies Formula<Inputs>;
