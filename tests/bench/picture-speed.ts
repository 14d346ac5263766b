import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { convolve, throughSpectrum } from '#core/fourier/convolve.ts';
import { planeFor } from '#core/picture/blur-slice.ts';
import { expanded, intersection } from '#core/picture/box.ts';
import { prepared } from '#core/picture/prepared.ts';
import { projected } from '#core/picture/project.ts';
import { psfRadii, renderPicture } from '#core/picture/render.ts';
import { samplingGrid } from '#core/picture/sampling-grid.ts';
import type { Scene } from '#core/picture/scene.ts';
import { slicedSurface } from '#core/picture/sliced-surface.ts';
import { slicesOf } from '#core/picture/slices.ts';
import { systemOtf } from '#core/picture/system-otf.ts';
import type { View } from '#core/picture/view.ts';
import { smallScene } from '#tests/support/small-scenes.ts';
import { percentile } from './percentile.ts';

/** How long a picture takes, on one core. */
export interface PictureSpeed {
  readonly subject: string;
  /** 3: in colour, as the pages show it; 1: luminance alone */
  readonly channels: 1 | 3;
  /** Milliseconds of a whole picture, 768 × 512 in {@link slices} slices; medians, as all the others */
  readonly whole: number;
  /** Its time over that of the Fourier transforms it needs, by the same code */
  readonly timesTransforms: number;
  /** Its time over that of the same convolutions in compiled code, and nothing else done there: scipy, one thread; undefined where there is no scipy */
  readonly timesCompiled: number | undefined;
  /** Its convolutions alone over the same in compiled code */
  readonly convolutionsTimesCompiled: number | undefined;
}

export const slices = 24;

/** Life size at f/16 effective, focused halfway up subjects 6 mm deep. Blurs up to 31 pixels. */
export const view: View = {
  magnification: 1,
  effectiveFNumber: 16,
  pupilMagnification: 1,
  entrancePupilDistance: 100,
  focusHeight: 3,
  pitch: 0.006,
  columns: 768,
  rows: 512,
};

const chequered = (finer: number) => (x: number, y: number) =>
  (Math.floor(x / (2 * finer)) + Math.floor(y / (2 * finer))) % 2 === 0 ? 0.2 : 0.8;

/** A chequered sheet of bumps and hollows, *finer* times as fine as the coarse picture's pixels. Every slice is as large as the picture. */
export function bumps(finer: number): Scene {
  return smallScene(
    { columns: 208 * finer, rows: 144 * finer, pitch: 0.024 / finer },
    { light: chequered(finer), height: (x, y) => 3 + 3 * Math.sin(x / (6 * finer)) * Math.cos(y / (6 * finer)) },
  );
}

/** A chequered slope and a ball before it: slices are bands. */
export function slopeAndBall(finer: number): Scene {
  const [columns, rows] = [208 * finer, 144 * finer];
  const radius = 30 * finer;
  const fromBall = (x: number, y: number) => Math.hypot(x + 20 * finer, y) / radius;
  return smallScene(
    { columns, rows, pitch: 0.024 / finer },
    {
      light: () => 0.9,
      height: (x, y) => 5 + 2 * Math.sqrt(Math.max(0, 1 - fromBall(x, y) ** 2)),
      coverage: (x, y) => Math.min(1, Math.max(0, (1 - fromBall(x, y)) * radius + 0.5)),
    },
    {
      light: chequered(finer),
      height: (_, y) => 6 * (0.5 + y / rows),
    },
  );
}

/** Columns and rows of every pair of planes that a picture blurs: with its coverage, a slice is one pair of them, in colour two. */
export function planesOf(scene: Scene, of: View, most: number): (readonly [columns: number, rows: number])[] {
  const { binned, low, high, spacing, oversampling } = prepared(scene, of, {});
  const depths = slicesOf(of, low, high, most);
  const radii = psfRadii(of, depths, spacing, oversampling);
  const { grid, picture } = samplingGrid(of, oversampling, Math.max(...radii));
  return binned.surfaces.flatMap((surface) =>
    slicedSurface(projected(binned, surface, of, grid), grid.columns, depths).boxes.flatMap((box, slice) => {
      const seen = box && intersection(box, expanded(picture, radii[slice]!));
      if (!seen || seen.right <= seen.left || seen.bottom <= seen.top) return [];
      const { columns, rows } = planeFor(seen, radii[slice]!, picture);
      const pair = [columns, rows] as const;
      return of.colour ? [pair, pair] : [pair];
    }),
  );
}

function millisecondsOf(task: () => void): number {
  const start = performance.now();
  task();
  return performance.now() - start;
}

const filledPair = ([columns, rows]: readonly [number, number]) => {
  const plane = () => new Float32Array(columns * rows).fill(0.5);
  return { pair: { columns, rows, re: plane(), im: plane() }, all: { filled: [0, rows], wanted: [0, rows] } as const };
};

/** Milliseconds of the transforms there and back on such planes, and of the whole convolutions, their transfers known. */
function convolutions(planes: readonly (readonly [number, number])[]) {
  const time = { transforms: 0, convolutions: 0 };
  for (const [columns, rows] of planes) {
    const { pair, all } = filledPair([columns, rows]);
    const otf = systemOtf({ spacing: view.pitch, pixel: view.pitch, averaged: 0 }, columns, rows);
    time.transforms += millisecondsOf(() => throughSpectrum(pair, () => undefined, all));
    pair.re.fill(0.5);
    pair.im.fill(0.5);
    time.convolutions += millisecondsOf(() => convolve(pair, otf, all));
  }
  return time;
}

/** Milliseconds that scipy takes for convolutions on such planes, two real planes each; undefined where it does not run. */
function compiled(planes: readonly (readonly [number, number])[]): number | undefined {
  const script = join(import.meta.dirname, 'picture-compiled.py');
  const { status, stdout } = spawnSync('python3', [script, JSON.stringify(planes)], { encoding: 'utf8' });
  const milliseconds = Number(stdout);
  return status === 0 && milliseconds > 0 ? milliseconds : undefined;
}

/** Measures whole pictures. */
export function pictureSpeed(): readonly PictureSpeed[] {
  const scenes = [
    ['bumps, every slice as large as the picture', bumps(4)],
    ['a slope and a ball before it, slices are bands', slopeAndBall(4)],
  ] as const;
  return ([3, 1] as const).flatMap((channels) => scenes.map(([subject, scene]) => speedOf(subject, scene, channels)));
}

function speedOf(subject: string, scene: Scene, channels: 1 | 3): PictureSpeed {
  const seen = { ...view, colour: channels === 3 };
  const planes = planesOf(scene, seen, slices);
  // In turn, so that all meet the same machine; the median of the rounds does not mind when it is busy for one.
  const rounds = Array.from({ length: 9 }, () => {
    const whole = millisecondsOf(() => renderPicture(scene, seen, { slices }));
    const alone = convolutions(planes);
    const scipy = compiled(planes) ?? NaN;
    return {
      whole,
      timesTransforms: whole / alone.transforms,
      timesCompiled: whole / scipy,
      convolutionsTimesCompiled: alone.convolutions / scipy,
    };
  });
  const median = (key: keyof (typeof rounds)[number]) =>
    percentile(
      rounds.map((round) => round[key]),
      0.5,
    );
  const known = rounds.every(({ timesCompiled }) => Number.isFinite(timesCompiled));
  return {
    subject,
    channels,
    whole: median('whole'),
    timesTransforms: median('timesTransforms'),
    timesCompiled: known ? median('timesCompiled') : undefined,
    convolutionsTimesCompiled: known ? median('convolutionsTimesCompiled') : undefined,
  };
}
