import { describe, expect, it } from 'vitest';
import { renderPicture } from '#core/picture/render.ts';
import { coinBeforePosts, type CoinBeforePosts } from '#core/picture/subjects/coin-before-posts.ts';
import { fieldOf, type View } from '#core/picture/view.ts';

const size = { columns: 144, rows: 24 };
const camera = { ...size, magnification: 0.5, effectiveFNumber: 8.15, pupilMagnification: 1.1, pitch: 0.25 };
const [spacing, coinWidth] = [50, 18];

/** Brightness of each column, over the rows: leaves and bark have another grain where a scene is drawn larger, posts do not. */
function columnsOf(given: CoinBeforePosts, view: View): number[] {
  const subject = coinBeforePosts(given);
  const pitch = view.pitch / view.magnification;
  const field = fieldOf(view, subject.depth);
  const scene = subject.scene({
    columns: Math.ceil(field.width / pitch),
    rows: Math.ceil(field.height / pitch),
    pitch,
    seed: 1,
  });
  const { light } = renderPicture(scene, view);
  return Array.from({ length: size.columns }, (_, column) => {
    const own = Array.from({ length: size.rows }, (_, row) => light[row * size.columns + column]!);
    return own.reduce((sum, value) => sum + value, 0) / size.rows;
  });
}

describe.each([145, 255, 513])('a background seen from an entrance pupil %s mm away', (u) => {
  it.each([60, 250])('looks as the nearer one that a pupil at infinity sees in its place, %s mm behind', (distance) => {
    const shrunk = u / (u + distance);
    const real = columnsOf(
      { coinWidth, postSpacing: spacing, behind: distance },
      { ...camera, entrancePupilDistance: u, focusHeight: distance },
    );
    const projected = columnsOf(
      { coinWidth, postSpacing: spacing * shrunk, behind: distance * shrunk },
      { ...camera, entrancePupilDistance: Infinity, focusHeight: distance * shrunk },
    );
    const span = Math.max(...real) - Math.min(...real);
    const off = real.map((value, column) => Math.abs(value - projected[column]!));
    // Grain of leaves and bark is what is left between the two: a post in a wrong place would differ by the whole span.
    expect(Math.max(...off)).toBeLessThan(0.3 * span);
    expect(off.reduce((sum, value) => sum + value, 0) / off.length).toBeLessThan(0.08 * span);
  });
});
