import { plainNumber } from '#core/quantity/plain-number.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { readAddress, writeAddress, type AddressPlan, type AddressReading, type Range } from './address.ts';
import { valueOf, type Answer } from './answer.ts';
import { Choices, type ChoicePlan, type ChoicePlans, type Inputs, type Kept, type Some } from './choice.ts';
import type { Notice } from './notice.ts';

export interface InputPlan {
  readonly start: number;
  /** Range in the base unit, where the lesson's differs from the vocabulary's. */
  readonly least?: number;
  readonly most?: number;
}

/** A second handle on an input: typing a field width sets the magnification. */
export interface Handle<Input extends QuantityName> {
  readonly sets: Input;
  readonly to: (value: number, given: Inputs<Input>) => number;
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
  /** The lesson's optics: total over the ranges of the inputs, with words at the edges; *kept* has the choices that are kept. */
  readonly compute: (given: Readonly<Record<NoInfer<Input>, number>>, kept: Kept) => Readonly<Record<Output, Answer>>;
}

/**
 * The one state of a lesson page: inputs that the reader moves, answers that follow from them.
 *
 * One lives at module level for each lesson and is shared by its islands; it is only written in the browser, after mount.
 */
export class Bench<Input extends QuantityName, Output extends QuantityName = never, Pulled extends Output = never> {
  readonly #plan: BenchPlan<Input, Output, Pulled>;
  readonly #choices: Choices<Input>;
  /** One object a range while it stays the same: sliders build their ladders anew only for another one. */
  readonly #ranges: Partial<Record<Input | Pulled, Range>> = {};
  readonly starts: Inputs<Input>;
  /** Replaced as a whole when anything moves: cheap at this size, and no watching of single properties travels to readers. */
  inputs: Inputs<Input> = $state.raw({} as Record<Input, number>);
  /** What is chosen where a choice is kept; replaced as a whole. */
  kept: Kept = $state.raw({});
  readonly answers: Readonly<Record<Input | Output, Answer>> = $derived.by(() => this.#answers(this.inputs, this.kept));
  notices: readonly Notice[] = $state.raw([]);

  constructor(plan: BenchPlan<Input, Output, Pulled>) {
    this.#plan = plan;
    this.#choices = new Choices<Input>(plan.choices ?? {}, (name) => this.range(name));
    const starts = Object.entries<number | InputPlan>(plan.inputs).map(([name, input]) => [
      name,
      typeof input === 'number' ? input : input.start,
    ]);
    this.starts = Object.fromEntries(starts) as Record<Input, number>;
    this.inputs = this.starts;
    this.kept = this.#choices.firstKept;
  }

  /** All answers for the inputs given, the rest at their starts; moves nothing. */
  at(given: Partial<Record<Input, number>>): Readonly<Record<Input | Output, Answer>> {
    return this.#answers(this.#choices.after(this.starts, given));
  }

  #answers(inputs: Inputs<Input>, kept = this.#choices.firstKept): Readonly<Record<Input | Output, Answer>> {
    const answers: Readonly<Record<string, Answer>> = { ...inputs, ...this.#plan.compute(inputs, kept) };
    return answers as Readonly<Record<Input | Output, Answer>>;
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

  /** The range in which an input, or a handle on one, is accepted. */
  range(name: Input | Pulled): Range {
    const handle: Handle<Input> | undefined = this.#plan.handles?.[name as Pulled];
    return handle ? this.#reach(name as Pulled, handle.sets) : (this.#ranges[name] ??= this.#rangeOf(name));
  }

  #rangeOf(name: Input | Pulled): Range {
    const own: number | InputPlan = this.#plan.inputs[name as Input];
    const { least, most } = { ...quantityOf(name), ...(own as InputPlan) };
    return { least, most };
  }

  /** How far a handle can be pulled: to where it stands with the input behind it at an end and the others as they are. */
  #reach(name: Pulled, input: Input): Range {
    const ends = Object.values(this.range(input)).map((end: number) =>
      // Six figures: an address and a field show no binary dust.
      Number(valueOf(this.#answers({ ...this.inputs, [input]: end }, this.kept)[name])!.toPrecision(6)),
    );
    const [least, most] = [Math.min(...ends), Math.max(...ends)];
    const known = this.#ranges[name];
    return known?.least === least && known.most === most ? known : (this.#ranges[name] = { least, most });
  }

  /** Moves an input, or the input behind a handle, to the nearest value in range: for drags and sliders. */
  set(name: Input | Pulled, value: number): void {
    this.#clear(name);
    const handle: Handle<Input> | undefined = this.#plan.handles?.[name as Pulled];
    const input = handle?.sets ?? (name as Input);
    const { least, most } = this.range(input);
    const inRange = Math.min(most, Math.max(least, handle ? handle.to(value, this.inputs) : value));
    this.inputs = this.#choices.after(this.inputs, { [input]: inRange } as unknown as Some<Input>);
  }

  /** Takes what was typed. What cannot be used changes nothing but the notice that says so. */
  type(name: Input | Pulled, text: string): boolean {
    const reading = readQuantity(name, text, this.range(name));
    this.#clear(name);
    if (reading.kind === 'value') this.set(name, reading.value);
    if (!('message' in reading)) return true;
    this.notices = [...this.notices, { field: name, text: `${reading.message} Nothing was changed.` }];
    return false;
  }

  get choices(): ChoicePlans<Input> {
    return this.#choices.plans;
  }

  /** The option of a choice whose values the inputs have now, or undefined when they are the reader's own. */
  chosen(choice: string): string | undefined {
    return this.kept[choice] ?? this.#choices.holding(choice, this.inputs);
  }

  choose(choice: string, slug: string): void {
    this.#clear(choice);
    if (choice in this.kept) this.kept = { ...this.kept, [choice]: slug };
    this.inputs = this.#choices.after(this.inputs, this.#choices.fills(choice, slug, this.inputs));
  }

  /** Takes over what an address says; what it does not say goes back to its start. Gives what it chose, of the page's *others* too. */
  read(search: string, others: AddressPlan['choices'] = {}): AddressReading['choices'] {
    this.inputs = this.starts;
    this.kept = this.#choices.firstKept;
    const own = readAddress(search, {
      inputs: this.#rangesOf(this.#plan.inputs),
      choices: { ...this.choices, ...others },
    });
    for (const [choice, slug] of Object.entries(own.choices)) this.choose(choice, slug);
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

  #clear(field: string): void {
    if (this.notices.length > 0) this.notices = this.notices.filter((notice) => notice.field !== field);
  }
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
    { label: thing.label, fills: Object.fromEntries(names.map((name) => [name, thing[name]])) },
  ]);
  return { label, options: Object.fromEntries(options) as ChoicePlan<Input>['options'] };
}
