import { describe, expect, it } from 'vitest';
import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { hyperfocalDistanceFormula } from '#core/depth/hyperfocal-distance.formula.ts';
import { waveDepthFormula } from '#core/depth/wave-depth.formula.ts';
import { fNumberForFlashFormula } from '#core/exposure/f-number-for-flash.formula.ts';
import { keeperFramesFormula } from '#core/exposure/keeper-frames.formula.ts';
import { motionBlurOfSubjectFormula } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { magnificationOfSubjectFormula } from '#core/gaussian/magnification-of-subject.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { filmReflectanceFormula } from '#core/light/film-reflectance.formula.ts';
import { sourceAngleFormula } from '#core/light/source-angle.formula.ts';
import { surfaceReflectancePFormula } from '#core/light/surface-reflectance-p.formula.ts';
import { nearestRoot, onlyRoot, solveFor, type Question, type Solvable } from '#core/quantity/solve.ts';
import type { NoRoot } from '#core/quantity/solve-refusals.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { magnificationOfCloseUpLensFormula } from '#core/rig/magnification-of-close-up-lens.formula.ts';
import { solveRig } from '#core/rig/solve.ts';
import { thinConverter } from '#core/rig/thin-converter.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { on, ring, unitLenses } from '#tests/support/rig-parts.ts';
import fc from 'fast-check';

const converterFocalLength = {
  gives: 'focal-length',
  from: ['converter-factor', 'converter-length'],
  evaluate: (given: { converterFactor: number; converterLength: number }) => -thinConverter(given).focalLength,
} as const satisfies Solvable;

interface Asked {
  question: string;
  formula: Solvable;
  ask: Question['ask'];
  given: Question['given'];
  answers: readonly number[];
  /** How the number was come by without the core. */
  because: string;
}

