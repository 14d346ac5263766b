import fc from 'fast-check';
import { expect, it } from 'vitest';
import { toDisplay } from '#core/picture/display.ts';
import { renderPicture } from '#core/picture/render.ts';
import { sharpPicture } from '#core/picture/sharp-picture.ts';
import type { View } from '#core/picture/view.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { smallScene } from '#tests/support/small-scenes.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const perhaps = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** Views as lenses have them, and some that none has. */
const views: fc.Arbitrary<View> = fc
  .record({
    magnification: between(0.05, 12),
    effectiveFNumber: between(1, 90),
    pupilMagnification: between(0.3, 3),
    entrancePupilDistance: fc.oneof(between(2, 400), between(-400, -2), fc.constant(Infinity)),
    focusHeight: between(-3, 8),
    pitch: between(0.002, 0.08),
    columns: fc.integer({ min: 1, max: 40 }),
    rows: fc.integer({ min: 1, max: 30 }),
    wavelength: perhaps(between(0.0004, 0.0007)),
    sphericalAberration: perhaps(between(-3, 3)),
    motionBlur: perhaps(fc.record({ width: between(0, 0.2), angle: between(-4, 4) })),
    electronsAtWhite: perhaps(between(1, 1e5)),
    colour: fc.boolean(),
  })
  .map(
    (view) => Object.fromEntries(Object.entries(view).filter(([, value]) => value !== undefined)) as unknown as View,
  );

/** A ball and a slope, as fine as the pixels or up to four times as fine or coarse. */
const sceneFor = ({ pitch, magnification }: View, finer: number, depth: number) =>
  smallScene(
    { columns: 37, rows: 29, pitch: pitch / magnification / finer },
    {
      light: (x, y) => 0.5 + 0.5 * Math.sin(x * y),
      height: (x, y) => depth * (1 - 0.002 * (x * x + y * y)),
      coverage: (x, y) => (Math.hypot(x, y) < 7 ? 1 : 0),
    },
    { light: (x) => (x % 3 === 0 ? 1 : 0), height: (x) => (depth * (x + 18)) / 60 },
  );

it('every picture of any view is made of numbers, none far from black or beyond white, or is refused by name', () => {
  let rendered = 0;
  fc.assert(
    fc.property(
      views,
      between(0.25, 4),
      between(0, 6),
      fc.integer({ min: 1, max: 9 }),
      (view, finer, depth, slices) => {
        try {
          const picture = renderPicture(sceneFor(view, finer, depth), view, { slices });
          rendered++;
          for (const light of view.electronsAtWhite ? [] : picture.light) {
            expect(light).toBeGreaterThan(-0.35);
            expect(light).toBeLessThan(1.35);
          }
          expect(picture.light.every(Number.isFinite)).toBe(true);
          expect(toDisplay(picture)).toHaveLength(4 * view.columns * view.rows);
          expect(sharpPicture(sceneFor(view, finer, depth), view).light.every(Number.isFinite)).toBe(true);
        } catch (error) {
          if (!(error instanceof OutOfRange)) throw error;
          expect(error.message).toMatch(/in front of the entrance pupil/);
        }
      },
    ),
    { numRuns: 150, seed: 20 },
  );
  expect(rendered).toBeGreaterThan(90);
});
