import type { Projection } from './projection.svelte.ts';

/** What the module that projects a lesson gives. */
export interface Projecting {
  readonly Projection: typeof Projection;
}

let fetched: Projecting | undefined;

/** Whether an address names a step of the demonstration. */
export const namesStep = (search: string): boolean => new URLSearchParams(search).has('stage');

/** What projects a lesson, where it has been fetched. */
export const fetchedProjection = (): Projecting | undefined => fetched;

/** Fetches what projects a lesson: most visits never do. Rejects where the network does not give it. */
export async function fetchProjection(): Promise<Projecting> {
  return (fetched ??= await import('./projection.svelte.ts'));
}
