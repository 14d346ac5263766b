import { requireCount } from '#core/quantity/count.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { tableRange, towardsX, towardsY, towardsZ } from './cie-1931.ts';
import { daylight, type Illuminant } from './illuminants.ts';

/** CIE 1931 tristimulus values: Y is luminance, 1 for what sends everything back. */
export type Tristimulus = readonly [x: number, y: number, z: number];

/**
 * The colour that a light takes when it is reflected, as the CIE 1931 observer sees it.
 *
 * X = Σ S x̄ ρ/Σ S ȳ, and so on with ȳ and z̄, over 380 to 780 nm
 *
 * @param reflectanceAt the share sent back at a wavelength in mm, 0 to 1
 * @param illuminant *S*; daylight unless said otherwise
 * @param parts into how many parts each step of 5 nm is split, 1 or more: for a spectrum that ripples faster than that
 * @returns relative to a perfect white diffuser in the same light, for which Y = 1
 * @throws OutOfRange for a share that is not finite or below 0; RangeError for an illuminant that is none, and for parts that cannot be counted
 *
 * Between rows the tables are taken to run straight. Source: ISO/CIE 11664-3 (from memory). See [README](README.md#from-spectrum-to-colour).
 */
export function tristimulus(
  reflectanceAt: (wavelength: number) => number,
  illuminant: Illuminant = daylight,
  parts = 1,
): Tristimulus {
  requireCount('parts', parts, 1, 1_000_000);
  requireIlluminant(illuminant);
  const { first, last, step } = tableRange;
  let [x, y, z, white] = [0, 0, 0, 0];
  for (let sample = 0; sample <= ((last - first) / step) * parts; sample++) {
    const row = Math.floor(sample / parts);
    const between = sample / parts - row;
    const at = (table: readonly number[]) =>
      (1 - between) * table[row]! + (between > 0 ? between * table[row + 1]! : 0);
    const light = at(illuminant);
    const share = light * requireReflectance(reflectanceAt((first + (sample / parts) * step) * nanometre));
    x += share * at(towardsX);
    y += share * at(towardsY);
    z += share * at(towardsZ);
    white += light * at(towardsY);
  }
  return [x / white, y / white, z / white];
}

function requireReflectance(value: number): number {
  if (!(value >= 0 && value < Infinity)) throw new OutOfRange('reflectance', value, 'a finite share, 0 or above');
  return value;
}

function requireIlluminant(illuminant: Illuminant): void {
  const rows = towardsY.length;
  if (illuminant.length !== rows) {
    throw new RangeError(
      `the illuminant has ${illuminant.length} values; accepted: ${rows}, every 5 nm from 380 to 780`,
    );
  }
  const odd = illuminant.findIndex((value) => !(value >= 0 && value < Infinity));
  if (odd >= 0) throw new RangeError(`value ${odd} of the illuminant is ${illuminant[odd]}; accepted: 0 or above`);
  if (!illuminant.some((value) => value > 0)) throw new RangeError('the illuminant is dark: all its values are 0');
}

const nanometre = 1e-6;
