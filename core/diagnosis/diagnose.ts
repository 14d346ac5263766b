import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import { nameInFull } from '#core/quantity/part.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { addedToLens } from './added-to-lens.ts';
import {
  holds,
  routesFrom,
  type Assumption,
  reworked,
  type Roads,
  type Route,
  type RouteFormula,
  type Routes,
} from './route.ts';
import type { Slip } from './slip.ts';
import { slipsOn, type KnownFamily } from './slips.ts';

/** What somebody found, and how finely he wrote it down. */
export interface FoundNumber {
  /** Base unit. */
  readonly value: number;
  /** Half of the last figure that was written, base unit: 0.005 for 0.72. Nothing finer can be said about it. 0 where it is exact. */
  readonly halfFigure: number;
}

/** Somebody's question: what he has, and what he asks. */
export interface Question {
  readonly asks: QuantityName;
  /** Base units by id. */
  readonly given: Readonly<Partial<Record<QuantityName, number>>>;
  /** Set-ups he spoke of, such as `reversed lens`. */
  readonly setUps?: readonly string[];
}

/** A question with what he found. */
export interface Enquiry extends Question {
  readonly answer: FoundNumber;
  /** What he found before, on the way to this: base units by id. */
  readonly foundBefore?: Readonly<Partial<Record<QuantityName, number>>>;
}

/** What a diagnosis draws on: formulas, what is taken where nothing is said, and the problems whose slips are known. */
export interface Grounds extends Roads {
  readonly families: readonly KnownFamily[];
  /** Steps for where nothing else leads to what is asked, each with what it may answer. */
  readonly lastly?: readonly { readonly by: RouteFormula; readonly answers?: readonly QuantityName[] }[];
}

/** Why a question has no answer here. */
export interface CannotBeTold {
  readonly verdict: 'cannot';
  readonly missing: readonly QuantityName[];
  readonly because: string;
  /** True where it is right if what is missing is another than was taken. */
  readonly mayBeRight?: true;
}

/** What somebody's number is. *working* is the way to the right one, *off* its relative distance from it. */
export type Diagnosis =
  | {
      readonly verdict: 'right';
      readonly working: Route;
      readonly off: number;
      /** Set where it is right only as another way of computing it has it. */
      readonly otherWay?: Route;
      /** Set where it is right from a number found before that was not: which one. */
      readonly from?: QuantityName;
    }
  | {
      readonly verdict: 'slip';
      readonly working: Route;
      readonly off: number;
      readonly slip: Slip;
      readonly because: string;
    }
  | { readonly verdict: 'off'; readonly working: Route; readonly off: number }
  | CannotBeTold;

/** A number counts as right within this share, as in most problems: three figures read off a scale are worth about as much. */
export const passes = 0.02;

/** A slip must give a number to within this share, or to within what was written: a sum that was done rightly on the wrong way is exact. */
const slipPasses = 0.005;

/** A number written with one figure is taken to within this share all the same: 1 is not 0.72. */
const roughest = 0.05;

/** Wrong numbers are looked for within this factor of the right one. */
const span = 1000;

/** All slips that are thought of together may cover so much of what a number could be by chance, no more. */
export const mostChance = 0.1;

/**
 * What somebody's number is: right, and how nearly; where a known slip leads; off, and how far; or not to be told from what is given.
 *
 * A slip is only named where it explains the number better than chance does. A number drawn at random, evenly in its logarithm within a
 * factor of 1000 of the right one, would meet one of the slips thought of in at most a tenth of all cases: where more can be thought of, or
 * the number is written too roughly, only the likelier kinds are. See [README](README.md).
 *
 * @param enquiry.given base units; what is not given is taken from *grounds.assumptions*, and the working says so
 * @throws nothing: what cannot be told comes back as `cannot`
 */
