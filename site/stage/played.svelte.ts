import { printerFor, type AnyBench } from '#site/controls/workbench/workbench.ts';
import type { HostedFigure } from '#site/controls/workbench/drawn-by.ts';
import { readArranged, withArranged, type Arranged } from '#site/figures/picture/arrangement.ts';
import { printAnswer } from '#site/state/answer.ts';
import { withParameter } from '#site/state/address.ts';
import { numbersNow, prepareAll, sheetIn, showHappening } from './shown.ts';
import { fillCaption } from './steps.ts';
import { Wait } from './wait.svelte.ts';

/**
 * The figure of one lesson in a sequence of several: set by queries, as its own page is by its address, which is the sequence's here. What is
 * set is the lesson's own; of the reader's kit it knows nothing, so that phones which open the same query show the same.
 */
export class Played {
  readonly #bench: AnyBench;
  readonly sheets: HostedFigure['sheets'];
  readonly wait = new Wait();
  /** Where it was brought to. */
  #search: string = $state('');
  arranged: Arranged = $state.raw({});
  /** Ends the change that is being shown, its result at once. */
  arrive: (() => void) | undefined = $state.raw();
  readonly sheet = $derived.by(() => sheetIn(this.#search, this.sheets));
  readonly #setting = $derived.by(() => this.#bench.stateAfter(this.#search));
  readonly #inProse = $derived.by(() => printerFor(this.#bench.answers, printAnswer));

  constructor({ bench, sheets }: HostedFigure) {
    this.#bench = bench as AnyBench;
    this.sheets = sheets;
  }

  /** All that the figure shows follows from these, some answers from what comes later; what changes with them can watch them. */
  get state(): unknown {
    return [this.#bench.inputs, this.#bench.kept, this.#bench.answers, this.arranged];
  }

  /** Sets the figure as *search* says; where it is asked for, the change is seen happening. */
  show(search: string, happening = false): void {
    this.arrive?.();
    this.arrive = undefined;
    const before = this.#bench.inputs;
    this.#bench.read(search);
    const { notices: _, ...arranged } = readArranged(search);
    this.arranged = arranged;
    this.#search = search;
    this.wait.isPressed = false;
    if (happening) this.arrive = showHappening(this.#bench, before, () => (this.arrive = undefined));
  }

  /** Begins what takes time of what these queries will show. */
  prepare(searches: readonly string[]): void {
    prepareAll(this.#bench, this.sheets, searches);
  }

  /** A caption with the figure's numbers in it; nothing while a change is on its way. */
  captionOf(caption: string): string | undefined {
    if (this.arrive) return undefined;
    return this.wait.words ?? fillCaption(caption, this.#inProse);
  }

  /** The numbers that a caption names, where the figure has been moved and its words hold no longer. */
  movedFrom(caption: string): readonly string[] | undefined {
    return this.arrive || this.#bench.isAt(this.#setting) ? undefined : numbersNow(caption, this.#inProse);
  }

  /** Whether a hand has moved anything since it was set. */
  get isMoved(): boolean {
    const { arranged, divide } = readArranged(this.#search);
    const isArranged = arranged === this.arranged.arranged && divide === this.arranged.divide;
    return !(isArranged && this.#bench.isAt(this.#setting));
  }

  /** All that is seen, as the query of the lesson's own page, not projected. */
  get searchNow(): string {
    const set = ['stage', 'answered'].reduce((rest, name) => withParameter(rest, name, undefined), this.#search);
    return withArranged(this.#bench.write(set), this.arranged);
  }
}
