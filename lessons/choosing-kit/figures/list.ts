import { Fetched } from '#site/state/fetched.svelte.ts';

const load = () => import('./list-of-chains.ts').then(({ listOfChains }) => listOfChains);

/** The list of all chains: the page has its figure before it fetches that. */
export const list = new Fetched(load);

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) list.here = await load();
