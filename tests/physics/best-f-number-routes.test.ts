import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balancedFocus } from '#core/depth/balanced-focus.ts';
import { coneOfLens, type Cone } from '#core/depth/cone.ts';
import { defocusBlurOfCone } from '#core/depth/blur-of-cone.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { bestEffectiveFNumberOfCone } from '#core/wave/best-effective-f-number-of-cone.ts';
import { bestEffectiveFNumber } from '#core/wave/best-effective-f-number.formula.ts';
import { bestFNumber, worstContrast, type DepthAtFrequency } from '#core/wave/best-f-number.ts';
import { airyDiameter, firstDarkRing } from '#core/wave/airy-diameter.formula.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { stoppedDownAberration } from '#core/wave/pupil.ts';
import { spatialFrequencyOfCircle } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';

const wavelength = 0.00055;
/** Every f-number from 0.5 to 128, a hundredth of a stop apart. */
const anyFNumber = Array.from({ length: 1601 }, (_, k) => 0.5 * 2 ** (k / 200));

interface Task extends DepthAtFrequency {
  readonly magnification: number;
}

/** Equal pupils, the entrance pupil infinitely far away: both sides of the plane are alike. */
const evenTask = (magnification: number, subjectDepth: number, spatialFrequency: number): Task => ({
  magnification,
  subjectDepth,
  wavelength,
  spatialFrequency,
  coneAt: (fNumber) => ({
    magnification,
    effectiveFNumber: fNumber * (1 + magnification),
    inverseEntrancePupilDistance: 0,
  }),
});

const tasks = [0.2, 0.5, 1, 2, 5].flatMap((magnification) =>
  [0.1, 0.5, 2, 5, 20].flatMap((subjectDepth) =>
    [0.0125, 0.025].map((circleOfConfusion) =>
      evenTask(magnification, subjectDepth, spatialFrequencyOfCircle({ circleOfConfusion })),
    ),
  ),
);

/** The closed form's f-number as a share of the one whose cutoff is the pattern: small for coarse patterns. */
const shareOfCutoff = (task: Task) => task.spatialFrequency * wavelength * bestEffectiveFNumber(task);

describe('the closed form of the best f-number', () => {
  const between = tasks.filter((task) => shareOfCutoff(task) > 0.08 && shareOfCutoff(task) < 0.75);

  it.each(between)(
    'is within 15 % of the optimum and costs under 2 % of contrast: m $magnification, $subjectDepth mm, ν $spatialFrequency/mm',
    (task) => {
      const best = bestFNumber(task, anyFNumber) ?? { fNumber: NaN, contrast: NaN };
      const closed = bestEffectiveFNumber(task) / (1 + task.magnification);
      expect(closed).toEqual(closeTo(best.fNumber, { relative: 0.15, because: 'the rule of thumb’s own promise' }));
      expect(best.contrast - worstContrast(task, closed).contrast).toBeLessThan(0.02);
    },
  );

  it('is tried on more than a handful of subjects', () => {
    expect(between.length).toBeGreaterThan(20);
  });

  it('loses the pattern where its f-number passes the pattern’s cutoff: too deep a subject for one frame, whatever the f-number', () => {
    const tooDeep = tasks.filter((task) => shareOfCutoff(task) > 1);
    expect(tooDeep.length).toBeGreaterThan(3);
    for (const task of tooDeep) {
      expect(worstContrast(task, bestEffectiveFNumber(task) / (1 + task.magnification)).contrast).toBe(0);
      expect(bestFNumber(task, anyFNumber)?.contrast ?? 0).toBeLessThan(0.07);
    }
  });

  it('is where the depth of field to the Airy disc’s own size is the subject’s depth', () => {
    const effectiveFNumber = bestEffectiveFNumber({ magnification: 1.5, subjectDepth: 3, wavelength });
    const circleOfConfusion = airyDiameter({ wavelength, effectiveFNumber });
    const depth = depthOfFieldCloseUp({ circleOfConfusion, effectiveFNumber, magnification: 1.5 });
    expect(depth).toEqual(closeTo(3, { relative: 1e-13, because: 'an identity: rounding' }));
  });

  it('is for any chain where both ends are blurred to the Airy disc’s own size, and the short form for a shallow subject', () => {
    const drawn = fc.record({
      magnification: fc.double({ min: 0.02, max: 10, noNaN: true }),
      inverseEntrancePupilDistance: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
      subjectDepth: fc.double({ min: 0.01, max: 300, noNaN: true }),
    });
    fc.assert(
      fc.property(drawn, (chain) => {
        const effectiveFNumber = bestEffectiveFNumberOfCone({ ...chain, wavelength });
        // The disc of an f-number that no cone in air has is a number too, which `airyDiameter` rightly refuses.
        const disc = closeTo(2 * firstDarkRing * wavelength * effectiveFNumber, {
          relative: 1e-9,
          because: 'cancelling',
        });
        const { toNearest, toFarthest } = balancedFocus(chain);
        for (const offset of [-toNearest, toFarthest]) {
          expect(defocusBlurOfCone({ ...chain, effectiveFNumber, offset })).toEqual(disc);
        }
        const telecentric = { ...chain, inverseEntrancePupilDistance: 0, wavelength };
        const short = closeTo(bestEffectiveFNumber(telecentric), { relative: 1e-14, because: 'rounding' });
        expect(bestEffectiveFNumberOfCone(telecentric)).toEqual(short);
        expect(effectiveFNumber).toBeLessThanOrEqual(bestEffectiveFNumber(telecentric) * (1 + 1e-12));
      }),
      { seed: 91, numRuns: 500 },
    );
  });
});

