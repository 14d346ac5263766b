import type { CheckedAnswer, ReadText, Written } from './check.ts';

/** What the page asks of its worker. */
export interface CheckRequest {
  readonly id: number;
  readonly have: Written;
  readonly found: Written;
}

/** What the worker answers. */
export interface CheckReply {
  readonly id: number;
  readonly have: ReadText;
  readonly found: ReadText;
  readonly answers: readonly CheckedAnswer[];
  /** The query that puts what is given on the bench, where that is a chain. */
  readonly bench?: string;
}
