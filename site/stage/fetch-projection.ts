type Fetched = typeof import('./projection.svelte.ts');

let fetched: Fetched | undefined;

/** Whether an address names a step of the demonstration. */
export const namesStep = (search: string): boolean => new URLSearchParams(search).has('stage');

/** What projects a lesson, where it has been fetched. */
export const fetchedProjection = (): Fetched | undefined => fetched;

/** Fetches what projects a lesson: most visits never do. Rejects where the network does not give it. */
export async function fetchProjection(): Promise<Fetched> {
  return (fetched ??= await import('./projection.svelte.ts'));
}
