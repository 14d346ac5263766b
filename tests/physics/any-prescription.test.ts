import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription, requirePrescription } from '#core/rig/faulty-prescription.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { glassPoints } from '#core/rig/paraxial-trace.ts';
import { stateAt } from '#core/rig/lens-in-use.ts';
import type { Prescription } from '#core/rig/prescription.ts';
import { rayFan } from '#core/rig/ray-fan.ts';

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
});
