import { printQuantity } from '#core/quantity/print.ts';

/** What common cameras can be set to. */
const [lowest, highest] = [100, 25_600];

/** Beyond these there are words instead of a line of noughts. */
export const isPrinted = {
  iso: (iso: number) => iso >= 1 && iso <= highest,
  electrons: (electrons: number) => electrons >= 0.01 && electrons <= 1e7,
  /** mm on the sensor */
  streak: (streak: number) => streak >= 1e-5,
} as const;

/** What else is known where words are wanted. */
interface Known {
  readonly iso?: number;
  readonly electrons?: number;
}

/** Of the longest time where the streak is too short to be printed. */
export function slowestInWords(
  time: number | undefined,
  known: { readonly 'motion-blur'?: number },
): string | undefined {
  const streak = known['motion-blur'];
  if (time === undefined || streak === undefined || isPrinted.streak(streak)) return undefined;
  return `${printQuantity('exposure-time', time)}: hardly anything moves in the time set`;
}

/** What there is to be said of an ISO that common cameras do not have. */
export function isoInWords(iso: number | undefined): string | undefined {
  if (iso === undefined || (iso >= lowest && iso <= highest)) return undefined;
  if (iso > highest) return `${printQuantity('iso', iso)}, more than cameras have: too dark`;
  return `${iso < 1 ? 'less than 1' : printQuantity('iso', iso)}, below 100: too bright`;
}

/** Of electrons in light that no camera is made for. */
export function electronsInWords(electrons: number | undefined, { iso }: Known): string | undefined {
  if (electrons === undefined) return undefined;
  if (electrons < 0.01) return 'next to none';
  if (iso === undefined || (isPrinted.iso(iso) && isPrinted.electrons(electrons))) return undefined;
  return `${printQuantity('electrons', electrons)}, ${iso < 1 ? 'far too much light' : 'too little light'}`;
}

/** Of the ratio there. */
export function signalToNoiseInWords(ratio: number | undefined, { electrons }: Known): string | undefined {
  if (ratio === undefined || electrons === undefined || isPrinted.electrons(electrons)) return undefined;
  return electrons < 1 ? 'lost in the noise' : `${printQuantity('signal-to-noise', ratio)}, with far too much light`;
}
