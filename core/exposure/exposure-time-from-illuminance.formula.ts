import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'incident-light-constant' | 'illuminance' | 'iso';

/**
 * How long to expose a subject on which light falls.
 *
 * t = N_w² C / (E S)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.incidentLightConstant *C*, of the meter, lx s at ISO 1; above 0
 * @param given.illuminance *E*, on the subject, lx; above 0
 * @param given.iso *S*, exposure index; above 0
 * @returns *t*, s, that records each tone of the subject at its own place. Unlike a meter behind the lens, one held at the
 *   subject has not seen N_w: put the marked N here and the picture is dark by the light loss.
 * @throws OutOfRange for anything not finite and above zero
 *
 * The constant is the maker’s choice within the standard’s range (`metering-constants.ts`); the meter knows nothing of what the picture is for.
 * Source: ISO 2720:1974 (from memory); the equation as many handbooks print it. Derived in [README](README.md#metering).
 *
 * @example exposureTimeFromIlluminance({ effectiveFNumber: 16, incidentLightConstant: 250, illuminance: 64000, iso: 100 }) // 0.01
 */
export function exposureTimeFromIlluminance({
  effectiveFNumber,
  incidentLightConstant,
  illuminance,
  iso,
}: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('incident-light-constant', incidentLightConstant);
  requirePositive('illuminance', illuminance);
  requirePositive('iso', iso);
  return (effectiveFNumber ** 2 * incidentLightConstant) / (illuminance * iso);
}

export const exposureTimeFromIlluminanceFormula = {
  gives: 'exposure-time',
  from: ['effective-f-number', 'incident-light-constant', 'illuminance', 'iso'],
  tex: String.raw`\q{exposure-time} = \frac{\q{effective-f-number}^2\,\q{incident-light-constant}}{\q{illuminance}\,\q{iso}}`,
  evaluate: exposureTimeFromIlluminance,
  says: 'The light that falls on the subject decides, whatever the subject’s own tone.',
  source: 'ISO 2720:1974 (from memory)',
  checkedBy: ['exposure-library', 'exposure-value-table'],
} as const satisfies Formula<Inputs>;
