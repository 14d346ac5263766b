import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { glassPositions, glassRays } from './glass-positions.ts';
import { closestMagnification } from './lens-in-use.ts';
import { lensOfPrescription } from './lens-of-prescription.ts';
import { rigPositions } from './positions.ts';

const mount = { registerDistance: 44, apertureControl: 'lens' } as const;
const rounding = { absolute: 1e-9, because: 'rounding, of lengths in mm' };

const chain = (name: (typeof prescriptionNames)[number], reversed: boolean, fNumber = 64) => {
  const lens = lensOfPrescription(prescriptions[name], mount);
  const parts = [camera, ring(reversed ? 60 : 20), on(lens, { reversed, fNumber })];
  return { lens, positions: rigPositions(assembleRig(parts)) };
};

/** Lenses that may stand in this camera either way round. */
const placeable = prescriptionNames.filter((name) => {
  try {
    return [true, false].every((reversed) => chain(name, reversed).positions.solved.sharpPlane === 'in front');
  } catch {
    return false;
  }
});

describe('glassPositions', () => {
  it('has lenses to try', () => {
    expect(placeable.length).toBeGreaterThan(2);
  });

  it.each(placeable)('puts the glass of %s where its first vertex is the rim', (name) => {
    const { positions } = chain(name, false);
    const glass = glassPositions(positions, 2);
    expect(glass.surfaces[0]!.vertex).toEqual(closeTo(positions.parts[2]!.to, rounding));
    const places = glass.surfaces.map(({ vertex }) => vertex);
    expect(places).toEqual([...places].sort((one, other) => other - one));
  });

  it.each(placeable)('turns the glass of %s with the lens: its first vertex stands on the ring', (name) => {
    const { positions } = chain(name, true);
    const glass = glassPositions(positions, 2);
    expect(glass.surfaces.at(-1)!.vertex).toEqual(closeTo(positions.parts[2]!.from, rounding));
  });

  it.each(placeable)(
    'brings exact rays of %s to the image of paraxial ones, either way round, stopped far down',
    (name) => {
      for (const reversed of [false, true]) {
        const { positions } = chain(name, reversed);
        const rays = glassRays(positions, 2, { field: 0, count: 3 });
        for (const { points, lost } of rays) {
          expect(lost).toBeNull();
          expect(points[0]).toEqual({ z: closeTo(positions.sharpPlane!, rounding) as unknown, y: 0 });
          const end = points.at(-1)!;
          expect(end.z).toEqual(closeTo(0, rounding));
          expect(end.y).toEqual(closeTo(0, { absolute: 0.05, because: 'rays at f/64 keep close to the axis' }));
        }
      }
    },
  );

  it('follows the setting, up to the closest that the trace finds', () => {
    const lens = lensOfPrescription(prescriptions['macro-200-us-5751485'], mount);
    const closest = closestMagnification(lens);
    const places = (at: number) => {
      const positions = rigPositions(assembleRig([camera, on(lens, { at, fNumber: 64 })]));
      const { surfaces } = glassPositions(positions, 1);
      expect(surfaces[0]!.vertex).toEqual(closeTo(positions.parts[1]!.to, rounding));
      const rays = glassRays(positions, 1, { field: 0, count: 3 });
      for (const { points } of rays) {
        expect(points.at(-1)!.y).toEqual(
          closeTo(0, { absolute: 0.05, because: 'rays at f/64 keep close to the axis' }),
        );
      }
      return surfaces.map(({ vertex }) => vertex);
    };
    expect(places(closest)).not.toEqual(places(closest / 2));
  });

  it('refuses glass where no lens is, and exact rays where there is other glass', () => {
    const { lens, positions } = chain(placeable[0]!, false);
    expect(() => glassPositions(positions, 1)).toThrow(/only a lens/);
    const unlisted = rigPositions(assembleRig([camera, on(lens50)]));
    expect(() => glassPositions(unlisted, 1)).toThrow(/part 1, lens: its surfaces are not known/);
    const coupled = rigPositions(assembleRig([camera, on(lens), on(lens50, { reversed: true })]));
    expect(() => glassRays(coupled, 1, { field: 0, count: 3 })).toThrow(/alone/);
  });
});
