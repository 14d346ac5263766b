import { mount, unmount, untrack, type Component } from 'svelte';
import { drawnBy } from '#site/controls/workbench/drawn-by.ts';
import PlayedBench from '#site/stage/PlayedBench.svelte';
import type { Played } from '#site/stage/played.svelte.ts';
import { stepIn, type ListedStep } from './catalogue.ts';
import { figureOf } from './figures.ts';
import type { Item } from './plan.ts';
import type { Shared } from './shared.svelte.ts';

/** A lesson whose figure has been fetched, to be put on the wall. */
export interface Fetched {
  readonly lesson: string;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- the figure of any lesson
  readonly Bench: Component<any>;
}

const lessonOf = (item: Item | undefined) => (item?.kind === 'step' ? [item.lesson] : []);

/** The lessons' figures that the wall has, fetched and drawn before they are asked for. */
export class WallFigures {
  readonly #shared: Shared;
  fetched: readonly Fetched[] = $state.raw([]);
  /** By lesson, once they are drawn. */
  drawn: Readonly<Record<string, Played>> = $state.raw({});
  failed: readonly string[] = $state.raw([]);
  #asked: readonly string[] = [];

  constructor(shared: Shared) {
    this.#shared = shared;
  }

  stepOf(item: Item | undefined): ListedStep | undefined {
    return item?.kind === 'step' ? stepIn(this.#shared.catalogue, item) : undefined;
  }

  /** Steps of a lesson that are still to come, the present one among them. */
  #comingOf(lesson: string): readonly ListedStep[] {
    const { plan, place } = this.#shared;
    return plan.items.slice(place.index).flatMap((one) => (lessonOf(one).includes(lesson) ? [this.stepOf(one)!] : []));
  }

  /** Lessons whose figure is wanted now or soon: of this step, of the next lesson's, of the one before. */
  #wanted(): readonly string[] {
    const { plan, place } = this.#shared;
    const [here] = lessonOf(plan.items[place.index]);
    const isOther = (one: Item) => one.kind === 'step' && one.lesson !== here;
    return [
      ...lessonOf(plan.items[place.index]),
      ...lessonOf(plan.items.slice(place.index + 1).find(isOther)),
      ...lessonOf(plan.items.slice(0, place.index).findLast(isOther)),
    ];
  }

  /** Fetches what is wanted and has not been asked for; what the network did not give is asked for again. */
  fetchWanted(): void {
    for (const lesson of this.#wanted()) {
      if (this.#asked.includes(lesson)) continue;
      this.#asked = [...this.#asked, lesson];
      figureOf(lesson).then(
        (Bench) => {
          this.fetched = [...this.fetched, { lesson, Bench }];
          this.failed = this.failed.filter((one) => one !== lesson);
        },
        () => {
          this.#asked = this.#asked.filter((one) => one !== lesson);
          this.failed = [...this.failed, lesson];
        },
      );
    }
  }

  /** Puts a lesson's figure into its place on the wall; where another is seen, set to the first of its steps that is to come. */
  readonly into =
    ({ lesson, Bench }: Fetched) =>
    (target: HTMLElement) => {
      const { catalogue } = this.#shared;
      const took = (played: Played) => {
        const coming = this.#comingOf(lesson);
        if (!lessonOf(this.#shared.item).includes(lesson) && coming[0]) played.show(coming[0].asked);
        played.prepare(coming.flatMap(({ asked, answered }) => [asked, answered]));
        this.drawn = { ...this.drawn, [lesson]: played };
      };
      const props = catalogue[lesson]!.given ?? {};
      const context = drawnBy({ Bench: PlayedBench, took: (played: Played) => untrack(() => took(played)) });
      const mounted = untrack(() => mount(Bench, { target, props, context }));
      return () => void unmount(mounted);
    };
}