export function diagnose(enquiry: Enquiry, grounds: Grounds): Diagnosis {
  const { answer, foundBefore = {} } = enquiry;
  const found = workedOut(enquiry, grounds);
  if ('because' in found) return found;
  const { working, otherWays, routes } = found;
  const off = offBy(answer.value, working.value);
  if (isMeant(answer, working.value, passes)) return { verdict: 'right', working, off };
  const other = otherWays.find(({ value }) => isMeant(answer, value, slipPasses));
  if (other) return { verdict: 'right', working, off, otherWay: other };
  for (const { gives } of working.steps.slice(0, -1)) {
    const before = foundBefore[gives];
    const from = before === undefined ? undefined : reworked(working, { [gives]: before });
    if (from && isMeant(answer, from.value, slipPasses)) return { verdict: 'right', working, off, from: gives };
  }
  const slips = slipsOn(working, routes, grounds.families);
  // Which circle is small enough is everybody's own choice: worked out it is taken as well.
  const isTaken = (id: QuantityName | undefined) =>
    id === 'circle-of-confusion' || working.assumed.some(({ quantity }) => quantity === id);
  const slip = likeliest(
    slips.filter(({ instead }) => !isTaken(instead)),
    answer,
  );
  // What the lessons know of goes before what else may be so, and that before what happens to any number.
  const open = slip?.tier === 1 ? undefined : openTo(answer, working);
  if (open) return rightForSome(working, open);
  if (slip) return { verdict: 'slip', working, off, slip, because: slip.because };
  const another = slips.find(({ instead, value }) => isTaken(instead) && isMeant(answer, value, passes));
  return another ? rightForAnother(working, another) : { verdict: 'off', working, off };
}

/** Something that was taken, where an answer is right for another number that it may well have. */
function openTo(answer: FoundNumber, working: Route): Assumption | undefined {
  return working.assumed.find(({ quantity, between = [] }) => {
    const ends = between.map((end) => reworked(working, { [quantity]: end })?.value);
    const [one, other] = ends;
    if (one === undefined || other === undefined) return false;
    return answer.value > Math.min(one, other) && answer.value < Math.max(one, other);
  });
}

function rightForSome({ to }: Route, { quantity, between = [0, 0], words }: Assumption): CannotBeTold {
  const [least, most] = between.map((end) => printQuantity(quantity, end));
  const because = `For the ${nameInFull(to)} the ${nameInFull(quantity)} must be known too. It may well be between ${least} and ${most}, and for one of these this is right. Where nothing is said it is taken that ${words}.`;
  return { verdict: 'cannot', missing: [quantity], because, mayBeRight: true };
}

/** What is right with another number for *slip.instead* is no slip where nobody has given one. */
function rightForAnother({ to, known }: Route, { instead, because }: Slip): CannotBeTold {
  const missing = instead!;
  const taken = printQuantity(missing, known[missing]!);
  const words = `For the ${nameInFull(to)} the ${nameInFull(missing)} must be known too. ${because} Where nothing is said ${taken} is taken.`;
  return { verdict: 'cannot', missing: [missing], because: words, mayBeRight: true };
}

/** The answer to a question: the best way to it, other ways, and what else follows from what is given. */
export interface WorkedOut {
  readonly working: Route;
  readonly otherWays: readonly Route[];
  readonly routes: Routes;
}

/**
 * The answer to a question in which nobody has found anything yet, or why there is none.
 *
 * @throws nothing: what cannot be told comes back as `cannot`
 */
export function workedOut({ asks, given, setUps = [] }: Question, grounds: Grounds): WorkedOut | CannotBeTold {
  const stated = Object.fromEntries(Object.entries(given).filter(([id]) => id !== asks));
  const routes = routesTowards(asks, stated, grounds, setUps);
  const ways = (routes.get(asks) ?? []).filter(isWellFounded);
  const [working, ...otherWays] = ways.filter((way) => leftOutBy(way, stated).length === 0);
  if (working) return { working, otherWays, routes };
  return ways[0] ? notTogether(ways[0], stated) : cannot({ asks, given: stated, setUps }, routes, grounds);
}

/** What changes the magnification, and how the lens in it is focused. */
const chainParts: readonly QuantityName[] = [...addedToLens, 'focus-distance'];

/** Parts of the chain that a way to a magnification passes over, as if they were not there. */
function leftOutBy({ uses, known }: Route, stated: Question['given']): readonly QuantityName[] {
  if ('magnification' in stated || known.magnification === undefined) return [];
  return chainParts.filter((id) => id in stated && !uses.includes(id));
}

function notTogether(way: Route, stated: Question['given']): CannotBeTold {
  const left = leftOutBy(way, stated).map((id) => nameInFull(id));
  const because = `No formula here takes the ${left.join(' and the ')} together with all the rest. The bench works out any chain: put it together there.`;
  return { verdict: 'cannot', missing: [], because };
}

/**
 * Routes from what is given, with what *asks* is never taken for granted; where none leads there, with the steps that are kept for that.
 *
 * @param given base units by id, without what is asked
 */