const asked: readonly Asked[] = [
  {
    question: 'Which mark on the ring gives f/16 at life size?',
    formula: effectiveFNumberFormula,
    ask: 'f-number',
    given: { 'effective-f-number': 16, magnification: 1, 'pupil-magnification': 1 },
    answers: [8],
    because: 'two stops at 1:1, common practice',
  },
  {
    question: 'How far may the lens be stopped down for an Airy disc of 13.4 µm in green light?',
    formula: airyDiameterFormula,
    ask: 'effective-f-number',
    given: { 'airy-diameter': 0.0134, wavelength: 0.00055 },
    answers: [0.0134 / (2.44 * 0.00055)],
    because: '2.44 λ N, as textbooks round it: to a part in 4000',
  },
  {
    question: 'Which close-up lens gives half life size on 100 mm?',
    formula: magnificationOfCloseUpLensFormula,
    ask: 'close-up-power',
    given: { magnification: 0.5, 'focal-length': 100 },
    answers: [5],
    because: 'its own focal length is then 200 mm, twice the lens’s',
  },
  {
    question: 'Which focal length stands 190 mm from its subject, from H, at life size?',
    formula: subjectDistanceFormula,
    ask: 'focal-length',
    given: { 'subject-distance': 190, magnification: 1 },
    answers: [95],
    because: '2 f at life size',
  },
  {
    question: 'How deep may H lie for 100 mm of room?',
    formula: workingDistanceFormula,
    ask: 'front-principal-depth',
    given: { 'working-distance': 100, 'subject-distance': 148 },
    answers: [48],
    because: 'the difference',
  },
  {
    question: 'From how far does a flash of guide number 45 suit f/9?',
    formula: fNumberForFlashFormula,
    ask: 'flash-distance',
    given: { 'f-number': 9, 'guide-number': 45, iso: 100, 'flash-power': 1, 'light-loss': 0 },
    answers: [5000],
    because: 'published: tests/reference/guide-numbers, 45 at 5 m',
  },
  {
    question: 'Which power for f/8 at 0.4 m, two stops lost to extension, guide number 36?',
    formula: fNumberForFlashFormula,
    ask: 'flash-power',
    given: { 'f-number': 8, 'guide-number': 36, iso: 100, 'flash-distance': 400, 'light-loss': 2 },
    answers: [(8 / 45) ** 2],
    because: '36/0.4 m is f/90 at full power, f/45 after two stops',
  },
  {
    question: 'What overlap does a step of 0.35 mm leave of a depth of 0.5 mm?',
    formula: frameStepFormula,
    ask: 'overlap',
    given: { 'frame-step': 0.35, 'depth-of-field': 0.5 },
    answers: [0.3],
    because: '0.15 mm of 0.5 mm',
  },
  {
    question: 'How long is a doubler whose thin lens has −80 mm?',
    formula: converterFocalLength,
    ask: 'converter-length',
    given: { 'focal-length': 80, 'converter-factor': 2 },
    answers: [40],
    because: 'the lens equation: an object 40 mm behind the lens, its image 80 mm behind: 40 mm farther back',
  },
  {
    question: 'Which ring takes 50 mm from 0.15 to life size?',
    formula: magnificationFromExtensionFormula,
    ask: 'extension',
    given: { magnification: 1, 'focus-magnification': 0.15, 'focal-length': 50 },
    answers: [42.5],
    because: '50 mm for life size, of which the lens racks out 7.5 itself',
  },
  {
    question: 'At which magnification does 12 mm of subject fill 36 mm of sensor?',
    formula: fieldWidthFormula,
    ask: 'magnification',
    given: { 'field-width': 12, 'sensor-width': 36 },
    answers: [3],
    because: 'three times as wide',
  },
  {
    question: 'At which magnifications is a subject 225 mm from the sensor sharp through 50 mm?',
    formula: focusDistanceFormula,
    ask: 'magnification',
    given: { 'focus-distance': 225, 'focal-length': 50, 'principal-separation': 0 },
    answers: [0.5, 2],
    because: '150 + 75 mm and 75 + 150 mm',
  },
  {
    question: 'And where it is nearest of all?',
    formula: focusDistanceFormula,
    ask: 'magnification',
    given: { 'focus-distance': 4 * 50 + 12, 'focal-length': 50, 'principal-separation': 12 },
    answers: [1],
    because: 'L = 4f + HH′ at life size only: a double root',
  },
  {
    question: 'How far from a lens of 50 mm is what it shows at life size, real or as a magnifier does?',
    formula: magnificationOfSubjectFormula,
    ask: 'subject-distance',
    given: { magnification: 2, 'focal-length': 50 },
    answers: [25, 75],
    because: 'f (1 ∓ 1/m)',
  },
  {
    question: 'Which effective f-number makes 1 mm sharp at life size, c = 0.02 mm?',
    formula: depthOfFieldCloseUpFormula,
    ask: 'effective-f-number',
    given: { 'depth-of-field-close-up': 1, 'circle-of-confusion': 0.02, magnification: 1 },
    answers: [25],
    because: '2 × 0.02 × 25 = 1',
  },
  {
    question: 'Which mark puts the hyperfocal distance of 50 mm at 10 m, c = 0.03 mm?',
    formula: hyperfocalDistanceFormula,
    ask: 'f-number',
    given: { 'hyperfocal-distance': 10000, 'focal-length': 50, 'circle-of-confusion': 0.03 },
    answers: [2500 / (0.03 * 9950)],
    because: 'f²/(c (H − f))',
  },
  {
    question: 'How long may the shutter be open for an ant at 100 mm/s, at life size, for a streak of 0.02 mm?',
    formula: motionBlurOfSubjectFormula,
    ask: 'exposure-time',
    given: { 'motion-blur': 0.02, magnification: 1, 'subject-speed': 100 },
    answers: [1 / 5000],
    because: '0.02 mm over 100 mm/s',
  },
  {
    question: 'Which numerical aperture has a wave depth of 5 µm at 500 nm?',
    formula: waveDepthFormula,
    ask: 'numerical-aperture',
    given: { 'wave-depth': 0.005, wavelength: 0.0005 },
    answers: [Math.sqrt(0.1)],
    because: 'a tenth of it is λ/NA²',
  },
  {
    question: 'How wide must a diffuser at 200 mm be to be seen under 60°?',
    formula: sourceAngleFormula,
    ask: 'source-size',
    given: { 'source-angle': Math.PI / 3, 'flash-distance': 200 },
    answers: [400 / Math.sqrt(3)],
    because: '2 × 200 tan 30°',
  },
  {
    question: 'From which side does light polarised in the plane of incidence not glare on glass of index 1.5?',
    formula: surfaceReflectancePFormula,
    ask: 'incidence-angle',
    given: { reflectance: 0, 'refractive-index': 1.5 },
    answers: [Math.atan(1.5)],
    because: 'Brewster’s angle, 56.31°, where the reflectance only touches zero: a double root',
  },
];

const margin = { relative: 3e-4, because: 'one number rounds 2.43934 to 2.44' };
const tight = { relative: 1e-7, because: 'a double root is where the left side is flat; single ones are exact' };

