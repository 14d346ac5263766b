import { describe, expect, it } from 'vitest';
import { pixelTransfer } from '#core/wave/pixel-transfer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { multiply } from '#core/fourier/filter.ts';
import { scratchFor } from '#core/fourier/scratch.ts';
import { cornerFrequency, systemOtf } from './system-otf.ts';

const size = 32;
const spacing = 0.005;
const single = { absolute: 1e-6, because: 'kept in single precision' };

/** The factor at each column of a row of the spectrum, the scale of the inverse transform taken out. */
function factors(blur: Parameters<typeof systemOtf>[0], row: number): number[] {
  const scratch = scratchFor(size, size);
  scratch.re.fill(1);
  multiply(systemOtf(blur, size, size), scratch, 0, size);
  return Array.from(scratch.re.subarray(row * size, (row + 1) * size), (value) => value * size * size);
}

describe('systemOtf', () => {
  it('is the transfer of the pixel along the rows, the same for positive and negative frequencies', () => {
    const found = factors({ spacing, pixel: spacing, averaged: 0 }, 0);
    for (let column = 0; column <= size / 2; column++) {
      const spatialFrequency = column / (size * spacing);
      expect(found[column]).toEqual(closeTo(pixelTransfer({ spatialFrequency, pixelPitch: spacing }), single));
      expect(found[(size - column) % size]).toBe(found[column]);
    }
  });

  it('takes no average twice: what the scene has been averaged over already counts as done', () => {
    for (const factor of factors({ spacing, pixel: spacing, averaged: spacing }, 3))
      expect(factor).toEqual(closeTo(1, single));
  });

  it('is sin(a)/a across a movement and 1 along the lines that it leaves as they are', () => {
    const moving = { spacing, pixel: 0, averaged: 0, motion: { width: 0.02, angle: 0 } };
    const found = factors(moving, 7);
    const frequency = 5 / (size * spacing);
    const a = Math.PI * frequency * 0.02;
    expect(found[5]).toEqual(closeTo(Math.sin(a) / a, single));
    expect(found[0]).toEqual(closeTo(1, single));
  });

  it('is whole at zero frequency whatever else is done: no light is lost', () => {
    const optics = { step: 5, values: Float32Array.from({ length: 60 }, (_, k) => 1 / (1 + k)) };
    expect(factors({ spacing, pixel: spacing, averaged: 0, optics, motion: { width: 1, angle: 1 } }, 0)[0]).toEqual(
      closeTo(1, single),
    );
  });

  it('multiplies optics, read between two of their values, by both sides of the pixel and by a movement at an angle', () => {
    const values = Float32Array.from({ length: 60 }, (_, k) => 1 / (1 + k / 7));
    const blur = {
      spacing,
      pixel: 0.006,
      averaged: 0.004,
      motion: { width: 0.013, angle: 0.7 },
      optics: { step: 6, values },
    };
    const sinc = (a: number) => (a === 0 ? 1 : Math.sin(a) / a);
    const box = (frequency: number) => sinc(Math.PI * frequency * 0.006) / sinc(Math.PI * frequency * 0.004);
    for (const row of [0, 3, 15, 21, 31]) {
      const found = factors(blur, row);
      for (let column = 0; column < size; column++) {
        const [across, down] = [column, row].map((k) => (2 * k > size ? k - size : k) / (size * spacing)) as [
          number,
          number,
        ];
        const place = Math.hypot(across, down) / 6;
        const below = Math.floor(place);
        const optics = values[below]! + (place - below) * (values[below + 1]! - values[below]!);
        const moved = sinc(Math.PI * 0.013 * (across * Math.cos(0.7) + down * Math.sin(0.7)));
        expect(found[column]).toEqual(closeTo(optics * moved * box(across) * box(down), single));
      }
    }
  });

  it('knows the highest frequency of its grid, along the diagonal', () => {
    expect(cornerFrequency(spacing)).toEqual(closeTo(Math.hypot(100, 100), { relative: 1e-12, because: 'rounding' }));
  });
});
