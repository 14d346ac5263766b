import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { encodedSrgb, isShowable, linearSrgb, luminanceOf, showable, type Rgb } from './srgb.ts';

const primary = fc.double({ min: -1, max: 3, noNaN: true });
const anyColour = fc.tuple(primary, primary, primary);

describe('linearSrgb', () => {
  it('sends daylight’s white to equal parts', () => {
    const white = linearSrgb([0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329]);
    const because = 'the standard’s matrix is printed to seven decimals';
    expect(white).toEqual([1, 1, 1].map((value) => closeTo(value, { absolute: 2e-4, because })));
  });
});

describe('showable', () => {
  it('leaves alone what a screen can show', () => {
    expect(isShowable([0.2, 0.5, 1])).toBe(true);
    const because = 'one mixing with nothing';
    expect(showable([0.2, 0.5, 1])).toEqual([0.2, 0.5, 1].map((value) => closeTo(value, { absolute: 1e-15, because })));
  });

  it('makes a colour that is too pure paler, at the same luminance', () => {
    const tooPure: Rgb = [-0.1, 0.6, 0.2];
    expect(isShowable(tooPure)).toBe(false);
    const paler = showable(tooPure);
    expect(paler[0]).toEqual(closeTo(0, { absolute: 1e-15, because: 'just as pale as is needed' }));
    const luminance = luminanceOf(tooPure);
    expect(luminanceOf(paler)).toEqual(closeTo(luminance, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('gives for any colour one that a screen can show, of its luminance as far as there is light for it', () => {
    fc.assert(
      fc.property(anyColour, (colour) => {
        const shown = showable(colour);
        const luminance = Math.min(1, Math.max(0, luminanceOf(colour)));
        expect(isShowable(shown), `${colour.join(', ')} gives ${shown.join(', ')}`).toBe(true);
        expect(luminanceOf(shown)).toEqual(closeTo(luminance, { absolute: 1e-12, because: 'a few roundings' }));
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('is white above white and black where there is no light', () => {
    expect(showable([2, 1, 1])).toEqual([1, 1, 1]);
    expect(showable([-1, -0.1, 0.1])).toEqual([0, 0, 0]);
  });
});

describe('encodedSrgb', () => {
  it('sends black, white and an eighteen-per-cent grey to 0, 1 and 118 of 255', () => {
    const because = 'to the nearest byte';
    expect(encodedSrgb([0, 1, 0.18])).toEqual([
      0,
      closeTo(1, { relative: 1e-15, because: 'one rounding' }),
      closeTo(118 / 255, { absolute: 0.5 / 255, because }),
    ]);
  });

  it('runs without a step from its straight part to its curve', () => {
    const [below, above] = encodedSrgb([0.0031307, 0.0031309, 0]);
    expect(above - below).toEqual(
      closeTo(0.0000002 * 12.92, { relative: 0.15, because: 'slopes match to a tenth, as the standard has it' }),
    );
  });
});

it.each([NaN, Infinity])('refuses %s for light', (light) => {
  for (const of of [linearSrgb, luminanceOf, encodedSrgb, showable])
    expect(() => of([0.2, light, 0.1])).toThrow(/the light is/);
});
