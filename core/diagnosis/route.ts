import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import { onlyRoot } from '#core/quantity/solve.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** A formula that a route may take, under the name of its file. */
export interface RouteFormula {
  /** `effective-f-number-with-converter` */
  readonly id: string;
  readonly formula: Formula<never>;
  /** The set-up it is for, where its letters alone do not say so: taken only where somebody speaks of it. */
  readonly setUp?: string;
  /** Set-ups, and quantities of which a number is given, with which what it says is false: left out where one of them is spoken of. */
  readonly unless?: readonly string[];
  /** Quantities of which a number must be given: what is usual for them says nothing here. */
  readonly needs?: readonly QuantityName[];
}

/** What is taken for a quantity of which nothing was said. */
export interface Assumption {
  readonly quantity: QuantityName;
  /** Base unit. */
  readonly value: number;
  /** A clause that says so: `the lens is set to infinity`. */
  readonly words: string;
  /** Between what it may well be, base unit: an answer that is right for a number between is not called wrong. */
  readonly between?: readonly [least: number, most: number];
  /** Set-ups in which nothing is usual: what decides there must be given. */
  readonly unless?: readonly string[];
}

/** All that routes may be made of. */
export interface Roads {
  readonly formulas: readonly RouteFormula[];
  readonly assumptions: readonly Assumption[];
}

/** One step of a route: a formula and the letter it is solved for. */
export interface RouteStep {
  readonly by: RouteFormula;
  readonly gives: QuantityName;
  /** Base unit. */
  readonly value: number;
}

/** A way from what is given to a quantity. */
export interface Route {
  readonly to: QuantityName;
  /** Base unit. */
  readonly value: number;
  /** In the order in which they are worked; none where the quantity was given or had to be taken. */
  readonly steps: readonly RouteStep[];
  readonly assumed: readonly Assumption[];
  /** Every quantity on the way and the one it leads to, base units by id. */
  readonly known: Readonly<Record<string, number>>;
  /** Which of the given numbers it starts from. */
  readonly uses: readonly QuantityName[];
}

/** Routes to every quantity that can be had, the best first. */
export type Routes = ReadonlyMap<QuantityName, readonly Route[]>;

/** So many formulas one after the other: from a ring to a depth in pixels it takes five. */
const rounds = 6;
/** So many routes are kept for each quantity: what two books compute differently should not lose the second. */
const kept = 4;

/**
 * Routes from the given numbers to all that follows from them, by any of the formulas, forwards or solved for another letter.
 *
 * The best route uses most of what was given, takes least for granted, and is short. A quantity that was given is never computed.
 *
 * @param given base units by id
 * @param setUps set-ups that were spoken of: formulas for others, and those that do not hold in them, are left out
 */
export function routesFrom(
  given: Readonly<Partial<Record<QuantityName, number>>>,
  { formulas, assumptions }: Roads,
  setUps: readonly string[] = [],
): Routes {
  const found = new Map<QuantityName, readonly Route[]>();
  for (const [to, value] of Object.entries(given) as [QuantityName, number][]) {
    found.set(to, [{ to, value, steps: [], assumed: [], known: { [to]: value }, uses: [to] }]);
  }
  for (const assumption of assumptions) {
    const { quantity: to, value, unless = [] } = assumption;
    if (!found.has(to) && !unless.some((setUp) => setUps.includes(setUp)))
      found.set(to, [{ to, value, steps: [], assumed: [assumption], known: { [to]: value }, uses: [] }]);
  }
  const open = formulas.filter((formula) => holds(formula, given, setUps));
  const turns = open.flatMap((by) => lettersOf(by.formula).map((gives) => ({ by, gives })));
  const tried = new Set<string>();
  // Backwards only where nothing leads forwards, and only from a number that somebody gave: else every formula would be run against itself.
  const isLost = (id: QuantityName) => (found.get(id) ?? []).every(({ steps }) => steps.length === 0);
  const forwards = turns.filter(({ by, gives }) => gives === by.formula.gives && !(gives in given));
  const backwards = turns.filter(
    ({ by, gives }) => gives !== by.formula.gives && by.formula.gives in given && !(gives in given),
  );
  let news: ReadonlySet<QuantityName> = new Set(found.keys());
  for (let round = 0; round < rounds && news.size > 0; round++) {
    news = taken(stepsBy(forwards, found, tried, news), found);
    if (news.size === 0)
      news = taken(
        stepsBy(
          backwards.filter(({ gives }) => isLost(gives)),
          found,
          tried,
        ),
        found,
      );
  }
  return found;
}

/** Whether a formula says something true of what is given in these set-ups. */
export function holds(
  { setUp, unless = [], needs = [] }: RouteFormula,
  given: Readonly<Partial<Record<QuantityName, number>>>,
  setUps: readonly string[],
): boolean {
  const isSpokenOf = (what: string) => setUps.includes(what) || what in given;
  return (
    (setUp === undefined || setUps.includes(setUp)) && !unless.some(isSpokenOf) && needs.every((id) => id in given)
  );
}

