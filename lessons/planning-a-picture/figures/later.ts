import { Fetched } from '#site/state/fetched.svelte.ts';

const load = () => import('./later-sheets.ts').then(({ laterSheets }) => laterSheets);

/** The sheets behind the first: the page has that before it fetches these. */
export const later = new Fetched(load);

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) later.here = await load();
