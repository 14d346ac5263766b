import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bench } from '../bench.svelte.ts';
import { sheetLayout, type Slab } from './layout.ts';

const box = { width: 680, height: 420, text: 14.5, small: 12 };

/** The slab that the lesson's optics give for these inputs, the rest at their starts. */
export function slabAt(changes: Partial<typeof bench.starts>): Slab {
  const would = (name: keyof typeof bench.answers, more = {}) => bench.would(name, { ...changes, ...more });
  return {
    magnification: would('magnification'),
    circleOfConfusion: would('circle-of-confusion'),
    entrancePupil: would('entrance-pupil'),
    entrancePupilDistance: would('entrance-pupil-distance'),
    nearLimit: would('near-limit'),
    farLimit: would('far-limit'),
    usualDepth: would('depth-of-field-close-up', { 'f-number': 8, 'circle-of-confusion': 0.015 }),
    usualCircle: 0.015,
  };
}

const inputs = fc.record({
  magnification: fc.double({ min: 0.02, max: 20, noNaN: true }),
  'f-number': fc.double({ min: 0.95, max: 64, noNaN: true }),
  'focal-length': fc.double({ min: 4, max: 800, noNaN: true }),
  'pupil-magnification': fc.double({ min: 0.2, max: 5, noNaN: true }),
  'circle-of-confusion': fc.double({ min: 0.001, max: 0.2, noNaN: true }),
});
const boxes = fc.constantFrom(
  box,
  { width: 360, height: 300, text: 12.5, small: 10.6 },
  { width: 1230, height: 550, text: 29, small: 29 },
);

describe('the sheet of the slab', () => {
  it('shows the sharp plane between both limits, and no number that is none, whatever the lens', () => {
    fc.assert(
      fc.property(inputs, boxes, (changes, on) => {
        const place = sheetLayout(slabAt(changes), on);
        expect(place.farX).toBeLessThan(place.planeX);
        expect(place.nearX).toBeGreaterThan(place.planeX);
        expect(place.nearX).toBeLessThan(place.width);
        expect(place.strokes.map(([, , path]) => path).join('')).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('draws both cones as wide in the sharp plane as the circle of confusion carried back to the subject', () => {
    const slab = slabAt({ magnification: 0.02, 'f-number': 64, 'circle-of-confusion': 0.014 });
    const place = sheetLayout(slab, box);
    const spot = (slab.circleOfConfusion / slab.magnification) * place.across.pixelsPerMillimetre;
    for (const side of ['far-limit', 'near-limit']) {
      const path = place.strokes.find(([line, quantity]) => line === 'cone' && quantity === side)![2];
      const [x1, y1, x2, y2] = path.match(/-?[\d.]+/g)!.map(Number) as [number, number, number, number];
      const inPlane = y1 + ((y2 - y1) * (place.planeX - x1)) / (x2 - x1);
      const width = 2 * Math.abs(inPlane - place.height / 2);
      expect(width).toEqual(
        closeTo(spot, { relative: 1e-9, because: 'numbers go through text with all their digits' }),
      );
      // Both edges end at the rim of the pupil, drawn at its own width.
      const opening = 2 * Math.abs(y2 - place.height / 2);
      const pupil = slab.entrancePupil * place.across.pixelsPerMillimetre;
      expect(opening).toEqual(closeTo(pupil, { relative: 1e-9, because: 'exact limits: the cones meet the rim' }));
    }
  });

  it('keeps its scales from f/5.6 to f/16, so that the slab is seen to grow', () => {
    const [open, closed] = [5.6, 16].map((fNumber) => sheetLayout(slabAt({ 'f-number': fNumber }), box));
    expect(closed!.along).toEqual(open!.along);
    expect(closed!.across).toEqual(open!.across);
    expect(closed!.nearX - closed!.planeX).toBeGreaterThan(2 * (open!.nearX - open!.planeX));
  });

  it('breaks the axis where the far limit is off the sheet', () => {
    expect(sheetLayout(slabAt({ magnification: 0.02, 'f-number': 64, 'focal-length': 20 }), box).isFarCut).toBe(true);
    expect(sheetLayout(slabAt({}), box).isFarCut).toBe(false);
  });
});
