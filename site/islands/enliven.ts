import { mount, type Component } from 'svelte';
import Predict from '#site/controls/predict/Predict.svelte';

/** A component that draws itself anew from the data its place in the page carries. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- each island has props of its own; what its place carries is JSON
type Island = Component<any>;

/**
 * Brings the islands of a page to life: what was built stands until the component, drawn anew, takes its place in the same task.
 *
 * A lesson names its own components; each goes where the page has `<Island is="name">`. Svelte can take over built markup
 * instead, and Astro can load islands one by one, but both weigh more than a lesson can spare and look the same.
 */
export function enliven(own: Readonly<Record<string, Island>>): void {
  const components: Readonly<Record<string, Island>> = { ...own, predict: Predict };
  for (const target of document.querySelectorAll<HTMLElement>('[data-island]')) {
    const component = components[target.dataset['island']!];
    if (!component) throw new Error(`The page has an island “${target.dataset['island']}” that nobody named.`);
    const props = JSON.parse(target.dataset['props'] ?? '{}') as Record<string, unknown>;
    target.replaceChildren();
    mount(component, { target, props });
  }
}