function routesTowards(
  asks: QuantityName,
  given: Question['given'],
  grounds: Grounds,
  setUps: readonly string[],
): Routes {
  const assumptions = grounds.assumptions.filter(({ quantity }) => quantity !== asks);
  const routes = routesFrom(given, { ...grounds, assumptions }, setUps);
  if (routes.get(asks)?.some(isWellFounded)) return routes;
  const more = (grounds.lastly ?? []).filter(({ answers }) => answers?.includes(asks) ?? true).map(({ by }) => by);
  if (more.length === 0) return routes;
  return routesFrom(given, { formulas: [...grounds.formulas, ...more], assumptions }, setUps);
}

/** True for a route that starts from what was given: what rests on more assumptions than numbers, but for one, is about no gear that anybody has. */
function isWellFounded({ uses, assumed }: Route): boolean {
  return uses.length > 0 && assumed.length <= uses.length + 1;
}

/** The slip that explains *answer*, if one does better than chance. */
function likeliest(slips: readonly Slip[], answer: FoundNumber): Slip | undefined {
  for (const most of [3, 2, 1] as const) {
    const thought = slips.filter(({ tier }) => tier <= most);
    if (chanceOf(thought, answer) > mostChance) continue;
    return thought
      .filter(({ value }) => isMeant(answer, value, slipPasses))
      .sort(
        (one, other) => one.tier - other.tier || offBy(answer.value, one.value) - offBy(answer.value, other.value),
      )[0];
  }
  return undefined;
}

/** How probable it is that a number at random would meet one of *slips*, at most. */
function chanceOf(slips: readonly Slip[], answer: FoundNumber): number {
  const places = new Set(slips.map(({ value }) => Number(value.toPrecision(3))));
  const width = 2 * Math.max(slipPasses, Math.min(roughest, answer.halfFigure / Math.abs(answer.value)));
  return (places.size * width) / (2 * Math.log(span));
}

/** True where *answer* may be *value* written down: within what was written, or within *share* of it. */
function isMeant({ value: written, halfFigure }: FoundNumber, value: number, share: number): boolean {
  const rounding = Math.min(halfFigure * (1 + 1e-9), roughest * Math.abs(value));
  return Math.abs(written - value) <= Math.max(rounding, share * Math.abs(value));
}

/** How far *answer* is from *right*, as a share of it; of nothing every other number is infinitely far. */
function offBy(answer: number, right: number): number {
  return answer === right ? 0 : Math.abs(answer - right) / Math.abs(right);
}

/** Why nothing can be said: which numbers are missing, or what refused those that are there. */
function cannot({ asks, given, setUps = [] }: Question, routes: Routes, { formulas }: Grounds): CannotBeTold {
  const ways = formulas
    // What is hardly a formula leads from what one would ask for as well.
    .filter(({ formula }) => formula.checkedBy.length > 0)
    .filter((one) => one.formula.gives === asks && holds({ ...one, needs: [] }, given, setUps))
    .map(({ formula, setUp }) => ({
      formula,
      isMeant: setUp !== undefined,
      missing: formula.from.filter((letter: QuantityName) => !routes.has(letter)),
    }))
    // Of several the one for what was spoken of.
    .sort((one, other) => Number(other.isMeant) - Number(one.isMeant) || one.missing.length - other.missing.length);
  const [first] = ways;
  const name = nameInFull(asks);
  if (!first) return { verdict: 'cannot', missing: [], because: `No formula here gives the ${name}.` };
  if (first.missing.length > 0) {
    const missing = first.missing.map((letter) => nameInFull(letter)).join(' and the ');
    return { verdict: 'cannot', missing: first.missing, because: `For the ${name} the ${missing} must be known too.` };
  }
  return { verdict: 'cannot', missing: [], because: refusalOf(first.formula, routes, name) };
}

/** What a formula says against the numbers that are there. */
function refusalOf(formula: Formula<never>, routes: Routes, name: string): string {
  try {
    const known = Object.fromEntries(
      formula.from.map((letter: QuantityName) => [letter, routes.get(letter)?.[0]?.value]),
    );
    evaluateFormula(formula as unknown as Formula, known as Record<QuantityName, number>);
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const printed = Number.isNaN(error.value) ? 'no number' : printQuantity(error.quantity, error.value);
    return `With these numbers there is no ${name}: the ${nameInFull(error.quantity)} would be ${printed}, and it must be ${error.accepted}.`;
  }
  return `With these numbers there is no ${name}.`;
}
