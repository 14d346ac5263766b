import { plainNumber } from '#core/quantity/plain-number.ts';
import { percent, printQuantity } from '#core/quantity/print.ts';
import { shutterTimeSeries } from '#core/quantity/nominal.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { holdings } from '#site/state/crate-light.ts';
import type { Conditions } from '#site/bench/conditions.ts';
import { assumedLetters } from '#site/kit/range-words.ts';
import type { Chain } from '#site/chain/chain.ts';
import { misfitsOf } from '#site/chain/fit.ts';
import type { Block, LineName } from './card.ts';

/** Units of length that a card can be in. */
export const units = { mm: { label: 'millimetres', worth: 1 }, in: { label: 'inches', worth: 25.4 } } as const;

export type Unit = keyof typeof units;

/** How a line is called beside its numbers, what it is in full, and the quantity whose marks it bears. */
export const lines: Readonly<
  Record<LineName, { short: string; full: string; quantity: QuantityName; isLength?: boolean; unit?: string }>
> = {
  'depth-of-field': {
    short: 'depth T',
    full: 'depth of field, by defocus alone, as in the lessons',
    quantity: 'depth-of-field',
    isLength: true,
  },
  'subject-depth': {
    short: 'frame Z',
    full: 'depth that one frame holds, diffraction counted',
    quantity: 'subject-depth',
    isLength: true,
  },
  'frame-step': {
    short: 'step Δ',
    full: 'step between the frames of a stack, computed for frame Z',
    quantity: 'frame-step',
    isLength: true,
  },
  'effective-f-number': { short: 'works as f/', full: 'effective f-number', quantity: 'effective-f-number' },
  'light-loss': { short: 'stops lost', full: 'stops lost to the marked f-number', quantity: 'light-loss' },
  point: { short: 'point, px', full: 'blur of a point in focus: its Airy disc, in pixels', quantity: 'airy-diameter' },
  'exposure-time': {
    short: 'slowest, s',
    full: 'slowest shutter as the camera is held, the next faster mark',
    quantity: 'exposure-time',
  },
};

/** Three figures, as everywhere; what is no number of a lens is a dash. */
const figures = (value: number, digits = 3) =>
  Number.isFinite(value) ? plainNumber(Number(value.toPrecision(digits))) : '∞';

/** A number of a line as it stands in its cell; its unit stands beside the line. */
export function cellText(name: LineName, value: number | undefined, unit: Unit): string {
  if (value === undefined) return '–';
  if (lines[name].isLength) return value === 0 ? '0' : figures(value / units[unit].worth);
  if (name === 'exposure-time') return shutterText(value);
  if (name === 'light-loss' || name === 'point') return plainNumber(Math.round(10 * value) / 10).replace('-', '−');
  return figures(value);
}

/** The longest marked time that is no longer than *time*. */
export function shutterText(time: number): string {
  const [shortest, longest] = [shutterTimeSeries[0]!, shutterTimeSeries.at(-1)!];
  if (time > 2 * longest) return `>${longest}`;
  const mark = shutterTimeSeries.findLast((one) => one <= time * (1 + 1e-9));
  if (mark === undefined) return `<1/${Math.round(1 / shortest)}`;
  return mark < 0.29 ? `1/${Math.round(1 / mark)}` : plainNumber(mark);
}

/** How a line is called on the card, with its unit. */
export const labelOf = (name: LineName, unit: Unit): string =>
  lines[name].isLength ? `${lines[name].short}, ${unit}` : lines[name].short;

const length = (value: number, unit: Unit, name: QuantityName) =>
  unit === 'mm' ? printQuantity(name, value) : `${figures(value / units.in.worth)}\u202fin`;

/** The two lines above a block's numbers. */
export function headingOf(block: Block, unit: Unit): readonly [string, string] {
  const { chain, magnification, workingDistance, fieldWidth, fieldHeight, extension } = block;
  const parts = chain
    .slice(1)
    .map(({ thing, turned }) => (turned ? `${thing.name} turned round` : thing.name))
    .join(' + ');
  const spacers = [
    ['ring', 'rings'],
    ['bellows', 'bellows'],
  ].flatMap(([kind, words]) => (chain.some(({ thing }) => thing.kind === kind) ? [words] : []));
  const rings = extension > 0 ? `, ${length(extension, unit, 'extension')} of ${spacers.join(' and ')}` : '';
  const field =
    unit === 'mm'
      ? `${figures(fieldWidth)} × ${figures(fieldHeight)}\u202fmm`
      : `${figures(fieldWidth / units.in.worth)} × ${figures(fieldHeight / units.in.worth)}\u202fin`;
  return [
    `${printQuantity('magnification', magnification)}: ${parts}`,
    `room ${length(workingDistance, unit, 'working-distance')}, field ${field}${rings}`,
  ];
}

/** What the card's numbers lean on. */
export function conditionsInWords(conditions: Conditions, circles: readonly number[]): string {
  const held = Object.values(holdings).find(
    (one) => one['shake-rate'] === conditions['shake-rate'] && one['sideways-speed'] === conditions['sideways-speed'],
  );
  const rate = `turning ${printQuantity('shake-rate', conditions['shake-rate'])}, swaying ${printQuantity('sideways-speed', conditions['sideways-speed'])}`;
  const stabilised =
    conditions.stabilisation > 0 ? `, ${printQuantity('stabilisation', conditions.stabilisation)} stabilised` : '';
  const circle = circles.map((one) => printQuantity('circle-of-confusion', one)).join(' and ');
  return [
    `c ${circle}`,
    `λ ${printQuantity('wavelength', conditions.wavelength)}`,
    `steps share ${percent(conditions.overlap)}`,
    `held ${held ? held.label : rate}${stabilised}`,
    conditions['subject-speed'] <= quantityOf('subject-speed').least
      ? 'subject at rest'
      : `subject ${printQuantity('subject-speed', conditions['subject-speed'])}`,
  ].join(', ');
}

/** Which numbers of the lenses are assumed, a sentence for each lens; the bench says how far answers may be off. */
export function assumedInWords(chains: readonly Chain[]): string {
  const sentences = chains.flat().flatMap(({ thing: { name, lenses } }) => {
    const letters = lenses ? assumedLetters(lenses) : '';
    return letters === '' ? [] : [`Assumed of ${name}: ${letters}.`];
  });
  return [...new Set(sentences)].join(' ');
}

/** What the chains lack to be held together, each thing once; the optics are as they would be. */
export function misfitsInWords(chains: readonly Chain[]): string {
  const found = new Set(chains.flatMap((chain) => misfitsOf(chain).map(({ words }) => words)));
  return found.size === 0 ? '' : `This does not hold together as it stands. ${[...found].join(' ')}`;
}

/** The rule by which an f-number is the best, and by which one is spoiled. */
export const ruleInWords =
  'Boxed: the f-number at which one frame holds most. Grey, struck out: not the best, and the effective f-number is beyond c/(√2 λ), where diffraction takes more than stopping down gives. Sharp is b² + d² ≤ c², with b the blur of defocus and d = λ × effective f-number.';
