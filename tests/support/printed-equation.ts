import { unitWorth } from '#core/quantity/units.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';

/** A number as a reader takes it from a page: its value in the base unit, and half of what its last figure counts. */
export interface ReadNumber {
  readonly value: number;
  readonly half: number;
}

/**
 * Reads a number of an equation as it is printed, `107.5 mm`, `1/125 s`, `−12 %`, with nothing but the table of units.
 *
 * Zeros at a number's end are left out in print, so that 80 mm may stand for 80.0 mm: the last figure counted is the third, or the last
 * printed where there are more, seven at most. Less than a millionth is printed as 0. Whole numbers count ones, stops tenths. Throws on
 * anything else. A negative number that is put in stands in parentheses.
 */
export function readNumber(name: QuantityName, text: string): ReadNumber {
  const parts = /^([+−]?)(\d+(?:\.(\d+))?)(?:\/(\d+(?:\.(\d+))?))?(?:[\u2009\u202f ]?([^\d\s].*))?$/.exec(
    text.replace(/^\((−.*)\)$/, '$1'),
  );
  if (!parts) throw new Error(`${name} is printed as ${JSON.stringify(text)}, which is no number`);
  const [, sign, top, topPlaces = '', bottom, bottomPlaces = '', unit = ''] = parts as unknown as string[];
  const { base, writing } = quantityOf(name);
  const worth = unitWorth(base, unit);
  if (worth === undefined) throw new Error(`${name} is printed in ${unit}`);
  const half = (number: number, places: string) => {
    if (base === 'stops') return 0.05;
    if (writing === 'whole') return 0.5;
    if (number === 0) return 1e-6;
    const lead = Math.floor(Math.log10(number) + 1e-12);
    return Math.max(Math.min(10 ** (lead - 2), 10 ** -places.length), 10 ** (lead - 6)) / 2;
  };
  // Below a fraction's line zeros fill up to the point: 1/12000 s counts hundreds.
  const halfBelow = (number: number, places: string) => {
    const zeros = places === '' ? /0*$/.exec(bottom ?? '')![0].length : 0;
    return Math.max(half(number, places), Math.min(10 ** zeros, 10 ** (Math.floor(Math.log10(number)) - 2)) / 2);
  };
  const [over, under] = [Number(top), Number(bottom ?? '1')];
  // One over a little less is farther off than one over a little more.
  const below = bottom === undefined ? 0 : halfBelow(under, bottomPlaces);
  const width = bottom === undefined ? half(over, topPlaces) : (below / (under - below)) * (over / under);
  return { value: (sign === '−' ? -1 : 1) * (over / under) * worth, half: width * worth };
}
