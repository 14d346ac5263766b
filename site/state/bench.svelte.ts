import { answersFrom, stepsInOrder, stepsTo, type Found, type Prepared } from '#core/quantity/answers-from.ts';
import type { Step } from '#core/quantity/answer-step.ts';
import { camelCase, evaluateFormula, type Formula, type Named } from '#core/quantity/formula.ts';
import { plainNumber } from '#core/quantity/plain-number.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { readAddress, writeAddress, type AddressPlan, type AddressReading, type Range } from './address.ts';
import { printAnswer, type Answer } from './answer.ts';
import { Choices, type ChoicePlan, type ChoicePlans, type Inputs, type Kept, type Some } from './choice.ts';
import type { Notice } from './notice.ts';
import { nearestRung, rungs } from './rungs.ts';
import { worded, type Numbers, type Wording } from './wording.ts';

export type Answers<Name extends QuantityName> = Readonly<Record<Name, Answer>>;
type Edge = Parameters<typeof answersFrom>[3];

export interface InputPlan {
  readonly start: number;
  /** Range in the base unit, where the lesson's differs from the vocabulary's. */
  readonly least?: number;
  readonly most?: number;
}

/** A second handle on an input, by a formula that gives the input from it: typing a field width sets the magnification. */
export interface Handle<Input extends QuantityName> {
  readonly gives: Input;
  readonly from: readonly QuantityName[];
  readonly evaluate: (given: never) => number;
}

/** Where a bench stands: its inputs, and what is chosen where a choice is kept. */
export interface BenchState<Input extends QuantityName> {
  readonly inputs: Inputs<Input>;
  readonly kept: Kept;
}

export interface BenchPlan<Input extends QuantityName, Output extends QuantityName, Pulled extends Output = never> {
  readonly inputs: Readonly<Record<Input, number | InputPlan>>;
  readonly choices?: ChoicePlans<NoInfer<Input>>;
  readonly handles?: Readonly<Record<Pulled, Handle<NoInfer<Input>>>>;
  /** The lesson's optics: formulas and plans, each from the inputs and what those before it give. */
  readonly formulas: readonly Step<Output>[];
  /** What the lesson says at the edges, where a number alone would mislead or there is none. */
  readonly words?: { readonly [Name in NoInfer<Output>]?: Wording<NoInfer<Input | Output>> };
  /** The lesson's own limit: numbers that stand instead of what the formulas give once what is known so far comes to that. */
  readonly edge?: (known: Numbers<NoInfer<Input | Output>>) => Numbers<NoInfer<Output>> | undefined;
}

/**
 * The one state of a lesson page: inputs that the reader moves, answers that follow from them.
 *
 * One lives at module level for each lesson and is shared by its islands; it is only written in the browser, after mount.
 */
