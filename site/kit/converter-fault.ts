import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { converterPoints, pointKeys } from './converter-points.ts';
import { planOf } from './kinds.ts';
import { numberIn, type Fault, type NewPart } from './part.ts';

/** Engraved factors are rounded, and measured planes too: so far off is no contradiction. */
const rounded = 0.1;

const times = (factor: number) => printQuantity('converter-factor', factor);
const length = (value: number) => printQuantity('converter-length', value);

/**
 * What of a converter's planes contradicts itself or what is engraved; undefined where they can be, or are not known.
 *
 * A lens focused at infinity forms its picture *R*, its register, behind the converter's front; the converter moves it back by its own length and enlarges
 * it: k = 1/(1 − (R − h)/F) and ℓ + R − h − HH′ = F(k − 1), with *F* the focal length without its minus. Without *R*: ℓ − HH′ = F (k − 1)²/k. Source: the lens equation
 * with a virtual object.
 */
export function faultOfConverter(part: NewPart): Fault | undefined {
  const missing = pointKeys.filter((key) => part[key] === undefined);
  if (missing.length === pointKeys.length) return undefined;
  const [first] = missing;
  if (first !== undefined) {
    const { label } = planOf('converter').fields.find((field) => field.key === first)!;
    return {
      key: first,
      message: `“${label}” is needed, too: its focal length, HH′ and h are known together, or not at all.`,
    };
  }
  const { focalLength, principalSeparation, frontPrincipalDepth } = converterPoints(part)!;
  const converterLength = numberIn(part, 'converter-length')!;
  const engraved = numberIn(part, 'converter-factor')!;
  if (Math.abs(frontPrincipalDepth) > converterLength) {
    return {
      key: 'front-principal-depth',
      message: `“h” takes at most the converter’s length, ${length(converterLength)}.`,
    };
  }
  const moved = converterLength - principalSeparation;
  if (moved <= 0) {
    return {
      key: 'principal-separation',
      message: `“HH′” has to be less than its length, ${length(converterLength)}.`,
    };
  }
  const factor = factorOf(moved / -focalLength);
  if (Math.abs(factor / engraved - 1) > rounded) {
    return {
      key: 'focal-length',
      message: `By these numbers it enlarges ${times(factor)}, and ${times(engraved)} is engraved: with this HH′ and this length its focal length is about ${length((moved * engraved) / (engraved - 1) ** 2)}.`,
    };
  }
  const register = frontPrincipalDepth - focalLength * (1 - 1 / factor);
  const { least, most } = quantityOf('register-distance');
  if (register >= least && register <= most) return undefined;
  return {
    key: 'front-principal-depth',
    message: `No lens forms its picture ${Math.round(register)} mm behind its mount, where this converter takes it up by these numbers.`,
  };
}

/** *k* of a converter that moves the picture *x* focal lengths back: x = (k − 1)²/k. */
const factorOf = (x: number) => 1 + x / 2 + Math.sqrt(x + x ** 2 / 4);
