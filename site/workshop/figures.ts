import type { Component } from 'svelte';

// eslint-disable-next-line @typescript-eslint/no-explicit-any -- each lesson's figure has props of its own; an evening gives none
const figures = import.meta.glob<{ default: Component<any> }>('../../lessons/*/figures/Bench.svelte');

/** Fetches the figure of a lesson. Rejects where the network does not give it. */
export async function figureOf(lesson: string) {
  return (await figures[`../../lessons/${lesson}/figures/Bench.svelte`]!()).default;
}