describe('questions that ask for a letter on the right', () => {
  it.each(asked)('$question', ({ formula, ask, given, answers }) => {
    const { roots } = solveFor(formula, { ask, given });
    const within = ask === 'effective-f-number' ? margin : tight;
    expect(roots.map(({ value }) => value)).toEqual(answers.map((answer) => closeTo(answer, within)));
  });

  it('How wide may the pupil be if all behind the subject is to look sharp?', () => {
    const given = {
      'far-limit': Infinity,
      'circle-of-confusion': 0.03,
      'entrance-pupil-distance': 10000,
      magnification: 0.02,
    };
    const { spans } = solveFor(farLimitFormula, { ask: 'entrance-pupil', given });
    expect(spans).toEqual([{ from: 0.05, to: closeTo(1.5, tight) }]);
  });

  it('What share must be in focus for five frames to be enough for one keeper?', () => {
    const { roots, spans } = solveFor(keeperFramesFormula, { ask: 'keeper-share', given: { 'keeper-frames': 5 } });
    expect(roots).toEqual([]);
    // The share of failures, to the fifth, is at most 5 %, and to the fourth more.
    expect(spans).toEqual([{ from: closeTo(1 - 0.05 ** (1 / 5), tight), to: closeTo(1 - 0.05 ** (1 / 4), tight) }]);
  });

  it('How deep a subject do 13 frames of 0.5 mm cover, a quarter of each shared?', () => {
    const given = { 'frame-count': 13, 'depth-of-field': 0.5, overlap: 0.25 };
    const { spans } = solveFor(frameCountFormula, { ask: 'subject-depth', given });
    const counted = { relative: 1e-8, because: 'the count forgives rounding of a thousand-millionth of a step' };
    expect(spans).toEqual([{ from: closeTo(0.5 + 11 * 0.375, counted), to: closeTo(0.5 + 12 * 0.375, counted) }]);
  });

  it('How near must 50 mm come to a subject? Not 190 mm from the sensor', () => {
    const given = { 'focus-distance': 190, 'focal-length': 50, 'principal-separation': 0 };
    try {
      solveFor(focusDistanceFormula, { ask: 'magnification', given });
      expect.unreachable();
    } catch (error) {
      expect((error as NoRoot).words.replaceAll('\u202f', ' ')).toBe(
        'focus distance cannot be 190 mm: with these numbers it is from 200 mm to 2.6 m',
      );
    }
  });

  it('How thick is a soap film that sends back 5 % of 550 nm? Each bright band has two places', () => {
    const given = {
      'film-reflectance': 0.05,
      reflectance: 0.02,
      'refractive-index': 1.33,
      'refraction-angle': 0,
      wavelength: 0.00055,
    };
    const range = { least: 0.00001, most: 0.001 };
    const { roots } = solveFor(filmReflectanceFormula, { ask: 'film-thickness', given, range });
    const sine = Math.sqrt((0.05 * 0.98 ** 2) / (0.08 * 0.95));
    const first = (0.00055 * Math.asin(sine)) / (2 * Math.PI * 1.33);
    const period = 0.00055 / (2 * 1.33);
    const expected = [0, 1, 2, 3, 4]
      .flatMap((k) => [k * period + first, (k + 1) * period - first])
      .filter((d) => d <= 0.001);
    expect(roots.map(({ value }) => value)).toEqual(expected.map((value) => closeTo(value, tight)));
    expect(roots.slice(0, 2).map(({ branch }) => branch.sense)).toEqual(['rising', 'falling']);
  });

  it('Which ring gives a magnification on a whole chain? The engine is solved like any formula', () => {
    fc.assert(
      fc.property(unitLenses, fc.integer({ min: 5, max: 100 }), (lens, extension) => {
        const chain = {
          gives: 'magnification',
          from: ['extension'],
          evaluate: (given: { extension: number }) => {
            const { registerDistance } = lens;
            const parts = [{ part: 'camera', registerDistance, sensorWidth: 36, sensorHeight: 24 } as const];
            const solved = solveRig(assembleRig([...parts, ring(given.extension), on(lens)]));
            return 'magnification' in solved ? (solved.magnification as number) : Infinity;
          },
        } as const satisfies Solvable;
        const range = { least: 1, most: 200 };
        const given = { magnification: chain.evaluate({ extension }) };
        expect(onlyRoot(chain, { ask: 'extension', given, range })).toEqual(closeTo(extension, tight));
      }),
      { seed: 22, numRuns: 10 },
    );
  });

  it('Where does a hand put a limit that it drags? Nearest to where the letter is now', () => {
    const question = { 'focus-distance': 225, 'focal-length': 50, 'principal-separation': 0 };
    const solution = solveFor(focusDistanceFormula, { ask: 'magnification', given: question });
    expect([nearestRoot(solution, 0.3), nearestRoot(solution, 1.8)]).toEqual([0.5, 2]);
  });
});
