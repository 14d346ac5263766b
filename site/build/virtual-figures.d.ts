declare module 'virtual:figures' {
  import type { Component } from 'svelte';

  /** Each lesson's figure by slug, fetched when it is asked for. */
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- each lesson's figure has props of its own
  export const figures: Readonly<Record<string, () => Promise<{ readonly figure: Component<any> }>>>;
}
