import type { NumberFamily, ProblemFamily } from '#core/practice/family.ts';
import { drawFrom } from '#core/practice/random.ts';
import { filledText, type Known } from '#core/practice/text.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { nameInFull } from '#core/quantity/part.ts';
import { partsLeftOut } from './part-left-out.ts';
import { reworked, type Route, type Routes } from './route.ts';
import type { Slip } from './slip.ts';

/** A family of problems under the lesson that it belongs to. */
export interface KnownFamily {
  readonly lesson: string;
  readonly family: ProblemFamily;
}

/** Widths of sensors that are sold, mm: common practice, from the sizes that camera makers print. */
export const soldWidths = [36, 23.5, 22.3, 17.3, 13.2] as const;

/** Circles of confusion that tables take, mm: common practice. */
const usualCircles = [0.03, 0.029, 0.025, 0.02, 0.019, 0.015] as const;

/** Two computed numbers count as the same where they differ by less than that share: a family may round where a formula does not. */
const same = 1e-3;

/**
 * Every slip that could be made on the way of *route*: those that the lessons’ problems know, those that are made with any number, and each of
 * them made on the way and worked on from there. None gives what is right.
 */
export function slipsOn(route: Route, routes: Routes, families: readonly KnownFamily[]): readonly Slip[] {
  const direct = listedSlips(route, routes, families);
  const carried = route.steps.slice(0, -1).flatMap((step) => carriedSlips(route, step.gives, routes, families));
  return [
    ...direct,
    ...carried,
    ...markedForEffective(route),
    ...withoutLoss(route),
    ...partsLeftOut(route),
    ...anyNumber(route),
    ...otherInputs(route),
  ].filter(({ value }) => Number.isFinite(value) && !isSame(value, route.value));
}

/** Slips that a family of problems knows, where the family asks the same of the same numbers. */
function listedSlips(route: Route, routes: Routes, families: readonly KnownFamily[]): readonly Slip[] {
  return families.flatMap(({ lesson, family }) => {
    if (family.kind !== 'number' || family.asks !== route.to || !isWorkedBy(family, route)) return [];
    const given = givenFor(family, route, routes);
    const answer = given && computed(() => family.answer(given));
    if (!given || !isSame(answer, route.value)) return [];
    const words = new Set(Object.keys(given).filter((name) => typeof given[name] === 'string'));
    return family.mistakes.flatMap(({ id, value, because }): Slip[] => {
      // What speaks of a drawn word speaks of a subject that nobody has named here.
      if ([...words].some((word) => because.includes(`{${word}}`))) return [];
      const number = computed(() => value(given));
      if (number === undefined) return [];
      return [{ id: `${lesson}/${family.id}/${id}`, value: number, because: filledText(because, given), tier: 1 }];
    });
  });
}

/** By the same formula at the end: what a longer lens does to a close-up lens is no slip about rings, though the numbers may agree. */
function isWorkedBy(family: NumberFamily, { steps }: Route): boolean {
  const last = family.working.findLast(({ formula }) => formula)?.formula;
  return last !== undefined && last.tex === steps.at(-1)?.by.formula.tex;
}

const samples = new WeakMap<NumberFamily, Known>();

/** The numbers that a family asks about, from what is known here; undefined where one of them is not. Its words are as first drawn. */
function givenFor(family: NumberFamily, route: Route, routes: Routes): Known | undefined {
  const sample = samples.get(family) ?? family.givens(drawFrom(1));
  samples.set(family, sample);
  const given: Record<string, number | string> = {};
  for (const [name, drawn] of Object.entries(sample)) {
    const value = typeof drawn === 'string' ? drawn : (route.known[name] ?? agreeing(route, routes, name));
    if (value === undefined) return undefined;
    given[name] = value;
  }
  return given;
}

/** A quantity beside the route, had without taking anything that the route has otherwise. */
function agreeing(route: Route, routes: Routes, name: string): number | undefined {
  const beside = routes.get(name as QuantityName) ?? [];
  return beside.find(({ known }) =>
    Object.entries(known).every(([id, value]) => route.known[id] === undefined || route.known[id] === value),
  )?.value;
}

/** A slip in a number on the way, with all the rest done rightly. */
function carriedSlips(
  route: Route,
  at: QuantityName,
  routes: Routes,
  families: readonly KnownFamily[],
): readonly Slip[] {
  const right = route.known[at]!;
  const steps = route.steps.slice(0, route.steps.findIndex(({ gives }) => gives === at) + 1);
  const before = { ...route, to: at, value: right, steps };
  return listedSlips(before, routes, families).flatMap((slip): Slip[] => {
    // Where nothing is left on the way it is not for the slip that leads there: with a lens at infinity many do.
    if (isSame(slip.value, right) || slip.value === 0) return [];
    const value = reworked(route, { [at]: slip.value })?.value;
    if (value === undefined) return [];
    const name = nameInFull(at);
    const because = `The slip is in the ${name}: with ${printQuantity(at, slip.value)} this number comes out. ${slip.because}`;
    return [{ id: `${slip.id}/carried-on`, value, because, tier: 2 }];
  });
}

