import type * as Planned from './planned-chain.ts';

/** What puts chains together and sets them: fetched when one is first asked for. */
class Chains {
  atHand: Pick<typeof Planned, 'plannedChain' | 'rangesOf' | 'rangeTexts' | 'textOf' | 'spelledName'> | undefined =
    $state.raw();
  /** It did not come. */
  isMissing = $state(false);

  fetch(): void {
    if (this.atHand) return;
    void import('./planned-chain.ts').then(
      (fetched) => {
        this.atHand = fetched;
        this.isMissing = false;
      },
      () => (this.isMissing = true),
    );
  }
}

/** Where a plan finds chains; what leans on one has no number until they are here. */
export const chains = new Chains();

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) chains.atHand = await import('./planned-chain.ts');
