import type { AnyBench, OwnSheet, SheetPlan } from '#site/controls/workbench/workbench.ts';
import { withArranged } from '#site/figures/picture/arrangement.ts';
import { withParameter } from '#site/state/address.ts';
import { goInto, goOutTo, goTo, replaceSearch } from '#site/state/location.ts';
import { toggleFullScreen } from './awake.ts';
import { pressInFigure, stageCommand } from './keys.ts';
import { numbersNow, prepareAll, showHappening } from './shown.ts';
import StageFrame from './StageFrame.svelte';
import { namesPlaceOnly, placeAfter, placeIn, unknownStepIn, type Place } from './step.ts';
import { fillCaption, listedSteps } from './steps.ts';
import { Wait } from './wait.svelte.ts';

/** A lesson's demonstration as it is projected: which step is shown, and what the keys do. Fetched when it is first wanted. */
export class Projection {
  /** What it is shown in. */
  readonly Frame = StageFrame;
  readonly #bench: AnyBench;
  readonly #sheets: readonly (SheetPlan | OwnSheet)[];
  /** How the reader's answers print, by id. */
  readonly #inProse: (id: string) => string | undefined;
  readonly #steps = listedSteps(document);
  place: Place | undefined = $state.raw();
  blank = $state(false);
  /** Digits of the step to jump to, as far as they are typed. */
  typed = $state('');
  /** Ends the change that is being shown, its result at once. */
  arrive = $state.raw<() => void>();
  readonly wait = new Wait();
  /** What the address calls a step and none is called. */
  unknown: string | undefined = $state.raw();
  /** Where it was left: there it opens again. */
  #left: Place = { step: 1, answered: false };

  readonly step = $derived(this.place && this.#steps[this.place.step - 1]);
  readonly #setting = $derived.by(
    () => this.step && this.#bench.stateAfter(this.place!.answered ? this.step.answered : this.step.asked),
  );
  readonly caption = $derived.by(() =>
    this.place?.answered && !this.arrive
      ? (this.wait.words ?? fillCaption(this.step!.caption, this.#inProse))
      : undefined,
  );
  /** Words of a step hold at its own setting alone; away from it only its numbers are said. */
  readonly moved = $derived.by(() =>
    this.#setting && !this.arrive && this.place!.answered && !this.#bench.isAt(this.#setting)
      ? numbersNow(this.step!.caption, this.#inProse)
      : undefined,
  );

  constructor(bench: AnyBench, sheets: readonly (SheetPlan | OwnSheet)[], inProse: (id: string) => string | undefined) {
    this.#bench = bench;
    this.#sheets = sheets;
    this.#inProse = inProse;
  }

  get count(): number {
    return this.#steps.length;
  }

  /** The query that opens the first step. */
  readonly first = this.#steps[0]!.asked;

  readonly #names = this.#steps.map(({ names }) => names);

  #addressOf({ step, answered }: Place): string {
    return this.#steps[step - 1]![answered ? 'answered' : 'asked'];
  }

  /** What the address says before the bench reads it: one that says no more than the step is set as that step is. */
  fillAddress(): void {
    this.arrive?.();
    const named = placeIn(location.search, this.#names);
    if (named && namesPlaceOnly(location.search)) replaceSearch(this.#addressOf(named));
  }

  /** Stands where the address says. */
  follow(): void {
    const named = placeIn(location.search, this.#names);
    // Whatever the demonstration will show and takes time is begun, in the order of its steps.
    if (named && !this.place) {
      const all = this.#steps.flatMap(({ asked, answered }) => [asked, answered]);
      prepareAll(this.#bench, this.#sheets, all);
    }
    this.place = named;
    this.unknown = unknownStepIn(location.search, this.#names);
    this.wait.isPressed = false;
    if (named) this.#left = named;
    this.blank = false;
    this.typed = '';
  }

  /** Opens it where it was left. */
  open(): void {
    this.play(this.#left);
  }

  toggle(): void {
    if (this.place) this.leave();
    else this.open();
  }

  leave(): void {
    const rest = ['stage', 'answered'].reduce(
      (search, name) => withParameter(search, name, undefined),
      withArranged(location.search, {}),
    );
    goOutTo(rest);
  }

  /** Goes on or back by so many presses; leaves where there is no number of them. */
  go(by: number | undefined): void {
    if (by === undefined) this.leave();
    else if (!this.place!.answered || !this.wait.keeps(by)) this.play(placeAfter(this.place!, by, this.count));
  }

  /** Opens a place of the demonstration. The answer to the question that is seen is shown happening. */
  play(next: Place): void {
    const bench = this.#bench;
    const { place } = this;
    const isAnswer = place !== undefined && next.answered && next.step === place.step && !place.answered;
    const before = bench.inputs;
    // The view is opened once, however many steps are shown: one press of the browser's Back leaves it.
    (place ? goTo : goInto)(this.#addressOf(next));
    if (!isAnswer) return;
    const end = showHappening(bench, before, () => (this.arrive = undefined));
    if (end) this.arrive = end;
  }

  /** Does what a key means while it is projected. */
  press(event: KeyboardEvent): void {
    const command = this.place && stageCommand(event);
    if (!command) return;
    event.preventDefault();
    event.stopPropagation();
    const digits = this.typed;
    this.typed = command.kind === 'digit' ? (digits + command.digit).slice(-2) : '';
    if (command.kind === 'full-screen') toggleFullScreen();
    else if (command.kind === 'blank') this.blank = !this.blank;
    else if (this.blank) this.blank = false;
    else if (command.kind === 'press') pressInFigure(command.what);
    else if (command.kind === 'leave') {
      if (digits === '') this.leave();
    } else if (command.kind === 'enter' && digits !== '')
      this.play({ step: Math.min(this.count, Math.max(1, Number(digits))), answered: false });
    else if (command.kind !== 'digit') this.go(command.kind === 'go' ? command.by : 1);
  }
}
