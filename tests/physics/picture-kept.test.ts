import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { renderPicture } from '#core/picture/render.ts';
import { subjectOf, subjects } from '#core/picture/subjects/subjects.ts';
import { fieldOf, type View } from '#core/picture/view.ts';

const [columns, rows] = [24, 16];

/** The subject as large as the frame, focused halfway up, at f/8 effective. */
function thumbnail(slug: string): readonly number[] {
  const subject = subjectOf(slug);
  const magnification = 1;
  const view: View = {
    magnification,
    effectiveFNumber: 8,
    pupilMagnification: 1,
    entrancePupilDistance: 100,
    focusHeight: subject.depth / 2,
    pitch: subject.width / (4 * columns),
    columns: 4 * columns,
    rows: 4 * rows,
  };
  const field = fieldOf(view, subject.depth);
  const samples = (length: number) => Math.ceil(length / view.pitch);
  const scene = subject.scene({
    columns: samples(field.width),
    rows: samples(field.height),
    pitch: view.pitch,
    seed: 1,
  });
  const { light } = renderPicture(scene, view, { slices: 12 });
  return Array.from({ length: columns * rows }, (_, at) => {
    const [row, column] = [4 * Math.floor(at / columns), 4 * (at % columns)];
    let sum = 0;
    for (let down = 0; down < 4; down++)
      for (let across = 0; across < 4; across++) sum += light[(row + down) * 4 * columns + column + across]!;
    return Number((sum / 16).toFixed(3));
  });
}

/** Red and blue of the subject as it lies there, from the front, on a grid half as fine: what the eye takes for light is green for the most part. */
function colours(slug: string): { readonly red: readonly number[]; readonly blue: readonly number[] } {
  const subject = subjectOf(slug);
  const [across, down, fine] = [columns / 2, rows / 2, 6];
  const pitch = subject.width / (across * fine);
  const scene = subject.scene({ columns: across * fine, rows: down * fine, pitch, seed: 1 });
  const size = scene.columns * scene.rows;
  const means = (channel: number) => {
    const sums = new Array<number>(across * down).fill(0);
    for (let at = 0; at < size; at++) {
      const square = Math.floor(at / scene.columns / fine) * across + Math.floor((at % scene.columns) / fine);
      let open = 1;
      for (const { albedo, coverage } of scene.surfaces) {
        sums[square]! += (open * coverage[at]! * albedo[channel * size + at]!) / fine ** 2;
        open *= 1 - coverage[at]!;
      }
    }
    return sums.map((sum) => Number(sum.toFixed(3)));
  };
  return { red: means(0), blue: means(2) };
}

interface Kept {
  readonly light: readonly number[];
  readonly red: readonly number[];
  readonly blue: readonly number[];
}

const kept = JSON.parse(readFileSync(join(import.meta.dirname, 'picture-kept.json'), 'utf8')) as Record<string, Kept>;

// A hundredth of white is what the eye would begin to see.
const seen = 0.01;
const apart = (values: readonly number[], from: readonly number[]) =>
  Math.max(...values.map((value, at) => Math.abs(value - from[at]!)));

/** Looked at by eye when they were kept; what changes them on purpose keeps them anew. */
describe('pictures that were looked at stay what they are', () => {
  it('there is one of every subject', () => {
    expect(Object.keys(kept).sort()).toEqual(subjects.map(({ slug }) => slug).sort());
  });

  it.each(Object.keys(kept))('%s', (slug) => {
    expect(apart(thumbnail(slug), kept[slug]!.light)).toBeLessThan(seen);
  });

  it.each(Object.keys(kept))('%s in its colours', (slug) => {
    const { red, blue } = colours(slug);
    // Nothing is rendered here, and three figures are kept.
    expect(apart(red, kept[slug]!.red)).toBeLessThan(0.002);
    expect(apart(blue, kept[slug]!.blue)).toBeLessThan(0.002);
  });
});
