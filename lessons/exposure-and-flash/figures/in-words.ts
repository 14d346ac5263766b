import { printQuantity } from '#core/quantity/print.ts';

/** Nobody sees a twentieth of a stop. */
const unseen = 0.05;

/** How bright something comes out that falls short by so many stops: `2 stops too dark`, `right`. */
export function brightnessInWords(stops: number): string {
  if (Math.abs(stops) < unseen) return 'right';
  return `${printQuantity('light-loss', Math.abs(stops))} too ${stops > 0 ? 'dark' : 'bright'}`;
}

/** The same of the light already there, which falls short as a rule: words only where it does not. */
export function ambientInWords(stops: number | undefined): string | undefined {
  return stops === undefined || stops >= unseen ? undefined : brightnessInWords(stops);
}

/** What heads common flashes can give. */
const weakest = 1 / 128;

/** Of a power that a flash does not have. */
export function powerInWords(power: number | undefined): string | undefined {
  if (power === undefined) return undefined;
  const printed = printQuantity('flash-power', power);
  if (power > 1) return power < 1.005 ? undefined : `${printed} times full: more than it has`;
  return power < weakest / 1.1 ? `${printed}, less than most flashes can give` : undefined;
}
