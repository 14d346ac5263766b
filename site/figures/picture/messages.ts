import type { Refused } from '#site/state/answer.ts';
import type { Fineness, PictureJob } from './job.ts';

/** What the page asks of the worker. A newer request ends the one before it; one without a job only ends it. */
export interface RenderRequest {
  readonly id: number;
  readonly job?: PictureJob;
  readonly fineness?: Fineness;
}

/** One picture as a screen takes it: red, green, blue and opacity of each pixel. */
export interface Pixels {
  readonly columns: number;
  readonly rows: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** What a job comes to. */
export interface Rendered {
  readonly picture: Pixels;
  /** The same with everything sharp, and where the two differ. */
  readonly sharp?: Pixels;
  readonly difference?: Pixels;
  /** Peak signal to noise ratio of the picture against the sharp one, dB; Infinity where they are the same. */
  readonly likeness?: number;
}

/** What the worker tells: how far a request is, what came of it, or in words why nothing did. */
export type RenderReply =
  | { readonly id: number; readonly kind: 'progress'; readonly share: number }
  | { readonly id: number; readonly kind: 'done'; readonly rendered: Rendered }
  | { readonly id: number; readonly kind: 'failed'; readonly words: string; readonly refused?: Refused };

/** What a figure is told while its pictures are made. */
export interface Listener {
  /** From 0 to 1 while the fine picture is being made; undefined when nothing is. */
  progress: (share: number | undefined) => void;
  picture: (rendered: Rendered, isSketch: boolean) => void;
  /** In words why there is no picture. */
  failed: (words: string) => void;
}
