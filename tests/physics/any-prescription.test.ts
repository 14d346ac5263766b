import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription, requirePrescription } from '#core/rig/faulty-prescription.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { glassPoints } from '#core/rig/paraxial-trace.ts';
import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import { prescriptionInUse } from '#core/rig/prescription-in-use.ts';
import type { Prescription } from '#core/rig/prescription.ts';
import { rayFan } from '#core/rig/ray-fan.ts';
import { closeTo } from '#tests/support/close-to.ts';

/** Mostly what glass has, and now and then what none has. */
const unlikely = fc.constantFrom(0, -1, NaN, Infinity, -Infinity);
const mostly = (min: number, max: number) =>
  fc.oneof({ weight: 60, arbitrary: fc.double({ min, max, noNaN: true }) }, { weight: 1, arbitrary: unlikely });

const surface = fc.record({
  radius: fc.oneof(mostly(8, 300), mostly(-300, -8), fc.constant(Infinity)),
  thickness: mostly(0, 12),
  index: fc.oneof(mostly(1.4, 2), fc.constant(1)),
  clearAperture: mostly(4, 16),
});

/** Every other surface has no clear aperture listed. */
const surfaces = fc.array(
  fc.oneof(
    surface,
    surface.map(({ radius, thickness, index }) => ({ radius, thickness, index })),
  ),
  {
    maxLength: 7,
  },
);

const prescription: fc.Arbitrary<Prescription> = fc
  .record({ surfaces, stop: fc.nat(7), aired: fc.integer({ min: 0, max: 9 }) })

  .map(({ surfaces: listed, stop, aired }) => ({
    // Most end in air, as all that is a lens does.
    surfaces: listed.map((one, place) => (place === listed.length - 1 && aired > 0 ? { ...one, index: 1 } : one)),
    stop: stop % Math.max(1, listed.length),
  }));

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('any prescription whatever', () => {
  it('is traced in finite numbers, or refused by name', () => {
    const outcomes = new Map<string, number>();
    const count = (outcome: string) => outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    fc.assert(
      fc.property(prescription, fc.double({ min: -60, max: 60, noNaN: true }), (lens, y) => {
        try {
          requirePrescription(lens);
          const fan = rayFan(lens.surfaces, { surface: lens.stop, diameter: 6 }, { z: -50, y }, 3);
          for (const number of numbersIn(fan)) expect(number).toSatisfy(Number.isFinite);
          for (const { lost } of fan) count(lost?.why ?? 'through');
          // Chance hardly puts a sensor where parallel light meets.
          const focused = lens.surfaces.map((one, place) => {
            const isLast = place === lens.surfaces.length - 1;
            return isLast ? { ...one, thickness: Math.abs(glassPoints(lens.surfaces).backFocus) } : one;
          });
          const mounted = lensOfPrescription(
            { ...lens, surfaces: focused },
            { registerDistance: 5, apertureControl: 'lens' },
          );
          count('mounted');
          for (const number of numbersIn(stateAt(mounted, 0))) expect(number).toSatisfy(Number.isFinite);
        } catch (error) {
          if (!(error instanceof FaultyPrescription || error instanceof OutOfRange)) throw error;
          count(error.name);
        }
      }),
      { seed: 81, numRuns: 5000 },
    );
    for (const outcome of [
      'through',
      'mounted',
      'missed',
      'clear aperture',
      'total reflection',
      'FaultyPrescription',
      'OutOfRange',
    ]) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(5);
    }
  });

  it('is focused in finite numbers that agree with its surfaces, or refused by name', () => {
    const outcomes = new Map<string, number>();
    const count = (outcome: string) => outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    const moves = fc.uniqueArray(fc.double({ min: 0.01, max: 6, noNaN: true }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(
        prescription,
        moves,
        fc.nat(6),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (lens, by, gap, share) => {
          try {
            requirePrescription(lens);
            const moved = gap % lens.surfaces.length;
            const last = lens.surfaces.length - 1;
            const { focalLength, backFocus } = glassPoints(lens.surfaces);
            // A lens nearly without power has its sensor where no digits are left for the gaps.
            fc.pre(Math.abs(focalLength) < 1e5);
            // What a change of one gap makes of the magnification on a sensor that stays is what its settings state.
            const settings = [0, ...by, ...by.map((one) => -one)].map((change) => {
              const thickness = lens.surfaces[moved]!.thickness + change;
              const at = lens.surfaces.map((one, place) => (place === moved ? { ...one, thickness } : one));
              const points = glassPoints(at);
              const toSensor = moved === last ? backFocus + change : backFocus;
              const focusMagnification = change === 0 ? 0 : (toSensor - points.backFocus) / points.focalLength;
              return { focusMagnification, thickness: { [moved]: moved === last ? toSensor : thickness } };
            });
            const focused = {
              ...lens,
              surfaces: lens.surfaces.map((one, place) => (place === last ? { ...one, thickness: backFocus } : one)),
              settings: settings
                .filter(({ focusMagnification }) => focusMagnification >= 0)
                .sort((one, other) => one.focusMagnification - other.focusMagnification),
            };
            const registerDistance = Math.max(1e-3, Math.min(5, focalLength));
            const mounted = lensOfPrescription(focused, { registerDistance, apertureControl: 'lens' });
            const at = share * closestMagnification(mounted);
            for (const number of numbersIn(stateAt(mounted, at))) expect(number).toSatisfy(Number.isFinite);
            const { surfaces: inUse, points } = prescriptionInUse(focused, at);
            const magnification = (inUse[last]!.thickness - points.backFocus) / points.focalLength;
            const rounding = 1e-9 * (1 + Math.abs(points.backFocus / points.focalLength));
            expect(magnification).toEqual(closeTo(at, { absolute: rounding, because: 'two ways to the same number' }));
            count(mounted.focusing.by);
          } catch (error) {
            if (!(error instanceof FaultyPrescription || error instanceof OutOfRange)) throw error;
            count(error.name);
          }
        },
      ),
      { seed: 82, numRuns: 5000 },
    );
    for (const outcome of ['prescription', 'FaultyPrescription', 'OutOfRange']) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(20);
    }
  });
});