/** The f-number on the ring, where the one that the sensor meets belongs. */
function markedForEffective(route: Route): readonly Slip[] {
  const marked = route.known['f-number'];
  if (marked === undefined || route.known['effective-f-number'] === undefined) return [];
  const value = reworked(route, { 'effective-f-number': marked })?.value;
  if (value === undefined) return [];
  const printed = printQuantity('f-number', marked);
  const because =
    route.to === 'effective-f-number'
      ? `That is the marked f-number, ${printed}. Close up the cone of light at the sensor is narrower: it works as a larger number.`
      : `That takes the marked f-number, ${printed}, where the effective one belongs.`;
  return [{ id: 'marked-for-effective', value, because, tier: 2 }];
}

/** A flash for the marked f-number, where light that is lost must be made up for. */
function withoutLoss(route: Route): readonly Slip[] {
  const isOnWay = route.steps.slice(0, -1).some(({ gives }) => gives === 'light-loss');
  const value = isOnWay ? reworked(route, { 'light-loss': 0 })?.value : undefined;
  if (value === undefined) return [];
  const lost = printQuantity('light-loss', route.known['light-loss']!);
  const because = `That holds for the mark, far away. Here the way to the sensor costs ${lost} of light.`;
  return [{ id: 'loss-left-out', value, because, tier: 2 }];
}

/** What happens to any number: a wrong unit, a point in the wrong place, one over it, twice or half of it. */
function anyNumber({ to, value }: Route): readonly Slip[] {
  const { base, writing } = quantityOf(to);
  const isLength = base === 'mm';
  const times = (factor: number, id: string, because: string): Slip => ({
    id,
    value: value * factor,
    because,
    tier: 2,
  });
  const powers = base === 'stops' ? [] : [10, 100, 1000, ...(isLength ? [25.4] : [])];
  const slips = powers.flatMap((power) => {
    const what =
      power === 25.4
        ? 'the difference between millimetres and inches'
        : isLength
          ? lengthSteps[power]!
          : 'a decimal point, or a unit';
    return [
      times(power, `${power}-times`, `The figures are right, but ${power} times too large: look for ${what}.`),
      times(1 / power, `one-in-${power}`, `The figures are right, but ${power} times too small: look for ${what}.`),
    ];
  });
  slips.push(
    times(2, 'double', 'That is exactly twice as much: a diameter taken for a radius, or both sides for one?'),
    times(1 / 2, 'half', 'That is exactly half: a radius taken for a diameter, or one side for both?'),
  );
  if (to === 'frame-count') {
    const because = 'One is missing: there is a frame at either end, so one more than steps between them.';
    slips.push({ id: 'one-missing', value: value - 1, because, tier: 2 });
  }
  if (base === '' && writing === 'ratio' && value !== 0) {
    slips.push({
      id: 'upside-down',
      value: 1 / value,
      because: 'That is upside down: one divided by the right number.',
      tier: 2,
    });
  }
  return slips;
}

const lengthSteps: Readonly<Record<number, string>> = {
  10: 'millimetres and centimetres',
  100: 'centimetres and metres',
  1000: 'millimetres and metres, or micrometres and millimetres',
};

/** The right sum with one number of another camera, or with one read in another unit. */
function otherInputs(route: Route): readonly Slip[] {
  const slips: Slip[] = [];
  const add = (id: QuantityName, instead: number, name: string, because: string, more: Pick<Slip, 'instead'> = {}) => {
    const value = reworked(route, { [id]: instead })?.value;
    if (value !== undefined) slips.push({ id: name, value, because, tier: 3, ...more });
  };
  const circle = route.known['circle-of-confusion'];
  for (const other of usualCircles) {
    if (circle === undefined || route.uses.includes('circle-of-confusion') || isSame(circle, other)) continue;
    const because = `That is right for a circle of confusion of ${printQuantity('circle-of-confusion', other)}.`;
    add('circle-of-confusion', other, `circle-${other}`, because, { instead: 'circle-of-confusion' });
  }
  const width = route.known['sensor-width'];
  for (const other of soldWidths) {
    if (width === undefined || other === width) continue;
    const isSaid = route.uses.includes('sensor-width');
    const here = isSaid ? `; here it is ${printQuantity('sensor-width', width)}` : '';
    const because = `That is right for a sensor ${printQuantity('sensor-width', other)} wide${here}.`;
    add('sensor-width', other, `sensor-${other}`, because, { instead: 'sensor-width' });
  }
  for (const id of route.uses) {
    if (id === 'sensor-width' || quantityOf(id).base !== 'mm' || !(route.known[id]! > 0)) continue;
    for (const factor of [10, 1 / 10]) {
      const instead = route.known[id]! * factor;
      const because = `That comes out if the ${nameInFull(id)} is ${printQuantity(id, instead)}; it is ${printQuantity(id, route.known[id]!)}. Centimetres for millimetres?`;
      add(id, instead, `${id}-${factor > 1 ? 'ten-times' : 'a-tenth'}`, because);
    }
  }
  return slips;
}

function isSame(one: number | undefined, other: number): boolean {
  return one !== undefined && Math.abs(one - other) <= same * Math.max(Math.abs(one), Math.abs(other));
}

/** What *compute* gives, if it gives a number. */
function computed(compute: () => number | undefined): number | undefined {
  try {
    const value = compute();
    return value !== undefined && Number.isFinite(value) ? value : undefined;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
