import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '../assemble.ts';
import { closestMagnification, stateAt } from '../lens-in-use.ts';
import type { Lens } from '../lens.ts';
import { lensOfPrescription } from '../lens-of-prescription.ts';
import { solveRig } from '../solve.ts';
import { prescriptionNames, prescriptions, focusedPrescriptions } from '#tests/support/prescriptions.ts';
import type { KnownLens } from './known-lens.ts';
import { possibleLenses } from './possible-lenses.ts';
import { spanOver } from './span-over.ts';

const registerDistance = 20;
const plain: KnownLens = {
  focalLength: 50,
  registerDistance: 44,
  focusing: 'whole',
  closestMagnification: 0.15,
  apertureControl: 'camera',
};

type Answer = 'magnification' | 'workingDistance' | 'effectiveFNumber' | 'fieldWidth';

/** What a lens gives at its closest focus on so much of rings. */
function on(lens: Lens, extension: number, answer: Answer): number | undefined {
  const solved = solveRig(
    assembleRig([
      { part: 'camera', registerDistance: lens.registerDistance, sensorWidth: 36, sensorHeight: 24 },
      ...(extension > 0 ? [{ part: 'ring', extension } as const] : []),
      { part: 'lens', lens, focusMagnification: closestMagnification(lens), fNumber: 8 },
    ]),
  );
  return 'magnification' in solved ? solved[answer] : undefined;
}

describe('a lens of which all is known', () => {
  const known = { ...plain, pupilMagnification: 1.1, principalSeparation: -4, frontPrincipalDepth: 22 };
  const lenses = possibleLenses(known);

  it('is that lens and no other', () => {
    expect(lenses.assumed).toEqual([]);
    expect(lenses.measured).toEqual([]);
    expect(lenses.extremes).toEqual([lenses.usual]);
    expect(lenses.usual).toMatchObject({ focalLength: 50, principalSeparation: -4, frontPrincipalDepth: 22 });
  });

  it('has one answer', () => {
    const span = spanOver(lenses, (lens) => on(lens, 36, 'magnification'))!;
    // 0.15 + 36/50
    expect([span.least, span.usual, span.most]).toEqual([span.usual, span.usual, span.usual]);
    expect(span.usual).toBeCloseTo(0.87, 12);
  });
});

describe('a lens by its marks', () => {
  it('says what it takes for granted', () => {
    expect(possibleLenses(plain).assumed).toEqual([
      'pupil-magnification',
      'front-principal-depth',
      'principal-separation',
      'barrel-length',
    ]);
    expect(possibleLenses({ ...plain, barrelLength: 24, pupilMagnification: 1 }).assumed).toEqual([
      'front-principal-depth',
      'principal-separation',
    ]);
  });

  it('has H where barrel and separation leave it, in every one of the possible lenses', () => {
    for (const lens of possibleLenses({ ...plain, barrelLength: 24 }).extremes) {
      expect(lens.focalLength + lens.principalSeparation + lens.frontPrincipalDepth).toBeCloseTo(44 + 24, 10);
    }
  });

  it('takes the separation from rim, H and barrel where these are known', () => {
    const { usual, assumed } = possibleLenses({ ...plain, barrelLength: 24, frontPrincipalDepth: 22 });
    expect(usual.principalSeparation).toBe(44 + 24 - 50 - 22);
    expect(assumed).toEqual(['pupil-magnification']);
  });

  it('knows its greatest magnification by the nearest focus where it moves as a whole', () => {
    const { usual } = possibleLenses({
      ...plain,
      closestMagnification: undefined!,
      closestFocusDistance: 50 * (2 + 0.15 + 1 / 0.15) - 4,
      principalSeparation: -4,
    });
    expect(usual.focusing).toMatchObject({ by: 'unit' });
    expect(closestMagnification(usual)).toBeCloseTo(0.15, 10);
  });

  it('reaches farther the more is known of it', () => {
    const width = (known: KnownLens) => {
      const { least, most } = spanOver(possibleLenses(known), (lens) => on(lens, 12, 'workingDistance'))!;
      return most - least;
    };
    const [marks, ruler, all] = [
      plain,
      { ...plain, barrelLength: 24 },
      { ...plain, barrelLength: 24, principalSeparation: -4 },
    ];
    expect(width(ruler)).toBeLessThan(0.4 * width(marks));
    expect(width(all)).toBeLessThan(1e-9);
  });

  it('carries the error of a measured focal length, two standard errors to each side', () => {
    const known = { ...plain, focalLength: { value: 50, standardError: 1 } };
    const { measured } = possibleLenses(known);
    expect(measured).toEqual(['focal-length']);
    const { least, most } = spanOver(possibleLenses(known), (lens) => on(lens, 36, 'magnification'))!;
    expect(least).toBeCloseTo(0.15 + 36 / 52, 10);
    expect(most).toBeCloseTo(0.15 + 36 / 48, 10);
  });

  it.each([
    ['neither magnification nor distance', { closestMagnification: undefined! }, 'focus-magnification'],
    ['a rim behind its flange', { principalSeparation: -4, frontPrincipalDepth: -60 }, 'front-principal-depth'],
    [
      'a subject nearer than it can be',
      { closestMagnification: undefined!, closestFocusDistance: 150 },
      'focus-distance',
    ],
    ['a focal length below 0', { focalLength: -50 }, 'focal-length'],
    ['a register below 0', { registerDistance: -44 }, 'register-distance'],
  ])('is refused with %s', (_, changes, quantity) => {
    const refused = () => possibleLenses({ ...plain, ...changes });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(new RegExp(quantity));
  });
});

