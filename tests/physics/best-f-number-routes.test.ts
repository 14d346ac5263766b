import { describe, expect, it } from 'vitest';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { bestEffectiveFNumber } from '#core/wave/best-effective-f-number.formula.ts';
import { bestFNumber, worstContrast, type DepthAtFrequency } from '#core/wave/best-f-number.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { spatialFrequencyOfCircle } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';

const wavelength = 0.00055;
/** Every f-number from 0.5 to 128, a hundredth of a stop apart. */
const anyFNumber = Array.from({ length: 1601 }, (_, k) => 0.5 * 2 ** (k / 200));

const tasks: readonly DepthAtFrequency[] = [0.2, 0.5, 1, 2, 5].flatMap((magnification) =>
  [0.1, 0.5, 2, 5, 20].flatMap((subjectDepth) =>
    [0.0125, 0.025].map((circleOfConfusion) => ({
      magnification,
      subjectDepth,
      wavelength,
      pupilMagnification: 1,
      spatialFrequency: spatialFrequencyOfCircle({ circleOfConfusion }),
    })),
  ),
);

/** The closed form's f-number as a share of the one whose cutoff is the pattern: small for coarse patterns. */
const shareOfCutoff = (task: DepthAtFrequency) => task.spatialFrequency * wavelength * bestEffectiveFNumber(task);

describe('the closed form of the best f-number', () => {
  const between = tasks.filter((task) => shareOfCutoff(task) > 0.08 && shareOfCutoff(task) < 0.75);

  it.each(between)(
    'is within 15 % of the optimum and costs under 2 % of contrast: m $magnification, $subjectDepth mm, ν $spatialFrequency/mm',
    (task) => {
      const best = bestFNumber(task, anyFNumber) ?? { fNumber: NaN, contrast: NaN };
      const closed = bestEffectiveFNumber(task) / (1 + task.magnification);
      expect(closed).toEqual(closeTo(best.fNumber, { relative: 0.15, because: 'the rule of thumb’s own promise' }));
      expect(best.contrast - worstContrast(task, closed)).toBeLessThan(0.02);
    },
  );

  it('is tried on more than a handful of subjects', () => {
    expect(between.length).toBeGreaterThan(20);
  });

  it('loses the pattern where its f-number passes the pattern’s cutoff: too deep a subject for one frame, whatever the f-number', () => {
    const tooDeep = tasks.filter((task) => shareOfCutoff(task) > 1);
    expect(tooDeep.length).toBeGreaterThan(3);
    for (const task of tooDeep) {
      expect(worstContrast(task, bestEffectiveFNumber(task) / (1 + task.magnification))).toBe(0);
      expect(bestFNumber(task, anyFNumber)?.contrast ?? 0).toBeLessThan(0.07);
    }
  });

  it('is where the depth of field to the Airy disc’s own size is the subject’s depth', () => {
    const effectiveFNumber = bestEffectiveFNumber({ magnification: 1.5, subjectDepth: 3, wavelength });
    const circleOfConfusion = airyDiameter({ wavelength, effectiveFNumber });
    const depth = depthOfFieldCloseUp({ circleOfConfusion, effectiveFNumber, magnification: 1.5 });
    expect(depth).toEqual(closeTo(3, { relative: 1e-13, because: 'an identity: rounding' }));
  });
});

describe('the best f-number', () => {
  it('depends on depth, magnification and pattern by ν m √(λ Z) alone, in shares of the cutoff', () => {
    const shareAtBest = (task: DepthAtFrequency) =>
      (bestFNumber(task, anyFNumber)?.fNumber ?? NaN) * (1 + task.magnification) * wavelength * task.spatialFrequency;
    const one = { magnification: 1, subjectDepth: 2, wavelength, pupilMagnification: 1, spatialFrequency: 25 };
    const same = { ...one, magnification: 2, subjectDepth: 2 / 4 };
    const alsoSame = { ...one, subjectDepth: 2 / 9, spatialFrequency: 75 };
    for (const other of [same, alsoSame]) {
      expect(shareAtBest(other)).toEqual(
        closeTo(shareAtBest(one), { relative: 0.004, because: 'f-numbers a hundredth of a stop apart' }),
      );
    }
  });
});
