import type { Range } from './expected.ts';
import { unitWorth } from './units.ts';
import { quantityOf, type QuantityName, type ShownUnit } from './vocabulary.ts';

/** What was typed: its value in the base unit, and the number as it stands there where nothing stands beside it. */
export interface TypedValue {
  readonly value: number;
  readonly bare: number | undefined;
}

/** In which units books, lens barrels and data sheets print what fields show in another. */
const printedIn: Partial<Record<ShownUnit, readonly string[]>> = { µm: ['mm'], nm: ['µm', 'mm'], mm: ['m', 'cm'] };

/** The longest time that cameras count in whole seconds; larger numbers on them are parts of a second. */
const longestInSeconds = 30;

/**
 * What a number without a unit was more likely meant to be, base unit: 0.03 for a circle of confusion is 0.03 mm, 0.45 for a contrast
 * is 45 %, 125 for an exposure time is 1/125 s, as they are printed. Undefined where the number is as likely meant as it stands.
 *
 * Lengths are only asked about where the field could not take the number as it stands.
 */
export function otherMeaning(name: QuantityName, { value, bare }: TypedValue, range: Range): number | undefined {
  if (bare === undefined) return undefined;
  const isAccepted = (one: number) => one >= range.least && one <= range.most;
  const { base, shown, writing } = quantityOf(name);
  if (writing === 'share') return Math.abs(bare) < 1 && bare !== 0 && isAccepted(bare) ? bare : undefined;
  if (writing === 'shutter-time') return bare > longestInSeconds && isAccepted(1 / bare) ? 1 / bare : undefined;
  if (base !== 'mm' || isAccepted(value)) return undefined;
  return printedIn[shown]?.map((unit) => Number((bare * unitWorth('mm', unit)!).toPrecision(15))).find(isAccepted);
}
