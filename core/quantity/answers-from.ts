import { OutOfRange } from './errors.ts';
import { camelCase, type CamelCase, type Named } from './formula.ts';
import { renamed } from './renamed.ts';
import type { Chosen, Step, StepKeys } from './answer-step.ts';
import type { QuantityName } from './vocabulary.ts';

/** A plan as a step: several answers, each of which may be missing. */
export function step<const From extends QuantityName, const Gives extends QuantityName>(plan: {
  readonly from: readonly From[];
  readonly gives: readonly Gives[];
  readonly evaluate: (
    given: Named<From>,
    chosen: Chosen,
  ) => { readonly [Id in Gives as CamelCase<Id>]?: number | undefined };
}): Step<Gives> {
  return plan;
}

/**
 * *steps* once more for another part or another way: their answers are known under *prefix*, as `focus-ring.frame-count`, and a formula
 * among them is written so.
 *
 * Each takes what an earlier one of them gives, then what *takes* puts in a quantity's place, then what the unprefixed name stands for.
 */
export function under<Prefix extends string, Gives extends QuantityName>(
  prefix: Prefix,
  steps: readonly Step<Gives>[],
  takes: Readonly<Partial<Record<QuantityName, QuantityName>>> = {},
): readonly Step<`${Prefix}.${Gives}` & QuantityName>[] {
  type Prefixed = `${Prefix}.${Gives}` & QuantityName;
  const own = new Set<QuantityName>();
  const named = (name: Gives) => `${prefix}.${name}` as Prefixed;
  return steps.map((plain) => {
    const { gives, from, evaluate } = plain;
    const reads = from.map((name) => (own.has(name) ? named(name as Gives) : (takes[name] ?? name)));
    for (const name of listed(gives)) own.add(name);
    if (typeof gives === 'string')
      return renamed(plain, { gives: named(gives), from: reads, keys: keysOf(plain).from });
    return { gives: gives.map(named), from: reads, evaluate, keys: keysOf(plain) };
  });
}

/** An answer that has no number: whose lack it is, its own or that of one it leans on, and what the core said where it refused. */
export interface Lack {
  readonly of: QuantityName;
  readonly refused?: OutOfRange;
}

export interface Found {
  /** All that is given and all that follows, by name, base units; infinite where the limit is. */
  readonly numbers: Readonly<Record<string, number>>;
  /** All that should follow and has no number. */
  readonly lacks: Readonly<Record<string, Lack>>;
}

/** Steps made ready: what each reads and gives, by name and by the function's own word for it. */
export type Prepared = readonly PreparedStep[];

interface PreparedStep {
  readonly reads: readonly QuantityName[];
  readonly gives: readonly QuantityName[];
  readonly keys: StepKeys;
  readonly isPlan: boolean;
  readonly evaluate: (given: Readonly<Record<string, number>>, chosen: Chosen) => unknown;
}

/**
 * Makes *steps* ready for {@link answersFrom}, with what is *given* by name.
 *
 * @throws Error where a step needs what is neither given nor given by an earlier one, or gives what is known already
 */
export function stepsInOrder(steps: readonly Step[], given: readonly string[]): Prepared {
  const known = new Set<string>(given);
  return steps.map((plain) => {
    const [names, keys] = [listed(plain.gives), keysOf(plain)];
    const unknown = plain.from.find((name) => !known.has(name));
    const twice = names.find((name) => known.has(name));
    const what = `The step that gives ${names.join(', ')}`;
    if (unknown !== undefined)
      throw new Error(`${what} needs ${unknown}: make it an input, or give it by a step before.`);
    if (twice !== undefined)
      throw new Error(`${what} comes too late: ${twice} is known already. Take one of the two out.`);
    for (const name of names) known.add(name);
    return {
      reads: plain.from,
      gives: names,
      keys,
      isPlan: typeof plain.gives !== 'string',
      evaluate: plain.evaluate as PreparedStep['evaluate'],
    };
  });
}

/** Those of *steps* that *name* leans on, itself among them: enough to find its number where no edge asks for more. */
export function stepsTo(name: string, steps: Prepared): Prepared {
  const wanted = new Set([name]);
  return steps
    .toReversed()
    .filter(({ gives, reads }) => {
      const isWanted = gives.some((one) => wanted.has(one));
      if (isWanted) for (const read of reads) wanted.add(read);
      return isWanted;
    })
    .reverse();
}

/**
 * All that follows from *given*, step by step.
 *
 * Where the core refuses the numbers an answer has none, and neither has what leans on it. *edge* is told what is known after every step;
 * the first numbers that it returns stand in place of what the formulas give: a limit that they do not reach. Errors other than
 * {@link OutOfRange} are faults and pass.
 */
export function answersFrom(
  steps: Prepared,
  given: Readonly<Record<string, number>>,
  chosen: Chosen = {},
  edge?: (known: Readonly<Record<string, number>>) => Readonly<Record<string, number>> | undefined,
): Found {
  const numbers: Record<string, number> = { ...given };
  const lacks: Record<string, Lack> = {};
  let limit: Readonly<Record<string, number>> | undefined;
  for (const one of steps) {
    const result = resultOf(one, numbers, lacks, chosen);
    one.gives.forEach((name, index) => {
      if (numbers[name] !== undefined) return;
      if (isLack(result)) {
        lacks[name] = result;
        return;
      }
      const value = one.isPlan
        ? (result as Partial<Record<string, number>>)[one.keys.gives[index]!]
        : (result as number);
      if (value === undefined) lacks[name] = { of: name };
      else numbers[name] = value;
    });
    if (edge !== undefined && limit === undefined) Object.assign(numbers, (limit = edge(numbers)));
  }
  return { numbers, lacks };
}

/** What a step gives; the lack of what it leans on where that has no number; its first answer's own where the core refuses it. */
function resultOf(
  { reads, gives, keys, evaluate }: PreparedStep,
  numbers: Readonly<Record<string, number>>,
  lacks: Readonly<Record<string, Lack>>,
  chosen: Chosen,
): unknown {
  const values: Record<string, number> = {};
  for (let index = 0; index < reads.length; index++) {
    const value = numbers[reads[index]!];
    if (value === undefined) return lacks[reads[index]!];
    values[keys.from[index]!] = value;
  }
  try {
    return evaluate(values, chosen);
  } catch (error) {
    if (error instanceof OutOfRange) return { of: gives[0]!, refused: error };
    throw error;
  }
}

function isLack(result: unknown): result is Lack {
  return typeof result === 'object' && 'of' in result!;
}

const listed = <Name extends QuantityName>(gives: Name | readonly Name[]): readonly Name[] =>
  typeof gives === 'string' ? [gives] : gives;

function keysOf({ gives, from, keys }: Step): StepKeys {
  return keys ?? { from: from.map(camelCase), gives: listed(gives).map(camelCase) };
}
