import type { Box } from '../sheet/boxes.ts';

/** A line or a ground on the sheet. */
export interface Stroke {
  readonly key: string;
  readonly path: string;
  readonly className: string;
  readonly quantity?: string;
  /** What a hand takes hold of by it. */
  readonly of?: 'subject' | 'around';
  /** What it takes of the sheet, where no word is to stand on it. */
  readonly box?: Box;
}

/** A point whose letter is to stand beside it. */
export interface Lettered {
  readonly key: string;
  readonly letters: readonly string[];
  readonly x: number;
  /** How far from the axis its mark reaches, pixels. */
  readonly half: number;
  /** The side on which its letter keeps clear of its neighbour's. */
  readonly isLeft: boolean;
  /** Its letter had better stand beyond the ends of its mark, clear of glass and rays. */
  readonly isBeyond?: boolean;
  /** Its letter had better stand at the upper end of its mark. */
  readonly isHigh?: boolean;
  readonly quantity?: string;
}
