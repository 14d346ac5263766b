import { describe, expect, it } from 'vitest';
import { blurDiscTransfer } from '#core/wave/blur-disc-transfer.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { photopicTransfer } from '#core/wave/photopic-transfer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { radialOtf, type RadialOtf } from './radial-otf.ts';

const highest = 140;
const promised = { absolute: 5e-4, because: 'what the docstring says' };
const places = Array.from({ length: 97 }, (_, k) => (k + 0.37) * (highest / 98));

function read({ step, values }: RadialOtf, frequency: number): number {
  const below = Math.floor(frequency / step);
  return values[below]! + (frequency / step - below) * (values[below + 1]! - values[below]!);
}

describe('radialTransfer', () => {
  it.each([0, 0.01, -0.03, 0.12, 0.6])('is the transfer in white light at any frequency, blurred by %d mm', (blur) => {
    const found = radialOtf({ effectiveFNumber: 16 }, blur, highest);
    const defocusAberration = blur / (8 * 0.000555 * 16);
    for (const spatialFrequency of places) {
      const waves = photopicTransfer({
        spatialFrequency,
        effectiveFNumber: 16,
        defocusAberration,
        sphericalAberration: 0,
      });
      expect(read(found, spatialFrequency)).toEqual(closeTo(waves, promised));
    }
  });

  it('is that of one wavelength where there is one, and knows the side of the sharp plane where the lens is aberrated', () => {
    const optics = { effectiveFNumber: 11, wavelength: 0.00045, sphericalAberration: 1 };
    const cutoffFrequency = 1 / (0.00045 * 11);
    for (const blur of [-0.04, 0.04]) {
      const found = radialOtf(optics, blur, highest);
      const pupil = { defocusAberration: blur / (8 * 0.00045 * 11), sphericalAberration: 1 };
      for (const spatialFrequency of places)
        expect(read(found, spatialFrequency)).toEqual(
          closeTo(opticalTransfer({ ...pupil, spatialFrequency, cutoffFrequency }), promised),
        );
    }
    expect(read(radialOtf(optics, 0.04, highest), 20)).not.toBeCloseTo(read(radialOtf(optics, -0.04, highest), 20), 1);
  });

  it('is the blur disc of geometry where defocus is beyond fifty wavelengths', () => {
    const found = radialOtf({ effectiveFNumber: 2.8 }, 1, highest);
    for (const spatialFrequency of places)
      expect(read(found, spatialFrequency)).toEqual(
        closeTo(blurDiscTransfer({ defocusBlur: 1, spatialFrequency }), {
          absolute: 1e-3,
          because: 'read between samples',
        }),
      );
  });
});
