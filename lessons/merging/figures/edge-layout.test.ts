import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bench } from '../bench.svelte.ts';
import { edgeLayout, type EdgeState } from './edge-layout.ts';

const box = { width: 680, height: 420, text: 14.5, small: 12 };

/** The edge that the lesson's optics give for these inputs, the rest at their starts. */
function edgeAt(changes: Partial<typeof bench.starts>): EdgeState {
  return {
    edgeHeight: bench.would('edge-height', changes),
    entrancePupil: bench.would('entrance-pupil', changes),
    entrancePupilDistance: bench.would('entrance-pupil-distance', changes),
    band: bench.would('hidden-band', changes, undefined),
    usualBand: bench.would('hidden-band', { ...changes, 'f-number': 5.6 }, 1),
    frameStep: bench.would('frame-step', changes, undefined),
  };
}

describe('the sheet of an edge', () => {
  it('draws rays through edge and rim that end where the band ends', () => {
    // So close to the pupil that the sheet holds it.
    const state = edgeAt({ magnification: 20, 'focal-length': 20, 'edge-height': 8 });
    const place = edgeLayout(state, box);
    const slope = place.halfBand / (place.edgeX - place.groundX);
    const halfPupil = (state.entrancePupil / 2) * place.across.pixelsPerMillimetre;
    expect(slope * (place.pupilX - place.edgeX)).toEqual(
      closeTo(halfPupil, { relative: 1e-9, because: 'a straight line drawn from both its ends' }),
    );
  });

  it('shows a band twice as wide at the same scale where the pupil is twice as wide', () => {
    const [narrow, wide] = [8, 4].map((fNumber) => edgeLayout(edgeAt({ 'f-number': fNumber }), box));
    expect(wide!.across).toEqual(narrow!.across);
    expect(wide!.halfBand / narrow!.halfBand).toBeCloseTo(2, 9);
  });

  it('draws the sharp planes of frames one step apart from background to edge, unless they would run together', () => {
    const state = edgeAt({ overlap: 0.25 });
    expect(edgeLayout(state, box).planes).toBe(Math.floor(state.edgeHeight / state.frameStep!));
    expect(edgeLayout({ ...state, frameStep: state.edgeHeight / 1000 }, box).planes).toBe(0);
    expect(edgeLayout({ ...state, frameStep: undefined }, box).planes).toBe(0);
  });

  it('is drawn in finite numbers everywhere, the band never off the sheet', () => {
    const inputs = fc.record({
      magnification: fc.double({ min: 0.02, max: 20, noNaN: true }),
      'f-number': fc.double({ min: 0.95, max: 64, noNaN: true }),
      'focal-length': fc.double({ min: 4, max: 800, noNaN: true }),
      'edge-height': fc.double({ min: 0.001, max: 1000, noNaN: true }),
    });
    fc.assert(
      fc.property(inputs, (given) => {
        const place = edgeLayout(edgeAt(given), box);
        const drawn = [...place.plate, ...place.strokes].map(([, , path]) => path).join('');
        expect(drawn).not.toMatch(/NaN|Infinity/);
        expect(Object.values(place.grip).every(Number.isFinite)).toBe(true);
        expect(place.halfBand).toBeLessThanOrEqual(place.middle);
      }),
    );
  });
});
