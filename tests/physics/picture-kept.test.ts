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

const kept = JSON.parse(readFileSync(join(import.meta.dirname, 'picture-kept.json'), 'utf8')) as Record<
  string,
  readonly number[]
>;

/** Looked at by eye when they were kept; what changes them on purpose keeps them anew. */
describe('pictures that were looked at stay what they are', () => {
  it('there is one of every subject', () => {
    expect(Object.keys(kept).sort()).toEqual(subjects.map(({ slug }) => slug).sort());
  });

  it.each(Object.keys(kept))('%s', (slug) => {
    const apart = thumbnail(slug).map((light, at) => Math.abs(light - kept[slug]![at]!));
    // A hundredth of white is what the eye would begin to see.
    expect(Math.max(...apart)).toBeLessThan(0.01);
  });
});
