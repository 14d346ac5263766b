import { mount } from 'svelte';
import type { ProblemFamily } from '#core/practice/family.ts';
import { near } from './near.ts';

/** Fetches a lesson's problems. */
export type FetchFamilies = () => Promise<{ readonly families: readonly ProblemFamily[] }>;

/**
 * Brings the problems of a lesson to life when the reader comes near them, or at once where the address names one: most visits end before,
 * and what marks answers is a seventh of a lesson's scripts. What was built stands until then, and takes no answers.
 */
export async function bringProblems(target: HTMLElement, lesson: string, fetchFamilies: FetchFamilies): Promise<void> {
  target.inert = true;
  if (!new URLSearchParams(location.search).has('practice')) await near(target.firstElementChild!);
  const fetched = await Promise.all([import('#site/controls/practice/Practice.svelte'), fetchFamilies()]).catch(
    () => undefined,
  );
  if (!fetched) return target.before(failure());
  const [{ default: Practice }, { families }] = fetched;
  target.replaceChildren();
  mount(Practice, { target, props: { lesson, families } });
  target.inert = false;
}

function failure(): HTMLElement {
  const words = document.createElement('p');
  words.className = 'notice';
  words.role = 'status';
  words.textContent = 'The network did not give what marks your answers. Load the page again when it is back.';
  return words;
}
