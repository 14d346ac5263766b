import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { blurAt, entrancePupilOf, fieldOf, requireView, scaleAt } from './view.ts';

const depth = 8;

describe('requireView', () => {
  it('says that the sharp plane lies inside the lens', () => {
    for (const entrancePupilDistance of [0, NaN])
      expect(() => requireView({ ...lifeSize, entrancePupilDistance }, depth)).toThrow(
        /sharp plane in front of the entrance pupil/,
      );
  });

  it('says that the subject reaches into the lens', () => {
    const low = { ...lifeSize, entrancePupilDistance: 5, focusHeight: 0 };
    expect(() => requireView(low, depth)).toThrow(OutOfRange);
    expect(() => requireView(low, depth)).toThrow(/in front of the entrance pupil as a whole/);
    expect(() => requireView(low, 4.9)).not.toThrow();
  });

  it('lets the pupil be infinitely far away, or behind the subject but not within it', () => {
    for (const entrancePupilDistance of [Infinity, -Infinity, -10.1])
      expect(() => requireView({ ...lifeSize, entrancePupilDistance }, depth)).not.toThrow();
    expect(() => requireView({ ...lifeSize, entrancePupilDistance: -10 }, depth)).toThrow(
      /entrance-pupil-distance is 0; .* in front of the entrance pupil as a whole/,
    );
  });

  it.each([
    ['magnification', 0],
    ['effectiveFNumber', -8],
    ['pupilMagnification', NaN],
    ['pitch', Infinity],
    ['focusHeight', NaN],
    ['columns', 0.5],
    ['rows', 1e6],
    ['wavelength', 0],
    ['sphericalAberration', 21],
    ['electronsAtWhite', 0],
    ['seed', NaN],
  ])('refuses a %s of %d', (what, value) => {
    expect(() => requireView({ ...lifeSize, [what]: value }, depth)).toThrow(String(value));
  });

  it('refuses a movement that is no movement', () => {
    expect(() => requireView({ ...lifeSize, motionBlur: { width: NaN, angle: 0 } }, depth)).toThrow(/motion-blur/);
    expect(() => requireView({ ...lifeSize, motionBlur: { width: 0.1, angle: Infinity } }, depth)).toThrow(/direction/);
  });
});

describe('the lens of a view', () => {
  it('has the entrance pupil f/N of a lens alone', () => {
    // f = 50, N = 8, m = 1, P = 0.8: u = f (1/m + 1/P), N_w = N (1 + m/P).
    const view = { ...lifeSize, pupilMagnification: 0.8, entrancePupilDistance: 112.5, effectiveFNumber: 18 };
    expect(entrancePupilOf(view)).toBe(6.25);
  });

  it('blurs nothing in the sharp plane, and what is nearer with the other sign', () => {
    expect(blurAt(lifeSize, 10)).toEqual(closeTo(0, { absolute: 0, because: 'it is the plane itself' }));
    expect(blurAt(lifeSize, 12)).toBeLessThan(0);
    // m² u δ/(N_w (u + δ)) = 100 × 5/(16 × 105)
    expect(blurAt(lifeSize, 5)).toEqual(closeTo(0.297619, { relative: 1e-5, because: 'six figures' }));
  });

  it('shows every depth at one scale where it is telecentric, blurred alike on either side', () => {
    const telecentric = { ...lifeSize, entrancePupilDistance: Infinity };
    for (const height of [0, 10, 18]) expect(scaleAt(telecentric, height)).toBe(1);
    // m² δ/N_w = 8/16
    expect([blurAt(telecentric, 2), blurAt(telecentric, 18)]).toEqual([0.5, -0.5]);
    expect(entrancePupilOf(telecentric)).toBe(Infinity);
  });

  it('shows what is deeper larger where the pupil lies behind it, and needs a field as wide as the nearest place asks', () => {
    const behind = { ...lifeSize, entrancePupilDistance: -40, columns: 300, rows: 200, pitch: 0.01 };
    // 1 + δ/u: 0.75 ten behind the plane, 1.25 ten before it; m² |δ|/N_w over that.
    expect([scaleAt(behind, 0), scaleAt(behind, 20)]).toEqual([1 / 0.75, 0.8]);
    expect([blurAt(behind, 0), blurAt(behind, 20)]).toEqual([10 / 16 / 0.75, -0.5]);
    const { width } = fieldOf(behind, 20);
    expect(width).toEqual(closeTo((3 + 10 / 16 / 0.75) * 1.25, { relative: 1e-12, because: 'rounding' }));
    expect(entrancePupilOf(behind)).toBe(2.5);
  });

  it('shows more of what is deeper', () => {
    expect(scaleAt(lifeSize, 0)).toEqual(closeTo(100 / 110, { relative: 1e-12, because: 'rounding' }));
    const { width, height } = fieldOf({ ...lifeSize, columns: 300, rows: 200, pitch: 0.01 }, 10);
    expect(width).toEqual(closeTo((3 + blurAt(lifeSize, 0)) * 1.1, { relative: 1e-9, because: 'rounding' }));
    expect(width - height).toEqual(closeTo(1.1, { relative: 1e-9, because: 'a hundred pixels at that depth' }));
  });
});
