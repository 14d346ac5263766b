import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { PossibleLenses } from '#core/rig/assumed/known-lens.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Range } from '#site/state/address.ts';
import type { ChoicePlan, ChoicePlans, Option } from '#site/state/choice.ts';
import { knownLens, registerOf } from './known-lens.ts';
import { planOf, type Kind } from './kinds.ts';
import { broughtBy, type Given, type Setting } from './own-lens.ts';
import { numberIn, partsOf, wordsIn, type Kit, type KitPart } from './part.ts';
import { nameInKit } from './told-apart.ts';

/** What of a lesson's bench decides which parts of a kit can be chosen in it. */
export interface OfferingBench {
  readonly starts: Given;
  readonly choices: ChoicePlans<QuantityName>;
  range(name: QuantityName): Range;
}

/** A part of the kit as an option of a choice, and for a lens what else it may be. */
export interface Offer {
  readonly option: Option<QuantityName>;
  readonly lenses?: PossibleLenses;
}

/** Offers by choice, then by slug, in the kit's order. */
export type Offers = Readonly<Record<string, Readonly<Record<string, Offer>>>>;

/** Which parts stand in which choice. */
const kindsOfChoices: Readonly<Record<string, Kind>> = {
  sensor: 'camera',
  lens: 'lens',
  main: 'lens',
  turned: 'lens',
  front: 'lens',
  printed: 'lens',
  converter: 'converter',
  objective: 'objective',
  'close-up': 'close-up-lens',
};

/** What shines: a choice of it fills its width, and goes by other names in other lessons. */
const shining: readonly Kind[] = ['light', 'flash'];

function kindsOf(choice: string, plan: Plan): readonly Kind[] {
  const kind = kindsOfChoices[choice];
  if (kind !== undefined) return [kind];
  const options = Object.values(plan.options).filter(({ own }) => !own);
  const isLight = options.every(
    ({ fills }) => typeof fills !== 'function' && Object.keys(fills).join() === 'source-size',
  );
  return isLight ? shining : [];
}

/** Every part of the kit in the choices of a lesson: as an option that fills what the crate's fill, or with why it cannot be one. */
export function offersOf(bench: OfferingBench, kit: Kit): Offers {
  const offers = Object.entries(bench.choices).flatMap(([choice, plan]) => {
    const parts = kindsOf(choice, plan).flatMap((kind) => partsOf(kit, kind));
    if (parts.length === 0) return [];
    return [[choice, Object.fromEntries(parts.map((part) => [`my-${part.id}`, offerOf(part, plan, bench, kit)]))]];
  });
  return Object.fromEntries(offers) as Offers;
}

type Plan = ChoicePlan<QuantityName>;

function offerOf(part: KitPart, plan: Plan, bench: OfferingBench, kit: Kit): Offer {
  const { fills, brings } = Object.values(plan.options).find(({ own }) => !own)!;
  const label = nameInKit(kit, part);
  const given = bench.starts as never;
  const names = Object.keys(typeof fills === 'function' ? fills(given) : fills) as QuantityName[];
  const apart = (why: string): Offer => ({ option: { label, fills: {}, own: true, apart: why } });
  const isLens = part.kind === 'lens';
  const found = isLens ? lensesOf(part, plan, kit) : undefined;
  if (typeof found === 'string') return apart(found);
  const setting = settingIn(plan, typeof fills === 'function', bench.starts);
  const filled = (lens: Lens | undefined, at: Given) =>
    names.map((name) => [
      name,
      lens ? broughtBy(part, lens, name, setting, at) : ofPart(part, name),
    ]) as readonly (readonly [QuantityName, number | undefined])[];
  const start = filled(found?.usual, bench.starts);
  const missing = start.find(([, value]) => value === undefined)?.[0];
  if (missing !== undefined) return apart(`Your kit does not say its ${labelOf(part, missing)}.`);
  for (const [name, value] of start) {
    const { least, most } = bench.range(name);
    if (value! < least || value! > most) {
      const print = (number: number) => printQuantity(name, number);
      return apart(
        `Its ${quantityOf(name).name} is ${print(value!)}; this lesson goes from ${print(least)} to ${print(most)}.`,
      );
    }
  }
  const all = (lens: Lens | undefined, at: Given): Given => Object.fromEntries(filled(lens, at));
  const isFixed = typeof fills !== 'function';
  const extremes = found && ((at: Given) => distinct(found.extremes.map((lens) => all(lens, at))));
  const atStart = isFixed ? extremes?.(bench.starts) : undefined;
  return {
    option: {
      label,
      own: true,
      fills: isFixed ? all(found?.usual, bench.starts) : (at) => all(found?.usual, at),
      ...(extremes && { between: atStart ? () => atStart : extremes }),
      ...(brings && { brings: (at: Given) => broughtBesides(part, brings(at as never), at) }),
      ...(part.kind === 'flash' && { brings: () => broughtByFlash(part, bench) }),
    },
    ...(found && { lenses: found }),
  };
}