describe('published lenses', () => {
  it.each(prescriptionNames)('%s has pupil and planes within what is assumed', (name) => {
    const lens = lensOfPrescription(prescriptions[name], { registerDistance, apertureControl: 'camera' });
    const { extremes } = possibleLenses({ ...plain, focalLength: lens.focalLength, registerDistance });
    for (const quantity of ['pupilMagnification', 'principalSeparation'] as const) {
      const all = extremes.map((one) => one[quantity]);
      expect(lens[quantity]).toBeGreaterThanOrEqual(Math.min(...all));
      expect(lens[quantity]).toBeLessThanOrEqual(Math.max(...all));
    }
  });

  it.each(focusedPrescriptions)(
    '%s gives on rings what lies within the range that its marks and a ruler leave',
    (name) => {
      const traced = lensOfPrescription(prescriptions[name], { registerDistance, apertureControl: 'camera' });
      const closest = closestMagnification(traced);
      const { focalLength, principalSeparation, frontPrincipalDepth } = traced;
      const barrelLength = focalLength + principalSeparation + frontPrincipalDepth - registerDistance;
      const close = stateAt(traced, closest);
      const closestBarrelLength =
        close.focalLength * (1 + closest) + close.principalSeparation + close.frontPrincipalDepth - registerDistance;
      const distance = on(traced, 0, 'workingDistance')!;
      const known: KnownLens = {
        focalLength,
        registerDistance,
        focusing: 'inside',
        closestMagnification: closest,
        closestFocusDistance: distance + registerDistance + closestBarrelLength,
        barrelLength,
        closestBarrelLength,
        apertureControl: 'camera',
      };
      for (const answer of ['magnification', 'workingDistance', 'effectiveFNumber'] as const) {
        for (const extension of [0, 12, 36]) {
          const span = spanOver(possibleLenses(known), (lens) => on(lens, extension, answer))!;
          const truth = on(traced, extension, answer)!;
          // The tables print five figures.
          const slack = 1e-5 * truth;
          expect(truth, `${answer} on ${extension} mm`).toBeGreaterThanOrEqual(span.least - slack);
          expect(truth, `${answer} on ${extension} mm`).toBeLessThanOrEqual(span.most + slack);
        }
      }
    },
  );
});

describe('the range of an answer', () => {
  it('holds that of every lens in between', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.integer({ min: 18, max: 300 }), fc.integer({ min: 1, max: 68 }), (p, q, f, e) => {
        const known: KnownLens = { ...plain, focalLength: f, barrelLength: 0.6 * f + 30 };
        const lenses = possibleLenses(known);
        const between = (name: 'pupilMagnification' | 'principalSeparation', at: number) => {
          const all = lenses.extremes.map((lens) => lens[name]);
          return Math.min(...all) + at * (Math.max(...all) - Math.min(...all));
        };
        const { usual } = possibleLenses({
          ...known,
          pupilMagnification: between('pupilMagnification', p),
          principalSeparation: between('principalSeparation', q),
        });
        for (const answer of ['magnification', 'workingDistance', 'effectiveFNumber'] as const) {
          const { least, most } = spanOver(lenses, (lens) => on(lens, e, answer))!;
          const here = on(usual, e, answer)!;
          expect(here).toBeGreaterThanOrEqual(least - 1e-9 * Math.abs(least));
          expect(here).toBeLessThanOrEqual(most + 1e-9 * Math.abs(most));
        }
      }),
    );
  });
});
