import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { offAxisOf, rulerScale, type ScaleOfMarks } from './ruler-scale.ts';
import { twoPlacesScale } from './two-places.ts';

const flat: ScaleOfMarks = {
  cycles: 80,
  drift: 0,
  variances: { cycles: 0.0064, both: 0, drift: 1e-6 },
  length: 4000,
  lean: { value: 0, standardError: 0 },
  offAxis: 0,
  spacing: 1,
  sensorWidth: 36,
  pixelsAcross: 6000,
};

const rounding = { relative: 1e-12, because: 'rounding' };

/** What a line sees of marks on a plane that leans by *tilt*, projected mark by mark through the pupil: by rays, without the comb's formula. */
function projected(m: number, tilt: number, offAxis: number): ScaleOfMarks {
  const [f, pitch, length] = [50, 0.006, 4000];
  const u = f * (1 / m + 1);
  const onSensor = (t: number) => ((m * u) / (u + t * Math.sin(tilt))) * t * Math.cos(tilt);
  /** The mark at a place of the sensor, by bisection. */
  const markAt = (x: number) => {
    let [low, high] = [-200, 200];
    for (let round = 0; round < 100; round++) {
      const middle = (low + high) / 2;
      if (onSensor(middle) < x) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const [start, middle, end] = [-0.5, 0, 0.5].map((s) => markAt((offAxis + s * length) * pitch)) as [
    number,
    number,
    number,
  ];
  // k = κ s/(1 + γ s): two numbers from two differences.
  const [before, after] = [middle - start, end - middle];
  const drift = (2 * (before - after)) / (before + after);
  const cycles = 2 * after * (1 + drift / 2);
  return { ...flat, cycles, drift, offAxis, focalLength: f };
}

describe('rulerScale', () => {
  it('is 0.3 for a millimetre over 50 pixels of 6 µm, on a field of 120 mm', () => {
    const scale = rulerScale(flat);
    expect(scale.magnification.value).toEqual(closeTo(0.3, rounding));
    expect(scale.fieldWidth.value).toEqual(closeTo(120, rounding));
    expect(scale.pixelsPerMillimetre.value).toEqual(closeTo(50, rounding));
    // 0.08 of 80 marks.
    expect(scale.magnification.standardError).toEqual(closeTo(0.3e-3, { relative: 1e-6, because: 'rounding' }));
    expect(scale.tilt).toBeUndefined();
    expect(scale.change.value).toBe(-0);
  });

  it.each([
    [0.3, 5, 0],
    [0.3, -5, 900],
    [1, 20, -400],
    [0.5, 45, 700],
  ])(
    'takes the lean out that rays through the pupil put in: m = %f, %i°, %i pixels off the axis',
    (m, degrees, offAxis) => {
      const scale = rulerScale(projected(m, degrees * degree, offAxis));
      expect(scale.magnification.value).toEqual(closeTo(m, { relative: 1e-9, because: 'bisection' }));
      expect(scale.tilt!.value / degree).toEqual(closeTo(degrees, { relative: 1e-9, because: 'bisection' }));
    },
  );

  it('carries the errors of density and drift as small changes of them do', () => {
    const marks = { ...projected(0.5, 0.4, 600), variances: { cycles: 1e-4, both: 3e-6, drift: 4e-6 } };
    const at = (cycles: number, drift: number) =>
      Math.log(rulerScale({ ...marks, cycles: marks.cycles + cycles, drift: marks.drift + drift }).magnification.value);
    const [byCycles, byDrift] = [(at(1e-4, 0) - at(-1e-4, 0)) / 2e-4, (at(0, 1e-5) - at(0, -1e-5)) / 2e-5];
    const share = Math.sqrt(byCycles ** 2 * 1e-4 + 2 * byCycles * byDrift * 3e-6 + byDrift ** 2 * 4e-6);
    const { magnification } = rulerScale(marks);
    // m in tan τ moves a little with τ itself: to first order it is held.
    expect(magnification.standardError! / magnification.value).toEqual(
      closeTo(share, { relative: 0.1, because: 'first order' }),
    );
  });

  it('shortens by the cosine what leans against the line', () => {
    const scale = rulerScale({ ...flat, lean: { value: 0.1, standardError: 0 } });
    expect(scale.magnification.value).toEqual(closeTo(0.3 * Math.cos(0.1), rounding));
  });

  it('refuses a ruler without spacing, a sensor without width and a lens without focal length, by name', () => {
    for (const bad of [
      { spacing: 0 },
      { sensorWidth: -1 },
      { pixelsAcross: NaN },
      { pixelsAcross: 6000.5 },
      { focalLength: 0 },
      { pupilMagnification: 0 },
    ])
      expect(() => rulerScale({ ...flat, ...bad })).toThrow(OutOfRange);
  });

  it('measures off the axis along the line', () => {
    const line = { from: { x: 100, y: 400 }, to: { x: 900, y: 400 } };
    expect(offAxisOf({ columns: 900, rows: 600 }, line)).toBe(50);
    expect(offAxisOf({ columns: 900, rows: 600 }, { from: line.to, to: line.from })).toBe(-50);
    expect(() => offAxisOf({ columns: 900, rows: 600 }, { from: line.to, to: line.to })).toThrow(RangeError);
  });
});

describe('twoPlacesScale', () => {
  const given = { length: 3000, distance: 30, setTo: 1, sensorWidth: 36, pixelsAcross: 6000 };

  it('is 0.6 for 30 mm over half of a 36 mm sensor, known to √2 pixels of 3000', () => {
    const { magnification, fieldWidth } = twoPlacesScale(given);
    expect(magnification.value).toEqual(closeTo(0.6, rounding));
    expect(fieldWidth.value).toEqual(closeTo(60, rounding));
    expect(magnification.standardError).toEqual(closeTo((0.6 * Math.SQRT2) / 3000, rounding));
    // 6000 pixels on 60 mm; and what is set to two pixels is half as well known.
    expect(twoPlacesScale(given).pixelsPerMillimetre.value).toEqual(closeTo(100, rounding));
    expect(twoPlacesScale({ ...given, setTo: 2 }).magnification.standardError).toEqual(
      closeTo((1.2 * Math.SQRT2) / 3000, rounding),
    );
  });

  it('agrees with the marks between the two places', () => {
    const marks = rulerScale({ ...flat, length: 3000, cycles: 30 });
    expect(twoPlacesScale(given).magnification.value).toEqual(closeTo(marks.magnification.value, rounding));
  });

  it('refuses what is no distance', () => {
    for (const bad of [{ length: 0 }, { distance: -1 }, { setTo: 0 }, { sensorWidth: NaN }, { pixelsAcross: 6000.5 }])
      expect(() => twoPlacesScale({ ...given, ...bad })).toThrow(OutOfRange);
  });
});