/** The lenses that a part of the kit may be, or why none can stand in this choice. */
function lensesOf(part: KitPart, { takes }: Plan, kit: Kit): PossibleLenses | string {
  const isInside = wordsIn(part, 'focusing') === 'inside';
  if (takes === 'whole' && isInside) return 'Glass moves inside it; here lenses move as a whole.';
  if (takes === 'inside' && !isInside) return 'It moves as a whole; here glass moves inside.';
  const register = registerOf(part, kit);
  if (register === undefined) return 'No camera of your kit has its mount, so that its register is not known.';
  try {
    return possibleLenses(knownLens(part, register));
  } catch (error) {
    if (error instanceof OutOfRange) return 'Its numbers contradict each other.';
    throw error;
  }
}

function settingIn({ takes }: Plan, isFollowing: boolean, starts: Given): Setting {
  if (takes === 'infinity') return 'infinity';
  if (!isFollowing) return 'closest';
  return starts.magnification === undefined ? 'distance' : 'held';
}

/** What a part that is no lens brings. */
function ofPart(part: KitPart, name: QuantityName): number | undefined {
  const key = name.slice(name.lastIndexOf('.') + 1);
  if (key !== 'pixel-pitch') return numberIn(part, key);
  const pixels = numberIn(part, 'pixels-across');
  return pixels === undefined ? undefined : numberIn(part, 'sensor-width')! / pixels;
}

/** What a flash sets besides where a lesson asks for it: it is no other's number that the sums go by. */
function broughtByFlash(part: KitPart, bench: OfferingBench): Given {
  const asked = (['guide-number', 'recycling-time', 'flash-duration'] as const).filter((name) => name in bench.starts);
  return Object.fromEntries(
    asked.flatMap((name) => {
      const value = numberIn(part, name);
      const { least, most } = bench.range(name);
      return value !== undefined && value >= least && value <= most ? [[name, value]] : [];
    }),
  ) as Given;
}

/** What choosing it sets besides: a lens comes no nearer and opens no wider than its own rings go. */
function broughtBesides(part: KitPart, brought: Given, given: Given): Given {
  const widest = numberIn(part, 'max-aperture')!;
  const values = Object.keys(brought).map((name) => {
    const now = given[name as QuantityName];
    if (name.endsWith('.f-number')) return [name, widest];
    if (name === 'f-number') return [name, Math.min(numberIn(part, 'smallest-aperture') ?? 64, Math.max(widest, now!))];
    return [name, Math.max(numberIn(part, name) ?? 0, now!)];
  });
  return Object.fromEntries(values) as Given;
}

/** What the form calls a field, within a sentence. */
function labelOf({ kind }: KitPart, name: QuantityName): string {
  const key = name.slice(name.lastIndexOf('.') + 1);
  const field = planOf(kind).fields.find((one) => one.key === (key === 'pixel-pitch' ? 'pixels-across' : key));
  if (key === 'rear-protrusion') return 'part behind its mount, which is measured with a ruler';
  return field ? field.label.charAt(0).toLowerCase() + field.label.slice(1) : quantityOf(name).name;
}

/** Each once, to the figures in which they are filled in. */
function distinct(all: readonly Given[]): readonly Given[] {
  return [...new Map(all.map((one) => [JSON.stringify(one), one])).values()];
}
