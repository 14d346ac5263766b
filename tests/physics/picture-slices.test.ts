import { expect, it } from 'vitest';
import { renderPicture } from '#core/picture/render.ts';
import type { View } from '#core/picture/view.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { smallScene } from '#tests/support/small-scenes.ts';

const view: View = { ...lifeSize, focusHeight: 3, pitch: 0.012, columns: 192, rows: 128 };

/** Squares on bumps and hollows 6 mm deep. */
const bumps = smallScene(
  { columns: 220, rows: 150, pitch: 0.012 },
  {
    light: (x, y) => ((Math.floor(x / 4) + Math.floor(y / 4)) % 2 === 0 ? 0.2 : 0.8),
    height: (x, y) => 3 + 3 * Math.sin(x / 12) * Math.cos(y / 12),
  },
);

it('tends to the picture of very many slices: 24 are within half a hundredth of white of it, root mean square', () => {
  const many = renderPicture(bumps, view, { slices: 250 }).light;
  const [few, some, usual] = [6, 12, 24].map((slices) => {
    const { light } = renderPicture(bumps, view, { slices });
    return Math.sqrt(light.reduce((sum, value, at) => sum + (value - many[at]!) ** 2, 0) / light.length);
  }) as [number, number, number];
  expect(usual).toBeLessThan(0.005);
  expect(some).toBeGreaterThan(usual);
  expect(few).toBeGreaterThan(some);
});