describe('the best f-number', () => {
  it('depends on depth, magnification and pattern by ν m √(λ Z) alone, in shares of the cutoff', () => {
    const shareAtBest = (task: Task) =>
      (bestFNumber(task, anyFNumber)?.fNumber ?? NaN) * (1 + task.magnification) * wavelength * task.spatialFrequency;
    const one = evenTask(1, 2, 25);
    for (const other of [evenTask(2, 2 / 4, 25), evenTask(1, 2 / 9, 75)]) {
      expect(shareAtBest(other)).toEqual(
        closeTo(shareAtBest(one), { relative: 0.004, because: 'f-numbers a hundredth of a stop apart' }),
      );
    }
  });
});

/** The same by brute force: planes and places tried one by one, the transfer of each by its own blur. */
function bruteWorst(
  { subjectDepth, spatialFrequency, wideOpen }: DepthAtFrequency,
  cone: Cone,
  plane: number,
  fNumber: number,
) {
  const places = 160;
  const aberration = wideOpen ? stoppedDownAberration({ ...wideOpen, fNumber }) : 0;
  let worst = 1;
  for (let place = 0; place <= places && worst > 0; place++) {
    const offset = (subjectDepth * place) / places - plane;
    const waves =
      (Math.sign(offset) * defocusBlurOfCone({ ...cone, offset })) / (8 * wavelength * cone.effectiveFNumber);
    const transfer = opticalTransfer({
      spatialFrequency,
      cutoffFrequency: 1 / (wavelength * cone.effectiveFNumber),
      sphericalAberration: aberration,
      defocusAberration: Math.max(-200, Math.min(200, waves - aberration)),
    });
    worst = Math.min(worst, transfer);
  }
  return Math.max(0, worst);
}

const bruteBest = (task: DepthAtFrequency, fNumber: number, planes = 80) =>
  Math.max(
    ...Array.from({ length: planes - 1 }, (_, k) => {
      const plane = (task.subjectDepth * (k + 1)) / planes;
      const cone = task.coneAt(fNumber);
      return plane * cone.inverseEntrancePupilDistance < 1 ? bruteWorst(task, cone, plane, fNumber) : 0;
    }),
  );

describe('the best f-number of a chain, by brute force over planes and places', () => {
  const chains = fc.record({
    magnification: fc.double({ min: 0.02, max: 4, noNaN: true }),
    // Depths as a share of the pupil's distance, on either side.
    toPupil: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
    waves: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
    share: fc.double({ min: 0.08, max: 0.6, noNaN: true }),
    spherical: fc.constantFrom(0, 0, 0.4, -0.7, 1.5),
  });

  it('no plane keeps more than the one it stands in, and some plane keeps as much', () => {
    let kept = 0;
    fc.assert(
      fc.property(chains, ({ magnification, toPupil, waves, share, spherical }) => {
        const effectiveFNumber = 20;
        const subjectDepth = (16 * wavelength * effectiveFNumber ** 2 * waves) / magnification ** 2;
        const task: DepthAtFrequency = {
          subjectDepth,
          wavelength,
          spatialFrequency: share / (wavelength * effectiveFNumber),
          coneAt: () => ({ magnification, effectiveFNumber, inverseEntrancePupilDistance: toPupil / subjectDepth }),
          ...(spherical !== 0 && { wideOpen: { sphericalAberration: spherical, maxAperture: 8 } }),
        };
        const { contrast, planeDepth } = worstContrast(task, 8);
        const brute = bruteBest(task, 8);
        if (brute > 0) kept++;
        expect(contrast).toBeGreaterThan(brute - 2e-3);
        // Where it stands the places tried one by one keep as much, but for what lies between them.
        expect(bruteWorst(task, task.coneAt(8), planeDepth, 8)).toEqual(
          closeTo(contrast, { absolute: 0.01, because: '160 places' }),
        );
      }),
      { seed: 92, numRuns: 120 },
    );
    expect(kept).toBeGreaterThan(60);
  });

  it('is found for a metre of depth at a fiftieth of life size, where the two sides differ most', () => {
    const lens = { focalLength: 50, pupilMagnification: 1, magnification: 0.02 };
    const deep: DepthAtFrequency = {
      subjectDepth: 1000,
      wavelength,
      spatialFrequency: 25,
      coneAt: (fNumber) => coneOfLens({ ...lens, fNumber }),
    };
    const fNumbers = Array.from({ length: 161 }, (_, k) => 4 * 2 ** (k / 40));
    const bruteOf = (contrastAt: (fNumber: number) => number) => {
      const all = fNumbers.map(contrastAt);
      return fNumbers[all.indexOf(Math.max(...all))]!;
    };
    const near = (value: number) =>
      closeTo(value, { relative: 0.04, because: 'f-numbers a twentieth of a stop apart, a flat top' });
    const free = bestFNumber(deep, fNumbers)!;
    expect(free.fNumber).toEqual(near(bruteOf((fNumber) => bruteBest(deep, fNumber, 50))));
    expect(free.planeDepth).toBeLessThan(460);

    const inTheMiddle = bestFNumber({ ...deep, planeDepth: 500 }, fNumbers)!;
    expect(inTheMiddle.fNumber).toEqual(
      near(bruteOf((fNumber) => bruteWorst(deep, deep.coneAt(fNumber), 500, fNumber))),
    );
    // Taken for even, as close up, the two sides of a plane in the middle would ask for an eighth less.
    const evenly = bestFNumber(
      { ...deep, coneAt: (fNumber) => ({ ...deep.coneAt(fNumber), inverseEntrancePupilDistance: 0 }) },
      fNumbers,
    )!;
    expect(inTheMiddle.fNumber / evenly.fNumber).toBeGreaterThan(1.08);
    expect(inTheMiddle.contrast).toBeLessThan(free.contrast);
  });
});
