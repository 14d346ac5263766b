import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleLayout } from './scale-layout.ts';

const box = { width: 680, height: 420, text: 14.5, small: 12 };
const state = { sensorWidth: 36, rail: 1.02, ring: 0.82, shift: 10 };

describe('the sheet on scale', () => {
  it('shows a step at the side as so many squares as it has pixels', () => {
    const place = scaleLayout(state, box);
    expect((place.next!.x - place.startX) / place.pixel).toBeCloseTo(10, 9);
  });

  it('counts several pixels to a square where the step is long, never less than one', () => {
    expect(scaleLayout({ ...state, shift: 900 }, box).square).toBeGreaterThan(50);
    expect(scaleLayout({ ...state, shift: 0.01 }, box).square).toBe(1);
  });

  it('keeps both lines in the loupe, whatever the step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e7, noNaN: true }), (shift) => {
        const place = scaleLayout({ ...state, shift }, box);
        expect(place.next!.x).toBeLessThanOrEqual(place.loupe + 1e-6);
        expect(place.squares[0]![2].length).toBeLessThan(2000);
      }),
    );
  });

  it('leaves out what there is none of', () => {
    const place = scaleLayout({ sensorWidth: 36, rail: undefined, ring: undefined, shift: undefined }, box);
    expect(place.next).toBeUndefined();
    expect(place.outlines.map(([line, , path]) => [line, path === ''])).toEqual([
      ['first', false],
      ['last', true],
      ['ring', true],
      ['axis', false],
    ]);
  });
});
