import { OutOfRange, requireNotNegative } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'air-gap' | 'pane-thickness' | 'pane.refractive-index' | 'immersion-depth' | 'medium.refractive-index';

/**
 * How far from the front rim a subject in a tank seems to be: the working distance that the lens has to have in air.
 *
 * w = gap + pane/n_pane + depth/n_medium
 *
 * @param given.airGap front rim to the outer face of the wall, mm, 0 or above
 * @param given.paneThickness of the wall, mm, 0 or above; 0 for a water surface seen from above
 * @param given.paneRefractiveIndex of the wall, 1 or above: 1.5 for glass
 * @param given.immersionDepth inner face of the wall to subject, mm, 0 or above
 * @param given.mediumRefractiveIndex of what is in the tank, 1 or above: 1.33 for water
 * @returns *w*, mm. Less than the way there: behind the wall a subject seems nearer and looks no larger than it is, so *m*, *N_w* and field are
 *   those of the lens at this *w* in air.
 * @throws OutOfRange for a length below zero, an index below 1, or anything not finite
 *
 * Assumes a flat wall square to the axis and rays close to it: oblique ones cross nearer still, which blurs wide cones and bends the field.
 * Source: OpenStax, University Physics Vol. 3, section 2.3: h_i = (n_2/n_1) h_o at a plane interface. Derived in [README](README.md#tanks).
 *
 * @example workingDistanceIntoTank({ airGap: 50, paneThickness: 6, paneRefractiveIndex: 1.5, immersionDepth: 133, mediumRefractiveIndex: 1.33 }) // 154
 */
export function workingDistanceIntoTank(given: Named<Inputs>): number {
  const { airGap, paneThickness, paneRefractiveIndex, immersionDepth, mediumRefractiveIndex } = given;
  requireNotNegative('air-gap', airGap);
  requireNotNegative('pane-thickness', paneThickness);
  requireDenser('pane.refractive-index', paneRefractiveIndex);
  requireNotNegative('immersion-depth', immersionDepth);
  requireDenser('medium.refractive-index', mediumRefractiveIndex);
  return airGap + paneThickness / paneRefractiveIndex + immersionDepth / mediumRefractiveIndex;
}

function requireDenser(quantity: 'pane.refractive-index' | 'medium.refractive-index', value: number): void {
  if (!(value >= 1 && value < Infinity)) throw new OutOfRange(quantity, value, 'a finite number, 1 or above');
}

export const workingDistanceIntoTankFormula = {
  gives: 'working-distance',
  from: ['air-gap', 'pane-thickness', 'pane.refractive-index', 'immersion-depth', 'medium.refractive-index'],
  tex: String.raw`\q{working-distance} = \q{air-gap} + \frac{\q{pane-thickness}}{\q{pane.refractive-index}} + \frac{\q{immersion-depth}}{\q{medium.refractive-index}}`,
  evaluate: workingDistanceIntoTank,
  says: 'A fish behind glass seems a quarter nearer than it swims.',
  source: 'OpenStax, University Physics Vol. 3, section 2.3; derived in core/gaussian/README.md#tanks',
  checkedBy: ['angles-tanks-and-lights'],
} as const satisfies Formula<Inputs>;