export class Bench<Input extends QuantityName, Output extends QuantityName = never, Pulled extends Output = never> {
  readonly #plan: BenchPlan<Input, Output, Pulled>;
  #choices: Choices<Input> = $state.raw()!;
  readonly #steps: Prepared;
  readonly #stepsTo: Record<string, Prepared> = {};
  /** One object a range while it stays the same: sliders build their ladders anew only for another one. */
  readonly #ranges: Partial<Record<Input | Pulled, Range>> = {};
  readonly starts: Inputs<Input>;
  /** Replaced as a whole when anything moves: cheap at this size, and no watching of single properties travels to readers. */
  inputs: Inputs<Input> = $state.raw({} as Record<Input, number>);
  /** What is chosen where a choice is kept; replaced as a whole. */
  kept: Kept = $state.raw({});
  readonly #found: Found = $derived.by(() => this.#find(this.inputs, this.kept));
  readonly answers: Answers<Input | Output> = $derived.by(() => this.#worded(this.#found));
  notices: readonly Notice[] = $state.raw([]);

  constructor(plan: BenchPlan<Input, Output, Pulled>) {
    this.#plan = plan;
    this.#choices = new Choices<Input>(plan.choices ?? {}, (name) => this.range(name));
    this.#steps = stepsInOrder(plan.formulas, Object.keys(plan.inputs));
    const starts = Object.entries<number | InputPlan>(plan.inputs).map(([name, input]) => [
      name,
      typeof input === 'number' ? input : input.start,
    ]);
    this.starts = Object.fromEntries(starts) as Record<Input, number>;
    this.inputs = this.starts;
    this.kept = this.#choices.firstKept;
  }

  #find(inputs: Inputs<Input>, kept: Kept, steps = this.#steps): Found {
    return answersFrom(steps, inputs, kept, this.#plan.edge as Edge);
  }

  #worded(found: Found): Answers<Input | Output> {
    return worded(found, this.#plan.words ?? {}) as Answers<Input | Output>;
  }

  /** The steps by which the answers follow; pages show those that are formulas. */
  get formulas(): readonly Step[] {
    return this.#plan.formulas;
  }

  /** The number of an input or an answer, or *otherwise* where it has none. An answer that may have none needs it said. */
  number(name: Input | Output): number;
  number<Otherwise>(name: Input | Output, otherwise: Otherwise): number | Otherwise;
  number(name: Input | Output, ...otherwise: readonly unknown[]): unknown {
    return numberOf(this.#found, name, otherwise);
  }

  /** The same for other inputs than the reader's, all else as it is: for figures that ask what these would give. */
  would(name: Input | Output, changes: Some<Input>): number;
  would<Otherwise>(name: Input | Output, changes: Some<Input>, otherwise: Otherwise): number | Otherwise;
  would(name: Input | Output, changes: Some<Input>, ...otherwise: readonly unknown[]): unknown {
    // What the name leans on is enough, unless the lesson's limit has to be asked; a curve asks a hundred times a frame.
    const steps = this.#plan.edge ? this.#steps : (this.#stepsTo[name] ??= stepsTo(name, this.#steps));
    return numberOf(this.#find({ ...this.inputs, ...changes }, this.kept, steps), name, otherwise);
  }

  /** Whether an answer follows from *input*, by however many steps; an input follows from itself alone. */
  leansOn(name: Input | Output, input: QuantityName): boolean {
    return stepsTo(name, this.#steps).some(({ reads }) => reads.includes(input));
  }

  /** The numbers of *names* as a function of the core or a figure takes them: by camel-case names. */
  named<Name extends Input | Output>(...names: readonly Name[]): Readonly<Named<Name>> {
    return Object.fromEntries(names.map((name) => [camelCase(name), this.number(name)])) as Named<Name>;
  }

  /** An input or an answer as it is printed: the number with its unit, or its words. */
  words(name: Input | Output): string {
    return printAnswer(name, this.answers[name]);
  }

  /** All answers for the inputs given, the rest at their starts; moves nothing. */
  at(given: Partial<Record<Input, number>>): Answers<Input | Output> {
    return this.#worded(this.#find(this.#choices.after(this.starts, given), this.#choices.firstKept));
  }

  /** All answers for what a stage step sets: inputs by id, choices by name. */
  atStep(set: Readonly<Record<string, number | string>>): Readonly<Record<string, Answer>> {
    const other = new Bench(this.#plan);
    other.read(new URLSearchParams(set as Record<string, string>).toString());
    return other.answers;
  }

  /** Where an address would bring it; moves nothing. */
  stateAfter(search: string): BenchState<Input> {
    const other = new Bench(this.#plan);
    other.read(search);
    return { inputs: other.inputs, kept: other.kept };
  }

  /** Whether it stands there, to the figures that an address carries. */
  isAt({ inputs, kept }: BenchState<Input>): boolean {
    const isSame = (name: Input) => plainNumber(inputs[name]) === plainNumber(this.inputs[name]);
    return (
      (Object.keys(inputs) as Input[]).every(isSame) &&
      Object.entries(kept).every(([choice, slug]) => this.kept[choice] === slug)
    );
  }

  /** Whether it stands as the page was built. */
  get isAsBuilt(): boolean {
    return this.isAt({ inputs: this.starts, kept: this.#choices.firstKept });
  }

  /** The range in which an input, or a handle on one, is accepted. */
  range(name: Input | Pulled): Range {
    const handle: Handle<Input> | undefined = this.#plan.handles?.[name as Pulled];
    return handle ? this.#reach(name as Pulled, handle.gives) : (this.#ranges[name] ??= this.#rangeOf(name));
  }

  #rangeOf(name: Input | Pulled): Range {
    const own: number | InputPlan = this.#plan.inputs[name as Input];
    const { least, most } = { ...quantityOf(name), ...(own as InputPlan) };
    return { least, most };
  }

  /**
   * How far a handle can be pulled: to where it stands with the input behind it at an end and the others as they are. An end that is no
   * place to pull to, infinitely far or at no magnification, lies as far as the vocabulary goes.
   */
  #reach(name: Pulled, input: Input): Range {
    const { least: first, most: last, scale } = quantityOf(name);
    const ends = Object.values(this.range(input)).map((end: number) => {
      const there = this.would(name, { [input]: end } as unknown as Some<Input>);
      if (there === Infinity) return last;
      // Six figures: an address and a field show no binary dust.
      return scale === 'log' && there <= 0 ? first : Number(there.toPrecision(6));
    });
    const [least, most] = [Math.min(...ends), Math.max(...ends)];
    const known = this.#ranges[name];
    return known?.least === least && known.most === most ? known : (this.#ranges[name] = { least, most });
  }

  /** Moves an input, or the input behind a handle, to the nearest value in range: for drags and sliders. */
  set(name: Input | Pulled, value: number): void {
    this.#clear(name);
    const handle: Handle<Input> | undefined = this.#plan.handles?.[name as Pulled];
    const input = handle?.gives ?? (name as Input);
    const { least, most } = this.range(input);
    const to = handle
      ? evaluateFormula(handle as unknown as Formula, { ...this.#found.numbers, [name]: value } as Inputs<QuantityName>)
      : value;
    const inRange = Math.min(most, Math.max(least, to));
    this.inputs = this.#choices.after(this.inputs, { [input]: inRange } as unknown as Some<Input>);
  }

  /** Moves it to the rung, the mark or the round number nearest to *value*: for what a hand has pulled. */
  toRung(name: Input, value: number): void {
    const ladder = rungs(name, this.range(name));
    this.set(name, ladder[nearestRung(ladder, value)]!);
  }

  /** Takes what was typed. What cannot be used changes nothing but the notice that says so. */
  type(name: Input | Pulled, text: string): boolean {
    const reading = readQuantity(name, text, this.range(name));
    this.#clear(name);
    if (reading.kind === 'value') this.set(name, reading.value);
    if (reading.kind === 'value' && reading.asks) this.#notify(name, reading.asks);
    if (!('message' in reading)) return true;
    this.#notify(name, `${reading.message} The setting is unchanged.`);
    return false;
  }

  /** What can be set, in order: the inputs, each handle behind the one it sets. */
  get controls(): readonly (Input | Pulled)[] {
    const handles = Object.entries<Handle<Input>>(this.#plan.handles ?? {}) as [Pulled, Handle<Input>][];
    return (Object.keys(this.starts) as Input[]).flatMap((input) => [
      input,
      ...handles.filter(([, { gives }]) => gives === input).map(([name]) => name),
    ]);
  }

  /** With what is chosen in each: what an address has spelled out is an option while it is. */
  get choices(): ChoicePlans<Input> {
    const plans = { ...this.#choices.plans };
    for (const [choice, slug] of Object.entries(this.kept)) {
      const plan = plans[choice]!;
      const label = plan.spelled?.(slug);
      if (label !== undefined && !plan.options[slug])
        plans[choice] = { ...plan, options: { ...plan.options, [slug]: { label, fills: {} as Some<Input> } } };
    }
    return plans;
  }

  /** Lists things of the reader's own kit first, by choice and slug. */
  offer(own: Readonly<Record<string, ChoicePlan<Input>['options']>>): void {
    const plans: Record<string, ChoicePlan<Input>> = { ...this.#plan.choices };
    for (const [choice, options] of Object.entries(own)) {
      plans[choice] = { ...plans[choice]!, options: { ...options, ...plans[choice]!.options } };
    }
    this.#choices = new Choices<Input>(plans, (name) => this.range(name));
  }

  /** The option of a choice whose values the inputs have now, or undefined when they are the reader's own, of a kit or not. */
  chosen(choice: string): string | undefined {
    return this.kept[choice] ?? this.#choices.holding(choice, this.inputs, false);
  }

  /** The same where things of the reader's kit are options as well. */
  chosenOrOwn(choice: string): string | undefined {
    return this.kept[choice] ?? this.#choices.holding(choice, this.inputs);
  }

  choose(choice: string, slug: string): void {
    this.#take(choice, slug, this.#choices.brings(choice, slug, this.inputs));
  }

  #take(choice: string, slug: string, filled: Some<Input>): void {
    this.#clear(choice);
    if (choice in this.kept) this.kept = { ...this.kept, [choice]: slug };
    this.inputs = this.#choices.after(this.inputs, filled);
  }

  /** Takes over what an address says; what it does not say goes back to its start. Gives what it chose, of the page's *others* too. */
  read(search: string, others: AddressPlan['choices'] = {}): AddressReading['choices'] {
    this.inputs = this.starts;
    this.kept = this.#choices.firstKept;
    const own = readAddress(search, {
      inputs: this.#rangesOf(this.#plan.inputs),
      choices: { ...this.choices, ...others },
    });
    for (const [choice, slug] of Object.entries(own.choices)) {
      this.#take(choice, slug, this.#choices.fills(choice, slug, this.inputs));
    }
    this.inputs = this.#choices.after(this.inputs, own.inputs as Some<Input>);
    // Handles last: how far they can be pulled follows from the rest.
    const pulled = readAddress(search, { inputs: this.#rangesOf(this.#plan.handles), choices: {} });
    for (const [name, value] of Object.entries(pulled.inputs)) this.set(name as Pulled, value);
    this.notices = [...own.notices, ...pulled.notices];
    return own.choices;
  }

  /** *search* with the inputs as they are now. */
  write(search: string): string {
    const rest = new URLSearchParams(search);
    for (const name of [...Object.keys(this.#plan.handles ?? {}), ...Object.keys(this.choices)]) rest.delete(name);
    const { names, known } = this.#choices.written(this.inputs, this.starts, this.kept);
    for (const [choice, slug] of Object.entries(names)) rest.set(choice, slug);
    return writeAddress(rest.toString(), this.inputs, known);
  }

  #rangesOf(plans: object = {}): AddressPlan['inputs'] {
    return Object.fromEntries(Object.keys(plans).map((name) => [name, this.range(name as Input | Pulled)]));
  }

  #notify(field: string, text: string): void {
    this.notices = [...this.notices, { field, text }];
  }

  #clear(field: string): void {
    if (this.notices.length > 0) this.notices = this.notices.filter((notice) => notice.field !== field);
  }
}

function numberOf({ numbers }: Found, name: QuantityName, otherwise: readonly unknown[]): unknown {
  if (name in numbers) return numbers[name];
  if (otherwise.length > 0) return otherwise[0];
  throw new Error(`${name} has no number with these inputs: say what stands in its place.`);
}

/** A choice that fills no inputs and stays chosen: a subject, a way of doing things. The first is chosen at the start. */
export function keptChoice(label: string, ways: Readonly<Record<string, string>>): ChoicePlan<never> {
  const options = Object.entries(ways).map(([slug, words]) => [slug, { label: words, fills: {} }]);
  return { label, kept: true, options: Object.fromEntries(options) as ChoicePlan<never>['options'] };
}

/** A choice among things of the crate that fills the inputs *names*. */
export function choiceOf<Input extends QuantityName>(
  label: string,
  things: Readonly<Record<string, { readonly label: string } & Inputs<Input>>>,
  names: readonly Input[],
): ChoicePlan<Input> {
  const options = Object.entries(things).map(([slug, thing]) => [
    slug,
    { label: thing.label, fills: startsOf(thing, names) },
  ]);
  return { label, options: Object.fromEntries(options) as ChoicePlan<Input>['options'] };
}

/** What a thing of the crate brings to a bench's inputs to begin with. */
export function startsOf<Name extends QuantityName>(thing: Inputs<Name>, names: readonly Name[]): Inputs<Name> {
  return Object.fromEntries(names.map((name) => [name, thing[name]])) as Inputs<Name>;
}
