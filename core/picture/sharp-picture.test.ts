import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { smallScene } from '#tests/support/small-scenes.ts';
import { renderPicture } from './render.ts';
import { sharpPicture } from './sharp-picture.ts';
import type { View } from './view.ts';

const view: View = { ...lifeSize, columns: 64, rows: 48, pitch: 0.01, focusHeight: 2 };
const chequered = smallScene(
  { columns: 80, rows: 64, pitch: 0.01 },
  { light: (x, y) => ((Math.floor(x / 8) + Math.floor(y / 8)) % 2 === 0 ? 0.9 : 0.1), height: (x) => 2 + x / 20 },
);

describe('sharpPicture', () => {
  it('is what a picture tends to in the sharp plane as pixels grow beyond the image of a point', () => {
    const flat = smallScene({ columns: 80, rows: 64, pitch: 0.05 }, { light: (x) => Math.sin(x), height: 2 });
    const large = { ...view, pitch: 0.05, effectiveFNumber: 2 };
    const sharp = sharpPicture(flat, large);
    renderPicture(flat, large).light.forEach((light, at) =>
      expect(light).toEqual(
        closeTo(sharp.light[at]!, { absolute: 0.02, because: 'the Airy disc is a twentieth of a pixel' }),
      ),
    );
  });

  it('knows neither defocus nor noise', () => {
    const noisy = { ...view, effectiveFNumber: 2, electronsAtWhite: 100 };
    expect(sharpPicture(chequered, noisy)).toEqual(sharpPicture(chequered, view));
  });
});
