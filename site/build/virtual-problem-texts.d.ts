declare module 'virtual:problem-texts' {
  import type { FamilyTexts } from '#site/controls/practice/texts.ts';

  /** The words of a lesson's problems by family, by the lesson's slug; each is fetched when it is asked for. */
  export const textsOf: Readonly<
    Record<
      string,
      () => Promise<{
        readonly texts: Readonly<
          Record<
            string,
            FamilyTexts & {
              /** For each step of the working its equation, by the name of its file, or in letters and with places for numbers. */
              readonly equations: readonly (string | readonly [letters: string, numbers: string] | null)[];
            }
          >
        >;
      }>
    >
  >;
}