type Turn = Pick<RouteStep, 'by' | 'gives'>;

/** Routes that are one step longer than those *found*, by each of *turns*; with *news*, only those that go on from what is new. */
function stepsBy(
  turns: readonly Turn[],
  found: Routes,
  tried: Set<string>,
  news?: ReadonlySet<QuantityName>,
): readonly Route[] {
  const longer: Route[] = [];
  for (const { by, gives } of turns) {
    const letters = lettersOf(by.formula).filter((letter) => letter !== gives);
    if (news && !letters.some((letter) => news.has(letter))) continue;
    for (const parts of combined(letters.map((letter) => found.get(letter) ?? []))) {
      const joint = joined(parts);
      if (!joint || gives in joint.known) continue;
      const name = `${by.id}>${gives}:${signature(joint)}`;
      if (tried.has(name)) continue;
      tried.add(name);
      const value = valueBy(by.formula, gives, joint.known);
      if (value === undefined) continue;
      longer.push({
        ...joint,
        to: gives,
        value,
        steps: [...joint.steps, { by, gives, value }],
        known: { ...joint.known, [gives]: value },
      });
    }
  }
  return longer;
}

/** Takes the best of *routes* into what is *found*; returns the quantities that have a new one. */
function taken(routes: readonly Route[], found: Map<QuantityName, readonly Route[]>): ReadonlySet<QuantityName> {
  const news = new Set<QuantityName>();
  for (const route of routes) {
    const better = best([...(found.get(route.to) ?? []), route]);
    if (better.includes(route)) news.add(route.to);
    found.set(route.to, better);
  }
  return news;
}

/** The same route with some of its numbers replaced on the way, worked on from there; undefined where a formula refuses. */
export function reworked(route: Route, instead: Readonly<Record<string, number>>): Route | undefined {
  let known = { ...route.known, ...instead };
  const steps: RouteStep[] = [];
  for (const { by, gives } of route.steps) {
    const value = instead[gives] ?? valueBy(by.formula, gives, known);
    if (value === undefined) return undefined;
    known = { ...known, [gives]: value };
    steps.push({ by, gives, value });
  }
  return { ...route, steps, known, value: known[route.to]! };
}

function lettersOf({ gives, from }: Formula<never>): readonly QuantityName[] {
  return [gives, ...from];
}

/** What a formula gives for one of its letters, if it gives one finite number. */
function valueBy(
  formula: Formula<never>,
  gives: QuantityName,
  known: Readonly<Record<string, number>>,
): number | undefined {
  try {
    const forwards = gives === formula.gives;
    const letters = lettersOf(formula).filter((letter) => letter !== gives);
    const value = forwards
      ? evaluateFormula(formula as unknown as Formula, known as Record<QuantityName, number>)
      : onlyRoot(formula as unknown as Formula, {
          ask: gives,
          given: Object.fromEntries(letters.map((letter) => [letter, known[letter]])),
        });
    return Number.isFinite(value) ? value : undefined;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** One route for each letter: the best of all, and the best with one of the letters had otherwise. */
function* combined(lists: readonly (readonly Route[])[]): Generator<readonly Route[]> {
  if (lists.some((list) => list.length === 0)) return;
  const first = lists.map((list) => list[0]!);
  yield first;
  for (const [index, list] of lists.entries()) for (const other of list.slice(1)) yield first.with(index, other);
}

type Joint = Pick<Route, 'steps' | 'assumed' | 'known' | 'uses'>;

/** Routes to several letters as one; undefined where they disagree about a number on the way. */
function joined(parts: readonly Route[]): Joint | undefined {
  const known: Record<string, number> = {};
  const steps = new Map<QuantityName, RouteStep>();
  const assumed = new Map<QuantityName, Assumption>();
  const uses = new Set<QuantityName>();
  for (const part of parts) {
    for (const [id, value] of Object.entries(part.known)) {
      if (known[id] !== undefined && known[id] !== value) return undefined;
      known[id] = value;
    }
    for (const step of part.steps) steps.set(step.gives, step);
    for (const assumption of part.assumed) assumed.set(assumption.quantity, assumption);
    for (const id of part.uses) uses.add(id);
  }
  return { known, steps: [...steps.values()], assumed: [...assumed.values()], uses: [...uses] };
}

/** Routes that begin alike and go alike have the same. */
function signature({ known, steps }: Joint): string {
  const way = steps.map(({ by, gives }) => `${by.id}>${gives}`).sort();
  return [...Object.keys(known).sort(), ...way].join(' ');
}

/** What a route costs: what it leaves unused, takes for granted, and works out. */
function cost({ steps, assumed, uses }: Route): number {
  const backwards = steps.filter(({ by, gives }) => by.formula.gives !== gives).length;
  return steps.length + 3 * assumed.length + 2 * backwards - 4 * uses.length;
}

/** The best few, of which no two give the same by the same. */
function best(routes: readonly Route[]): Route[] {
  return [...routes].sort((one, other) => cost(one) - cost(other)).slice(0, kept);
}
