import { pressInFigure } from '#site/stage/keys.ts';
import type { Stored } from '#site/state/stored.ts';
import type { Catalogue } from './catalogue.ts';
import {
  askedBy,
  at,
  believed,
  isEvening,
  noEvening,
  pagesFor,
  placeAfter,
  placeIn,
  type Evening,
  type Place,
} from './evening.ts';
import { keptEvening, keptPlan } from './kept.ts';
import { emptyPlan, type Plan } from './plan.ts';
import { readPlan, type Steps } from './schema.ts';

/** What windows tell each other: what they have changed, what is to be pressed in the figure, or that they are new and know nothing yet. */
type Message = { readonly plan?: unknown; readonly evening?: unknown; readonly press?: unknown; readonly asks?: true };

/** The plan and the evening as all windows of this browser have them: whoever changes them tells the others and keeps them for the next time. */
export class Shared {
  readonly catalogue: Catalogue;
  readonly steps: Steps;
  readonly keptPlan: Stored<Plan>;
  readonly #others = 'BroadcastChannel' in globalThis ? new BroadcastChannel('ring-and-ruler.evening') : undefined;
  plan: Plan = $state.raw(emptyPlan);
  evening: Evening = $state.raw(noEvening);
  /** A room sees the evening, as far as this window knows. */
  isProjected = $state(true);
  /** What lies in this browser's storage and is no plan. */
  unread: string | undefined = $state.raw();
  readonly believed = $derived.by(() => believed(this.plan, this.evening, this.catalogue));
  readonly pages = $derived(pagesFor(this.believed));
  readonly place: Place = $derived.by(() => placeIn(this.plan, this.evening, this.pages));
  readonly item = $derived(this.plan.items[this.place.index]);
  readonly asked = $derived.by(() => askedBy(this.item, this.catalogue));

  constructor(catalogue: Catalogue) {
    this.catalogue = catalogue;
    this.steps = Object.fromEntries(
      Object.values(catalogue).map(({ slug, steps, first }) => [slug, { ids: steps.map(({ id }) => id), first }]),
    );
    this.keptPlan = keptPlan(this.steps);
  }

  /** Takes what is kept, and listens; returns the way to stop. */
  open(): () => void {
    this.plan = this.keptPlan.read().value;
    this.unread = this.keptPlan.unread();
    this.evening = keptEvening.read().value;
    const hear = ({ data }: MessageEvent<Message>) => this.#hear(data);
    this.#others?.addEventListener('message', hear);
    this.#tell({ asks: true });
    const stops = [
      this.keptPlan.onChanged(({ value }) => {
        this.plan = value;
        this.unread = this.keptPlan.unread();
      }),
      keptEvening.onChanged(({ value }) => (this.evening = value)),
    ];
    return () => {
      for (const stop of stops) stop();
      this.#others?.close();
    };
  }

  #hear({ plan, evening, press, asks }: Message): void {
    if (press === 'run' || press === 'more') pressInFigure(press);
    // Of another edition, perhaps: looked at like anything that comes from outside.
    const reading = plan === undefined ? undefined : readPlan(plan, this.steps);
    if (reading?.kind === 'plan') this.plan = reading.plan;
    if (isEvening(evening)) this.evening = evening;
    if (asks && this.evening.began !== null) this.#tell({ plan: this.plan, evening: this.evening });
  }

  #tell(message: Message): void {
    this.#others?.postMessage(message);
  }

  /** Presses what the figure on the wall has of that kind, whichever window that is in. */
  press(what: 'run' | 'more'): void {
    pressInFigure(what);
    this.#tell({ press: what });
  }

  /** Changes the plan; says whether the browser has kept it. */
  changePlan(how: (plan: Plan) => Plan): boolean {
    this.plan = how(this.plan);
    this.keptPlan.write(this.plan);
    this.unread = this.keptPlan.unread();
    this.#tell({ plan: this.plan });
    return JSON.stringify(this.keptPlan.read().value) === JSON.stringify(this.plan);
  }

  change(how: (evening: Evening) => Evening): void {
    this.evening = how(this.evening);
    keptEvening.write(this.evening);
    this.#tell({ evening: this.evening });
  }

  /** Goes to a place; the first time that a room sees it the clock begins. */
  goTo(place: Place): void {
    const now = this.isProjected ? Date.now() : null;
    this.change((evening) => ({ ...at(evening, this.plan, place), began: evening.began ?? now }));
  }

  /** Goes on or back by so many presses. */
  go(by: number): void {
    this.goTo(placeAfter(this.plan, this.place, by, this.pages));
  }

  /** Begins anew: at the first item, no hands counted, the clock at nothing. */
  beginAnew(): void {
    this.change(() => ({ ...at(noEvening, this.plan, { index: 0, answered: false }), began: Date.now() }));
  }
}
