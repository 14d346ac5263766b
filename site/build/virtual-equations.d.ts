declare module 'virtual:equations' {
  /** Every equation as a page shows it, by the name of its file: in letters, and with places for its numbers. */
  export const equations: Readonly<Record<string, readonly [letters: string, numbers: string]>>;
}
