import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { erf } from './erf.ts';

type Inputs = 'near-limit' | 'far-limit' | 'sway' | 'focus-offset';

/**
 * The share of frames in which a small part of the subject lies within the depth of field, for a camera that sways to and fro along its axis.
 *
 * share = ½ [erf((near + δ)/(√2 σ)) + erf((far − δ)/(√2 σ))], which is erf(T/(2√2 σ)) with equal limits and no offset
 *
 * @param given.nearLimit from the sharp plane towards the lens, mm, above 0; `Infinity` where all of that is sharp
 * @param given.farLimit from the sharp plane away from the lens, mm, above 0; `Infinity` where everything behind is sharp
 * @param given.sway *σ*, standard deviation, mm, above 0
 * @param given.focusOffset *δ*, how far beyond the sharp plane the part is on average, mm, finite; below 0 nearer to the lens
 * @returns from 0 to 1. Not the share of good pictures: what else goes wrong is not in it.
 * @throws OutOfRange by name for what is no such number
 *
 * Assumes a sway that is normally distributed and frames taken without regard to it: who presses at the right moment does better.
 * Source: the normal distribution. Derived in [README](README.md#keepers).
 *
 * @example keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: 0 }) // 0.68268949...
 */
export function keeperShare({ nearLimit, farLimit, sway, focusOffset }: Named<Inputs>): number {
  const near = requireLimit('near-limit', nearLimit);
  const far = requireLimit('far-limit', farLimit);
  const spread = Math.SQRT2 * requirePositive('sway', sway);
  requireFinite('focus-offset', focusOffset);
  // Far off, rounding alone decides the sign of what is left.
  return Math.max(0, erf((near + focusOffset) / spread) + erf((far - focusOffset) / spread)) / 2;
}

function requireLimit(name: 'near-limit' | 'far-limit', limit: number): number {
  if (!(limit > 0)) throw new OutOfRange(name, limit, 'above 0, or infinite');
  return limit;
}

export const keeperShareFormula = {
  gives: 'keeper-share',
  from: ['near-limit', 'far-limit', 'sway', 'focus-offset'],
  tex: String.raw`\q{keeper-share} = \frac{1}{2}\left(\operatorname{erf}\left(\frac{\q{near-limit} + \q{focus-offset}}{\sqrt{2}\,\q{sway}}\right) + \operatorname{erf}\left(\frac{\q{far-limit} - \q{focus-offset}}{\sqrt{2}\,\q{sway}}\right)\right)`,
  evaluate: keeperShare,
  says: 'How much of the sway’s bell curve is within the depth of field.',
  source: 'the normal distribution; derived in core/exposure/README.md#keepers',
  checkedBy: ['angles-tanks-and-lights', 'chance', 'leans-turns-and-keepers'],
  // Far from the middle two error functions cancel but for rounding; an infinite limit is no number to print.
  sample: { 'near-limit': [0.1, 5], 'far-limit': [0.1, 5], sway: [0.5, 5], 'focus-offset': [-1, 1] },
  // Where all or next to nothing is in focus the printed line would say less than words.
  holds: (given) => {
    const isPrintable = given.nearLimit < Infinity && given.farLimit < Infinity;
    const share = isPrintable ? keeperShare(given) : 1;
    return share > 0.0001 && share < 0.9995;
  },
} as const satisfies Formula<Inputs>;
