import type { LocalContrast } from '#core/ruler/contrast-along.ts';
import type { RulerLine } from '#core/ruler/photograph.ts';

/** What a file says of how it was taken; each only where it does. Lengths in mm. */
export interface SaidByFile {
  readonly focalLength?: number;
  readonly fNumber?: number;
  /** Of a sample alone: no file says it. */
  readonly pupilMagnification?: number;
  /** Of the sensor's longer side, by the density of its pixels. */
  readonly sensorWidth?: number;
  /** Of the longer side, as the camera wrote it. */
  readonly pixelsAcross?: number;
}

/** Marks that were found along a line, all that has to be kept of them. */
export interface FoundMarks {
  readonly cycles: number;
  readonly drift: number;
  readonly phase: number;
  readonly length: number;
  readonly offAxis: number;
  readonly lean: { readonly value: number; readonly standardError: number };
  readonly variances: { readonly cycles: number; readonly both: number; readonly drift: number };
  readonly contrasts: readonly LocalContrast[];
}

/** What the page asks of its worker. A photograph stays in it until the next is opened; *of* is the number under which it was. */
export type RulerRequest =
  | { readonly id: number; readonly kind: 'open'; readonly file: Blob }
  | { readonly id: number; readonly kind: 'sample'; readonly sample: string }
  | {
      readonly id: number;
      readonly kind: 'measure';
      readonly of: number;
      readonly line: RulerLine;
      readonly reach: number;
    }
  | {
      readonly id: number;
      readonly kind: 'loupe';
      readonly of: number;
      readonly x: number;
      readonly y: number;
      readonly side: number;
    };

/** What it answers, with the question's number. */
export type RulerReply = { readonly id: number } & (
  | {
      readonly kind: 'opened';
      readonly columns: number;
      readonly rows: number;
      readonly preview: ImageBitmap;
      readonly said: SaidByFile;
      readonly note: string;
    }
  | { readonly kind: 'refused'; readonly words: string }
  /** Another photograph has taken the place of the one that was meant. */
  | { readonly kind: 'gone' }
  | { readonly kind: 'measured'; readonly marks: FoundMarks }
  | { readonly kind: 'loupe'; readonly pixels: Uint8ClampedArray<ArrayBuffer>; readonly side: number }
);
