import { Fetched } from '#site/state/fetched.svelte.ts';

/** What reads parts that an address spells out: fetched when there are any. */
export const ownReader = new Fetched(() => import('#site/chain/own-in-text.ts').then(({ readOwn }) => readOwn));
