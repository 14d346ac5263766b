import { describe, expect, it } from 'vitest';
import { coneOfLens } from '#core/depth/cone.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { findComb, noCombWords } from './find-comb.ts';
import { lightOfCode } from './photograph.ts';
import { rulerPicture, type RulerPicture } from './ruler-picture.ts';

const cone = coneOfLens({ focalLength: 50, fNumber: 4, pupilMagnification: 1, magnification: 0.25 });
const view = {
  ...cone,
  ...{ columns: 240, rows: 21, pitch: 0.025, pupilMagnification: 1 },
  entrancePupilDistance: 1 / cone.inverseEntrancePupilDistance,
};

/** The light along the middle of a small picture of a ruler with a mark every millimetre: every ten pixels. */
function middle(how: Partial<RulerPicture> = {}): Float64Array {
  const { columns, rows, grey } = rulerPicture({ spacing: 1, tilt: 0, view, ...how });
  expect([columns, rows, grey.length]).toEqual([240, 21, 240 * 21]);
  return Float64Array.from(grey.subarray(10 * columns, 11 * columns), (code) => lightOfCode[code]!);
}

function comb(how: Partial<RulerPicture> = {}) {
  const found = findComb(middle(how));
  if (found.outcome === 'no comb') throw new Error(noCombWords(found));
  return found;
}

const spread = (light: Float64Array) => Math.max(...light) - Math.min(...light);

describe('a picture of a ruler', () => {
  it('shows its marks as large as the lens does, its zero in the middle, and ends nowhere', () => {
    const found = comb();
    // 239 pixels from the middle of the first to that of the last.
    expect(found.cycles).toEqual(closeTo(23.9, { relative: 2e-3, because: 'a hundredth of a pixel a mark' }));
    expect(found.drift).toEqual(closeTo(0, { absolute: 0.01, because: 'it lies flat' }));
    expect(Math.abs(found.phase - Math.round(found.phase))).toBeLessThan(0.05);
    const light = middle();
    for (const end of [light.subarray(0, 20), light.subarray(220)]) expect(Math.max(...end)).toBeGreaterThan(0.5);
  });

  it('that leans is seen closer together at its far end, by the cosine in the middle', () => {
    const found = comb({ tilt: 0.3 });
    expect(found.cycles).toEqual(closeTo(23.9 / Math.cos(0.3), { relative: 0.01, because: 'as above, leaning' }));
    // q = tan τ/(m u), and γ = −q L on the sensor.
    const drift = -(Math.tan(0.3) * 239 * 0.025) / (0.25 * view.entrancePupilDistance);
    expect(found.drift).toEqual(closeTo(drift, { absolute: 0.03, because: 'twenty-four marks' }));
    const light = middle({ tilt: 0.3 });
    for (const end of [light.subarray(0, 20), light.subarray(220)]) expect(Math.max(...end)).toBeGreaterThan(0.4);
  });

  it('is softer the farther it is from the sharp plane, and where it leans out of it at its near end', () => {
    const [sharp, soft] = [spread(middle()), spread(middle({ focus: 25 }))];
    expect(soft).toBeLessThan(0.7 * sharp);
    // Sharp 7 mm behind its middle: its right-hand end leans back through that.
    const leaning = middle({ tilt: 0.8, focus: 7, view: { ...view, effectiveFNumber: 2 } });
    expect(spread(leaning.subarray(10, 60))).toBeLessThan(0.7 * spread(leaning.subarray(180, 230)));
  });

  it('has the noise of its camera', () => {
    expect(middle({ view: { ...view, electronsAtWhite: 100 } })).not.toEqual(middle());
  });
});
