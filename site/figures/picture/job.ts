import type { CoinBeforePosts } from '#core/picture/subjects/coin-before-posts.ts';
import type { Lamp } from '#core/picture/subjects/lamp.ts';
import type { Lighting } from '#core/picture/subjects/subject.ts';
import type { View } from '#core/picture/view.ts';
import type { StackJob } from './stack-job.ts';

/** A picture to be rendered, as plain data: it is sent to a worker. */
export interface PictureJob {
  /** The subject's slug. */
  readonly subject: string;
  /** Instead of it a coin with posts behind, as the camera sees them. */
  readonly coinBeforePosts?: CoinBeforePosts;
  /** Which leaf, which frost crystal. */
  readonly seed: number;
  /** The camera, of the first frame where there are several. */
  readonly view: View;
  /** Which place of the subject is in the middle, mm from its own middle, downwards; the middle if absent. */
  readonly centre?: { readonly x: number; readonly y: number };
  /** By how much its right half is turned towards the camera, rad, about the upright through its middle. */
  readonly turned?: number;
  readonly lighting?: Lighting;
  /** Round lights instead. */
  readonly lamps?: readonly Lamp[];
  /** Beside a flash, whose picture the view is, the light already there draws another. */
  readonly ambient?: AmbientPart;
  /** Several frames, merged. */
  readonly stack?: StackJob;
  /** Whether the same frame is wanted with everything sharp too, to compare with. */
  readonly compare?: boolean;
}

/** What the light already there adds to a flash's picture. */
export interface AmbientPart {
  /** Its share of all light on the subject, from 0 to 1. */
  readonly share: number;
  /** Streak that the subject leaves in it, mm on the sensor. */
  readonly motionBlur: number;
  /** How much less flash the deepest places of the scene get than the subject: a share from 0 to 1. */
  readonly flashBehind: number;
}

/** How finely a job is done. */
export interface Fineness {
  /** Pixels of the view that become one, each way. */
  readonly coarseness: number;
  /** Depths that are blurred each by itself, at most. */
  readonly slices: number;
  /** A stack is not merged frame by frame, but drawn at once as sharp as the frames together are. */
  readonly atOnce?: boolean;
}

/** While the hand moves; there at once. {@link sketchAfter} makes later ones coarser or finer. */
export const sketch: Fineness = { coarseness: 5, slices: 9, atOnce: true };
/** When the hand rests. */
export const finished: Fineness = { coarseness: 1, slices: 32 };

/** The next sketch after one that took so many milliseconds: coarser where the hand would see it lag, finer where there is time. */
export function sketchAfter(last: Fineness, took: number): Fineness {
  const step = took > 24 ? 1 : took < 12 ? -1 : 0;
  return { ...last, coarseness: Math.min(9, Math.max(4, last.coarseness + step)) };
}

/** The same field of view on fewer and larger pixels. */
export function coarseView(view: View, { coarseness }: Fineness): View {
  return {
    ...view,
    columns: Math.max(1, Math.round(view.columns / coarseness)),
    rows: Math.max(1, Math.round(view.rows / coarseness)),
    pitch: view.pitch * coarseness,
    // A larger pixel gathers the light of those it stands for.
    ...(view.electronsAtWhite === undefined ? {} : { electronsAtWhite: view.electronsAtWhite * coarseness ** 2 }),
    // Of so many readings each has its own error: their squares add.
    ...(view.readNoise === undefined ? {} : { readNoise: view.readNoise * coarseness }),
  };
}
