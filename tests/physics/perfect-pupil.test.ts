import besselj0 from '@stdlib/math-base-special-besselj0';
import { describe, expect, it } from 'vitest';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { airyIntensity, encircledEnergy } from '#core/wave/airy-pattern.ts';
import { airyRings } from '#core/wave/airy-rings.ts';
import { contrast } from '#core/wave/contrast.formula.ts';
import { cutoffFrequency } from '#core/wave/cutoff-frequency.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { fourierBesselTransfer, placesOfIntensity } from '#tests/support/fourier-bessel.ts';

/** With λ N_w = 1 the cutoff is 1 and radii are in units of λ N_w. */
const unit = { wavelength: 1, effectiveFNumber: 1 };
const mtf = (s: number) => contrast({ spatialFrequency: s, cutoffFrequency: 1 });
const shares = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98];

/** Midpoint rule from 0 to *end*. */
function integral(end: number, of: (x: number) => number, steps = 20000): number {
  let sum = 0;
  for (let k = 0; k < steps; k++) sum += of(((k + 0.5) / steps) * end);
  return (sum * end) / steps;
}

describe('contrast of a perfect lens', () => {
  it('is the area that two shifted pupils share', () => {
    // Two circles of radius 1, their middles 2s apart: four times the part of a half moon beyond its chord at s.
    for (const s of shares) {
      const shared = (4 * integral(Math.acos(s), (t) => Math.sin(t) ** 2)) / 2 / (Math.PI / 2);
      expect(mtf(s)).toEqual(closeTo(shared, { absolute: 1e-8, because: 'midpoint rule of 20000 steps' }));
    }
  });

  it('is the Hankel transform of the image of a point', () => {
    const places = placesOfIntensity(4000);
    const intensities = places.map((v) => airyIntensity({ ...unit, imageRadius: v / Math.PI }));
    for (const s of shares) {
      const transformed = fourierBesselTransfer(places, intensities, s);
      expect(mtf(s)).toEqual(
        closeTo(transformed, { absolute: 2e-6, because: 'the series is cut off after 4000 terms' }),
      );
    }
  });

  it('transforms back into the image of a point', () => {
    for (const imageRadius of [0, 0.4, 0.8, 1.2, 1.7]) {
      const back = 8 * integral(1, (s) => mtf(s) * besselj0(2 * Math.PI * imageRadius * s) * s);
      const intensity = airyIntensity({ ...unit, imageRadius });
      expect(intensity).toEqual(closeTo(back, { absolute: 1e-7, because: 'midpoint rule of 20000 steps' }));
    }
  });

  it('ends at the cutoff frequency, for any light and f-number', () => {
    const green = { wavelength: 0.00055, effectiveFNumber: 11 };
    const end = cutoffFrequency(green);
    expect(contrast({ spatialFrequency: end * (1 - 1e-6), cutoffFrequency: end })).toBeGreaterThan(0);
    expect(contrast({ spatialFrequency: end, cutoffFrequency: end })).toBe(0);
  });
});

describe('the Airy pattern', () => {
  it('holds within a circle what its intensity sums to', () => {
    for (const imageRadius of [0.3, 1, 1.22, 2.5, 6]) {
      // v = π r, and the whole of ½ ∫ I v dv is one.
      const summed = integral(
        Math.PI * imageRadius,
        (v) => (airyIntensity({ ...unit, imageRadius: v / Math.PI }) * v) / 2,
      );
      const share = encircledEnergy({ ...unit, imageRadius });
      expect(share).toEqual(closeTo(summed, { absolute: 1e-6, because: 'midpoint rule of 20000 steps' }));
    }
  });

  it('sums to one: what lies outside a far circle is 2/(π v)', () => {
    for (const imageRadius of [200, 2000]) {
      const outside = 1 - encircledEnergy({ ...unit, imageRadius });
      const v = Math.PI * imageRadius;
      expect(outside * v * (Math.PI / 2)).toEqual(
        closeTo(1, { absolute: 1 / v, because: 'the next term is smaller by 1/v' }),
      );
    }
  });

  it('has 1 − J0² within each dark ring, J1 being nothing there', () => {
    for (const imageRadius of airyRings(unit, 5).dark) {
      const within = 1 - besselj0(Math.PI * imageRadius) ** 2;
      const share = encircledEnergy({ ...unit, imageRadius });
      expect(share).toEqual(closeTo(within, { absolute: 1e-15, because: 'rounding' }));
    }
  });

  it('is dark at the rim of the Airy disc, at any f-number', () => {
    for (const effectiveFNumber of [2.8, 16, 90]) {
      const light = { wavelength: 0.00055, effectiveFNumber };
      expect(airyIntensity({ ...light, imageRadius: airyDiameter(light) / 2 })).toBeLessThan(1e-30);
    }
  });
});
