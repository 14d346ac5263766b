import type { Snippet } from 'svelte';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Answer } from '#site/state/answer.ts';
import type { Arranged } from '#site/figures/picture/arrangement.ts';
import type { Bench } from '#site/state/bench.svelte.ts';

/** Any lesson's bench, seen from widgets that do not know its quantities. */
export type AnyBench = Bench<QuantityName, QuantityName, QuantityName>;

/** The drawing area a figure gets, in CSS pixels, and the sizes its text should have; projected, nothing may be small. */
export interface SheetBox {
  readonly width: number;
  readonly height: number;
  readonly text: number;
  readonly small: number;
  /** Laid out in millimetres of paper: here a ratio is true, and is stated. */
  readonly onPaper?: boolean;
}

/** One drawing of a lesson. */
export interface SheetPlan {
  readonly id: string;
  /** What is drawn, as the title block says it. */
  readonly title: string;
  /** The drawing in words, with its current numbers: what a listener gets instead. Asked for when the hand rests. */
  readonly inWords: () => string;
  readonly figure: Snippet<[SheetBox]>;
}

/** What a sheet that is no drawing is told: whether it is projected, and another number whenever the hand has come to rest. */
export interface PlaceState {
  readonly projected: boolean;
  readonly rests: number;
  /** How the address wants a picture arranged, by name, and where it divides it. */
  readonly arranged: string | undefined;
  readonly divide: number | undefined;
  /** The reader has arranged it so. */
  readonly onarrange: (arranged: Arranged) => void;
  /** What it has to show is still being computed, and nothing stands in its place; or that is over. */
  readonly onwaiting?: (isWaiting: boolean) => void;
}

/** A sheet that draws itself instead of being drawn on: a picture. */
export interface OwnSheet {
  readonly id: string;
  readonly title: string;
  readonly own: Snippet<[PlaceState]>;
  /** Its picture is arranged as the reader likes, and the address says how. */
  readonly arranges?: boolean;
  /** Begins what it will show with the bench as it is at this moment; what a demonstration shows is asked for when that opens. */
  readonly prepare?: (arranged: string | undefined) => void;
}

/** How the reader's answers print, by id; undefined for what the bench does not have. */
export function printerFor(
  answers: Readonly<Record<string, Answer>>,
  print: (name: QuantityName, answer: Answer) => string,
): (id: string) => string | undefined {
  return (id) => {
    const answer = answers[id];
    return answer === undefined ? undefined : print(id as QuantityName, answer);
  };
}
