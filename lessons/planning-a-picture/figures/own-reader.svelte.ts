import type { ReadOwn } from '#site/chain/chain-from-text.ts';

/** What reads parts that an address spells out: fetched when there are any. */
class OwnReader {
  read: ReadOwn | undefined = $state.raw();
  #isComing = false;

  fetch(): void {
    if (this.#isComing) return;
    this.#isComing = true;
    void import('#site/chain/own-in-text.ts').then(
      ({ readOwn }) => (this.read = readOwn),
      () => (this.#isComing = false),
    );
  }
}

export const ownReader = new OwnReader();
