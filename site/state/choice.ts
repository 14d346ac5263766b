import type { Chosen } from '#core/quantity/answer-step.ts';
import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Range } from './address.ts';

export type Inputs<Input extends QuantityName> = Readonly<Record<Input, number>>;
export type Some<Input extends QuantityName> = Readonly<Partial<Record<Input, number>>>;

export interface Option<Input extends QuantityName> {
  readonly label: string;
  /**
   * The inputs this option stands for. Where they are computed from others they follow these until one of them is set by
   * hand; all options of such a choice fill the same inputs.
   */
  readonly fills: Some<Input> | ((given: Inputs<Input>) => Some<Input>);
  /** What a hand that chooses it sets besides, without its standing for that: a lens comes no nearer than its ring goes. An address says all itself. */
  readonly brings?: (given: Inputs<Input>) => Some<Input>;
  /** Of the reader's own kit: figures and addresses know it by its numbers alone. */
  readonly own?: true;
  /** All that it may fill, where something of a part of the kit is assumed or measured. */
  readonly between?: (given: Inputs<Input>) => readonly Some<Input>[];
  /** Why a part of the kit cannot be chosen here. */
  readonly apart?: string;
}

export interface ChoicePlan<Input extends QuantityName> {
  readonly label: string;
  /** Stays chosen whatever is set by hand, its first option at the start: a subject, a way of doing things. */
  readonly kept?: true;
  /** Is no list to choose from: what it says stands beside the input that it fills. */
  readonly quiet?: true;
  /** Which lenses of the reader's own it takes, and how set, where they are not at their closest or held at the magnification that is set. */
  readonly takes?: 'infinity' | 'whole' | 'inside';
  readonly options: Readonly<Record<string, Option<Input>>>;
  /** What an address calls the reader's whole kit, where that is an option once one is kept. */
  readonly wholeKit?: string;
  /** Of a kept choice: what an address may spell out beside the options, and what it is called in the list; undefined for what it may not. */
  readonly spelled?: (text: string) => string | undefined;
}

export type ChoicePlans<Input extends QuantityName> = Readonly<Record<string, ChoicePlan<Input>>>;

/** Options by the name of their choice: what is chosen where a choice is kept. */
export type Kept = Chosen;

/** What an option fills where a formula computes it from other inputs. */
export function filledBy<const Gives extends QuantityName, From extends QuantityName>(
  formula: Pick<Formula<From>, 'from' | 'evaluate'> & { readonly gives: Gives },
): (given: Inputs<From>) => Inputs<Gives> {
  return (given) => ({ [formula.gives]: evaluateFormula(formula as unknown as Formula<From>, given) }) as Inputs<Gives>;
}

/** The choices of one bench: what their options fill, which of them holds, and what follows when something moves. */
export class Choices<Input extends QuantityName> {
  readonly plans: ChoicePlans<Input>;
  readonly #range: (name: Input) => Range;

  constructor(plans: ChoicePlans<Input>, range: (name: Input) => Range) {
    this.plans = plans;
    this.#range = range;
  }

  /** The first option of every choice that is kept; none of the reader's own kit, which stands before them. */
  get firstKept(): Kept {
    const kept = Object.entries(this.plans).filter(([, plan]) => plan.kept);
    const first = (options: ChoicePlan<Input>['options']) => Object.entries(options).find(([, { own }]) => !own)![0];
    return Object.fromEntries(kept.map(([choice, { options }]) => [choice, first(options)]));
  }

  /** Choices whose options are computed from other inputs. */
  get computed(): readonly string[] {
    return Object.keys(this.plans).filter((choice) =>
      Object.values(this.plans[choice]!.options).some(({ fills }) => typeof fills === 'function'),
    );
  }

  /** What an option fills, with these inputs; computed values are kept in range. Nothing for an option there is not. */
  fills(choice: string, slug: string, inputs: Inputs<Input>): Some<Input> {
    const fills = this.plans[choice]?.options[slug]?.fills;
    if (typeof fills !== 'function') return fills ?? ({} as Some<Input>);
    const kept = Object.entries<number | undefined>(fills(inputs)).map(([name, value]) => {
      const { least, most } = this.#range(name as Input);
      return [name, Math.min(most, Math.max(least, value!))];
    });
    return Object.fromEntries(kept) as Some<Input>;
  }

  /** What choosing an option by hand sets, with these inputs: what it fills, and what it brings. */
  brings(choice: string, slug: string, inputs: Inputs<Input>): Some<Input> {
    const brought = this.plans[choice]?.options[slug]?.brings?.(inputs) ?? ({} as Some<Input>);
    return { ...this.fills(choice, slug, { ...inputs, ...brought }), ...brought };
  }

  /** The option whose values the inputs have, or undefined when there is none; one of the reader's own kit where *own* are asked for. */
  holding(choice: string, inputs: Inputs<Input>, own = true): string | undefined {
    return Object.entries(this.plans[choice]?.options ?? {}).find(
      ([slug, option]) =>
        !(option.own && (!own || option.apart)) &&
        Object.entries(this.fills(choice, slug, inputs)).every(([name, value]) => inputs[name as Input] === value),
    )?.[0];
  }

  /** *inputs* with *changes*, and with what computed choices that hold make of them; what is changed by hand stays as it is. */
  after(inputs: Inputs<Input>, changes: Some<Input>): Inputs<Input> {
    let after: Inputs<Input> = { ...inputs, ...changes };
    for (const choice of this.computed) {
      const slug = this.holding(choice, inputs);
      if (slug !== undefined) after = { ...after, ...this.fills(choice, slug, after), ...changes };
    }
    return after;
  }

  /**
   * What an address has to say beside the choices named here: a computed choice that holds is written by its name, and
   * what it fills follows; a number of one's own is written even where it is the start's. So is a choice that is kept.
   */
  written(
    inputs: Inputs<Input>,
    starts: Inputs<Input>,
    kept: Kept,
  ): { names: Record<string, string>; known: Record<string, number> } {
    const names: Record<string, string> = {};
    const known: Record<string, number> = { ...starts };
    for (const [choice, slug] of Object.entries(kept)) {
      if (slug === this.firstKept[choice]) continue;
      names[choice] = slug;
      Object.assign(known, this.fills(choice, slug, inputs));
    }
    for (const choice of this.computed) {
      const slug = this.holding(choice, inputs, false);
      if (slug !== undefined && slug !== this.holding(choice, starts, false)) names[choice] = slug;
      const [any] = Object.keys(this.plans[choice]!.options);
      const filled = Object.keys(this.fills(choice, slug ?? any!, inputs)) as Input[];
      for (const name of filled) known[name] = slug === undefined ? NaN : inputs[name];
    }
    return { names, known };
  }
}
