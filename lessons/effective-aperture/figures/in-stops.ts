import { printQuantity } from '#core/quantity/print.ts';

/** Less of a stop than this is printed as none: of nothing nobody says that it is gained. */
const dust = 0.05;

/** Whether light is gained: a lens turned round can work wider than its mark. */
export const isGain = (stops: number) => stops < -dust;

/** Stops by their size and the word for their sense: `2 stops lost`, `0.5 stops gained`. */
export function inStops(stops: number, [less, more]: readonly [less: string, more: string]): string {
  return `${printQuantity('light-loss', Math.abs(stops))} ${isGain(stops) ? more : less}`;
}

/** The same for a finder: `full light` where nothing is lost. */
export function brightness(stops: number): string {
  return Math.abs(stops) < dust ? 'full light' : inStops(stops, ['darker', 'brighter']);
}
