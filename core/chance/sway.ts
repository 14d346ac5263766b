import { chanceFrom } from './chance-from.ts';

/** The band of a sway, oscillations a second: the slowest and the fastest that are in it. */
export interface Band {
  readonly slowest: number;
  readonly fastest: number;
}

/** So many waves that their sum is a bell curve: its fourth moment falls short of one by 1.5/32, which is 1.6 %. */
const waves = 32;

/**
 * To and fro as a hand does: where it is at any second, in standard deviations from the middle. The same seed, the same way, in every browser.
 *
 * x(t) = √(2/n) Σ cos(2π f t + φ), n = 32 waves of equal height: one frequency *f* by chance in each 32nd of the band, a phase *φ* by chance
 *
 * @param seed a whole number
 * @param band above 0, its ends apart
 * @returns a function of the seconds, any finite number. Over a long time its mean is 0, its standard deviation 1, and it is spread as a bell curve
 *   is. Two moments τ apart go together by sinc((fastest − slowest) τ) cos(π (fastest + slowest) τ), so those that are a few waves apart hardly at all.
 *
 * @throws RangeError, the function returned, for a moment or a band that is no number
 *
 * Source: a stationary Gaussian process as a sum of harmonics, Rice, Mathematical analysis of random noise, Bell Syst. Tech. J. 23 (1944), 282 (from memory).
 */
export function swayFrom(seed: number, { slowest, fastest }: Band): (seconds: number) => number {
  const chance = chanceFrom(seed);
  const all = Array.from({ length: waves }, (_, index) => ({
    turn: 2 * Math.PI * (slowest + ((index + chance()) / waves) * (fastest - slowest)),
    phase: 2 * Math.PI * chance(),
  }));
  const height = Math.sqrt(2 / waves);
  return (seconds) => {
    const x = height * all.reduce((sum, { turn, phase }) => sum + Math.cos(turn * seconds + phase), 0);
    if (Number.isNaN(x)) throw new RangeError(`no sway at ${seconds} s`);
    return x;
  };
}
