import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { FocusState, Lens } from './lens.ts';
import { tracing } from './traced-focusing.ts';

/** Throws OutOfRange or FaultyPrescription for what no lens can have, by name: a rim behind its own flange is contradictory as well. */
export function requireLens(lens: Lens): void {
  requirePositive('focal-length', lens.focalLength);
  requireFinite('principal-separation', lens.principalSeparation);
  requireFinite('front-principal-depth', lens.frontPrincipalDepth);
  requirePositive('pupil-magnification', lens.pupilMagnification);
  requirePositive('register-distance', lens.registerDistance);
  requireNotNegative('rear-protrusion', lens.rearProtrusion ?? 0);
  requireNotNegative('rear-protrusion', lens.fixedProtrusion ?? 0);
  if (lens.focusing.by === 'states') requireStates(lens, lens.focusing.states);
  else if (lens.focusing.by === 'prescription') requireRepeated(lens, tracing().stateAt(lens, 0));
  else requireNotNegative('focus-magnification', lens.focusing.closestMagnification);
  const least = lens.registerDistance - lens.focalLength - lens.principalSeparation;
  if (lens.frontPrincipalDepth < least) {
    throw new OutOfRange(
      'front-principal-depth',
      lens.frontPrincipalDepth,
      `at least ${least}, or the rim would lie behind the flange`,
    );
  }
}

/** What the first state repeats of the lens, and what it is called. */
const repeated = [
  ['focalLength', 'focal-length'],
  ['principalSeparation', 'principal-separation'],
  ['frontPrincipalDepth', 'front-principal-depth'],
  ['pupilMagnification', 'pupil-magnification'],
] as const;

function requireStates(lens: Lens, states: readonly FocusState[]): void {
  const [first] = states;
  if (!first) throw new OutOfRange('focus-magnification', NaN, 'one known setting or more');
  let before = -1;
  for (const state of states) {
    const { focusMagnification } = state;
    if (before < 0 ? focusMagnification !== 0 : !(focusMagnification > before && focusMagnification < Infinity)) {
      throw new OutOfRange(
        'focus-magnification',
        focusMagnification,
        '0 in the first state, more in each that follows',
      );
    }
    before = focusMagnification;
    requirePositive('focal-length', state.focalLength);
    requireFinite('principal-separation', state.principalSeparation);
    requireFinite('front-principal-depth', state.frontPrincipalDepth);
    requirePositive('pupil-magnification', state.pupilMagnification);
    requirePositive('f-number', state.fNumberDrift);
  }
  requireRepeated(lens, first);
  if (!isSame(first.fNumberDrift, 1)) {
    throw new OutOfRange(
      'f-number',
      first.fNumberDrift,
      'a drift of 1 in the first state, whose f-number is the marked one',
    );
  }
}

function requireRepeated(lens: Lens, first: Pick<FocusState, (typeof repeated)[number][0]>): void {
  for (const [name, quantity] of repeated) {
    const [own, stated] = [lens[name], first[name]];
    if (!isSame(stated, own)) {
      throw new OutOfRange(quantity, stated, `${own} in the first state, which is infinity, as the lens has it there`);
    }
  }
}

/** But for the digits that are printed. */
function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-3 * Math.max(1, Math.abs(other));
}
