import { mount, type Component, type ComponentProps } from 'svelte';
import type { LineFormula } from '#core/quantity/printed-line.ts';
import Predict from '#site/controls/predict/Predict.svelte';
import { fetchProjection, namesStep } from '#site/stage/fetch-projection.ts';
import { followParts } from '#site/lesson/follow-parts.ts';
import { restOutOfSight } from '#site/lesson/rest-out-of-sight.ts';
import { showMeanings } from '#site/terms/show-meaning.ts';
import { alsoShown } from '#site/state/shown-formulas.ts';
import { bringProblems, type FetchFamilies } from './bring-problems.ts';

/** What a lesson's own script brings: its slug, its figure and its problems. */
export interface OwnIslands {
  readonly lesson: string;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a figure has props of its own; what its place in the page carries is JSON
  readonly Bench: Component<any>;
  readonly problems: FetchFamilies;
  /** Those of its prose that are called by the name of their file. */
  readonly formulas: Readonly<Record<string, LineFormula>>;
}

/**
 * Brings a lesson's page to life. Its terms say what they mean; of its islands, what was built stands until the component, drawn anew, takes its
 * place in the same task.
 *
 * Each goes where the page has `<Island is="bench">`, `check` or `predict`, with the data that its place carries. Svelte can take over
 * built markup instead, and Astro can load islands one by one, but both weigh more than a lesson can spare and look the same.
 */
export async function enliven({ lesson, Bench, problems, formulas }: OwnIslands): Promise<void> {
  // Fetched for its figure alone, where no lesson is the page.
  if (!document.querySelector('.lesson-header')) return;
  followParts();
  addEventListener('load', () => void restOutOfSight(document.querySelector('.lesson')!));
  // What was built stands a little longer: a page that is opened projected never shows itself first. Without it the figure says so.
  if (namesStep(location.search)) await fetchProjection().catch(() => undefined);
  alsoShown(formulas);
  for (const target of document.querySelectorAll<HTMLElement>('[data-island]')) {
    const { island, props: carried = '{}' } = target.dataset;
    if (island === 'check') {
      void bringProblems(target, lesson, problems);
      continue;
    }
    const props: unknown = JSON.parse(carried);
    target.replaceChildren();
    if (island === 'bench') mount(Bench, { target, props: props as object });
    else if (island === 'predict') mount(Predict, { target, props: props as ComponentProps<typeof Predict> });
    else throw new Error(`The page has an island “${island}”; there are bench, check and predict.`);
  }
  showMeanings();
}
