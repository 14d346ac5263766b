import { printQuantity } from '#core/quantity/print.ts';

/** Two sizes alike but for rounding. */
const alike = 1e-4;

/** That a chain does not give what is asked for, and what it gives. */
export function sizeInWords(
  asked: number | undefined,
  known: { readonly 'chain.magnification'?: number },
): string | undefined {
  const given = known['chain.magnification'];
  if (asked === undefined || given === undefined || Math.abs(given / asked - 1) < alike) return undefined;
  const print = (size: number) => printQuantity('magnification', size);
  return `${print(asked)} asked, it gives ${print(given)} at ${given < asked ? 'most' : 'least'}`;
}

/** Why there is no extension: a lens that needs none, or a chain without rings or bellows. */
export function extensionSaid(
  extension: number | undefined,
  known: { readonly 'chain.focus-magnification'?: number; readonly 'chain.magnification'?: number },
): string | undefined {
  if (extension !== undefined || known['chain.magnification'] === undefined) return undefined;
  return known['chain.focus-magnification'] === undefined ? 'none in this chain' : 'none: its own focusing is enough';
}

/** The mark past which a lens is not closed; and where another stop than its iris limits, that or from where on the mark counts. */
export function finestInWords(
  finest: number | undefined,
  known: {
    readonly 'set.f-number'?: number;
    readonly 'iris.effective-f-number'?: number;
    readonly 'open.effective-f-number'?: number;
    readonly 'finest.effective-f-number'?: number;
  },
): string | undefined {
  const open = known['open.effective-f-number'];
  const iris = known['iris.effective-f-number'];
  const [set, wanted] = [known['set.f-number'], known['finest.effective-f-number']];
  if (finest === undefined || open === undefined || iris === undefined || set === undefined || wanted === undefined)
    return undefined;
  const print = (mark: number) => printQuantity('f-number', mark);
  if (open >= wanted) return `none: another stop limits to ${printQuantity('effective-f-number', open)}`;
  // From this mark on the iris is the narrowest.
  const first = (set * open) / iris;
  return first > set * (1 + alike) ? `${print(finest)}; another stop limits up to ${print(first)}` : undefined;
}

const printCount = (count: number) => printQuantity('frame-count', count);

/** Nobody takes more. */
const mostFrames = 10_000;

export function framesInWords(count: number | undefined): string | undefined {
  if (count === undefined) return undefined;
  if (count === 1) return '1: one is enough';
  return count > mostFrames ? `more than ${printCount(mostFrames)}` : undefined;
}

export function inTimeInWords(
  taken: number | undefined,
  known: { readonly 'frame-count'?: number },
): string | undefined {
  const all = known['frame-count'];
  if (taken === undefined || all === undefined) return undefined;
  if (taken >= all) return 'all of them';
  return `${printCount(taken)} of ${all > mostFrames ? 'them' : printCount(all)}`;
}

/** What heads common flashes can give. */
const weakest = 1 / 128;

/** Whether the nearest of the marks is one that common flashes do not have: they give too much light. */
export const isUnderWeakest = (power: number): boolean => 2 ** -Math.round(-Math.log2(power)) < weakest;

/** A power as it is set: the nearest of the marks, a stop apart; or that a flash does not have it. */
export function powerInWords(power: number | undefined): string | undefined {
  if (power === undefined || power <= 0) return undefined;
  if (power > 1.005) return `${printQuantity('flash-power', power)} times full: more than it has`;
  const stops = -Math.log2(power);
  const mark = 2 ** -Math.round(stops);
  if (isUnderWeakest(power)) return `under ${printQuantity('flash-power', weakest)}: overexposed`;
  const printed = printQuantity('flash-power', mark);
  return Math.abs(stops - Math.round(stops)) < 0.02 ? printed : `about ${printed}`;
}

/** What common cameras can be set to. */
const highest = 25_600;

export function isoInWords(iso: number | undefined): string | undefined {
  if (iso === undefined) return undefined;
  if (iso > highest) return `more than ${printQuantity('iso', highest)}`;
  return iso < 100 ? 'below 100' : undefined;
}
