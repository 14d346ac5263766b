import { toDisplay } from '#core/picture/display.ts';
import { errorMap } from '#core/picture/error-map.ts';
import type { Picture } from '#core/picture/picture.ts';
import { psnr } from '#core/picture/psnr.ts';
import { renderSteps } from '#core/picture/render.ts';
import type { Scene } from '#core/picture/scene.ts';
import { sharpPicture } from '#core/picture/sharp-picture.ts';
import { coinBeforePosts } from '#core/picture/subjects/coin-before-posts.ts';
import { subjectOf } from '#core/picture/subjects/subjects.ts';
import { darkenedBehind, twoExposures } from '#core/picture/two-exposures.ts';
import { turnedDepth, turnedScene } from '#core/picture/turned-scene.ts';
import { fieldOf, type View } from '#core/picture/view.ts';
import { coarseView, type AmbientPart, type Fineness, type PictureJob } from './job.ts';
import type { Rendered, Pixels } from './messages.ts';
import { mergeFrames } from './merge-frames.ts';

/**
 * Makes what a job asks for, in steps: yields the share that is done, so that it can be left off between two.
 *
 * @throws what the core throws for a view or a stack that gives no picture, in words
 */
export function* renderJob(job: PictureJob, fineness: Fineness): Generator<number, Rendered> {
  const view = coarseView(job.stack ? { ...job.view, focusHeight: job.stack.firstHeight } : job.view, fineness);
  const scene = sceneFor(job, view);
  if (job.ambient) return { picture: pixelsOf(yield* withAmbient(scene, view, job.ambient, fineness)) };
  const { picture, view: seen } = job.stack
    ? yield* mergeFrames(scene, view, job.stack, fineness)
    : { picture: yield* renderSteps(scene, view, { slices: fineness.slices }), view };
  if (!job.compare) return { picture: pixelsOf(picture) };
  const sharp = sharpPicture(scene, seen);
  return {
    picture: pixelsOf(picture),
    sharp: pixelsOf(sharp),
    difference: pixelsOf(errorMap(picture, sharp)),
    likeness: psnr(picture, sharp),
  };
}

/** The flash's picture and that of the light already there, one on the other. */
function* withAmbient(
  scene: Scene,
  view: View,
  { share, motionBlur, flashBehind }: AmbientPart,
  { slices }: Fineness,
): Generator<number, Picture> {
  const flash = yield* inHalf(0, renderSteps(darkenedBehind(scene, flashBehind), view, { slices }));
  const ambient = yield* inHalf(0.5, renderSteps(scene, streaked(view, motionBlur), { slices }));
  return twoExposures(flash, ambient, share);
}

/** A view in which the subject leaves a streak, mm on the sensor. */
const streaked = (view: View, width: number): View => ({ ...view, motionBlur: { width, angle: 0 } });

/** Steps that are half of the whole, from *begin* on. */
function* inHalf(begin: number, steps: Generator<number, Picture>): Generator<number, Picture> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield begin + step.value / 2;
  }
}

let last: { readonly key: string; readonly scene: Scene } | undefined;

/** The subject on a grid as fine as the view's pixels, as much of it as the view can see; kept while only the camera moves. */
function sceneFor(
  { subject: slug, coinBeforePosts: coin, seed, lighting, lamps, centre, ambient, turned = 0 }: PictureJob,
  view: View,
): Scene {
  const subject = coin ? coinBeforePosts(coin) : subjectOf(slug);
  const pitch = view.pitch / view.magnification;
  const seen = ambient ? streaked(view, ambient.motionBlur) : view;
  const field = fieldOf(seen, turnedDepth(subject, turned));
  const samples = (length: number, pixels: number) => Math.min(3 * pixels, Math.ceil(length / pitch / 32) * 32);
  const options = {
    columns: samples(field.width, view.columns),
    rows: samples(field.height, view.rows),
    pitch,
    seed,
    ...(lighting && { lighting }),
    ...(lamps && { lamps }),
    ...(centre && { centre }),
  };
  const key = JSON.stringify({ slug, coin, turned, ...options });
  if (last?.key !== key) last = { key, scene: turnedScene(subject.scene(options), turned) };
  return last.scene;
}

function pixelsOf(picture: Picture): Pixels {
  return { columns: picture.columns, rows: picture.rows, rgba: toDisplay(picture) };
}
