import { mount, unmount, type Component } from 'svelte';

/**
 * Brings an island to life: what was built stands until the component, drawn anew, takes its place in the same task.
 *
 * Svelte can take over the built markup instead, but the code for that weighs 3 KB in every lesson, and the two look the same.
 * Islands here have no slots, and their props are data.
 */
export default function island(element: HTMLElement) {
  return (component: Component, props: Record<string, unknown>): void => {
    if (!element.hasAttribute('ssr')) return;
    element.replaceChildren();
    const mounted = mount(component, { target: element, props });
    element.addEventListener('astro:unmount', () => void unmount(mounted), { once: true });
  };
}
