import type { listOfChains } from './list-of-chains.ts';

/** The list of all chains: the page has its figure before it fetches that. */
class List {
  here: typeof listOfChains | undefined = $state.raw();

  fetch(): void {
    if (this.here) return;
    void import('./list-of-chains.ts').then(
      (fetched) => (this.here = fetched.listOfChains),
      () => undefined,
    );
  }
}

export const list = new List();

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) list.here = (await import('./list-of-chains.ts')).listOfChains;
