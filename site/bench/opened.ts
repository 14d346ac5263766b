import { ownCircle } from '#site/state/kept-circle.ts';
import { firstState, type BenchState } from './state.ts';
import { fetchBesides, type Besides } from './fetch-besides.ts';

/** What an address asks for: the state of the page, what could not be used of it, and what sets a second chain like the first, where there is one. */
export interface Opened {
  readonly state: BenchState;
  readonly notices: readonly string[];
  readonly besides?: Besides;
}

/**
 * Reads an address. What reads chains is fetched where there is something to read, what reads a reader's own parts where any are spelled out: the usual
 * chain needs neither. Rejects where the network does not give it.
 */
export async function opened(search: string): Promise<Opened> {
  const [{ state, notices }, besides] = await Promise.all([
    asked(search),
    search.includes('beside=') ? fetchBesides() : undefined,
  ]);
  // The reader's own circle of confusion goes along from lesson to lesson, and to here.
  const circle = ownCircle.read().value;
  const needsCircle = circle !== null && state.conditions['circle-of-confusion'] === undefined;
  return {
    state: needsCircle ? { ...state, conditions: { ...state.conditions, 'circle-of-confusion': circle } } : state,
    notices,
    ...(besides && { besides }),
  };
}

async function asked(search: string): Promise<Omit<Opened, 'besides'>> {
  if (search === '') return { state: firstState(), notices: [] };
  const [{ readState }, own] = await Promise.all([
    import('./read-state.ts'),
    search.includes('my-') ? import('#site/chain/own-in-text.ts') : undefined,
  ]);
  return readState(search, own?.readOwn);
}
