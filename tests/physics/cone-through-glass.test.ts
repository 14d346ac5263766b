import { describe, expect, it } from 'vitest';
import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { magnificationOffPlaneOfCone } from '#core/depth/blur-of-cone.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { exactRay, heightAt } from '#core/rig/exact-trace.ts';
import { lensInUse } from '#core/rig/lens-in-use.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { glassPoints, glassPupils } from '#core/rig/paraxial-trace.ts';
import { reversedPrescription } from '#core/rig/reversed-prescription.ts';
import { solveRig } from '#core/rig/solve.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, on, ring } from '#tests/support/rig-parts.ts';
import { prescriptions, type PrescriptionName } from '#tests/support/prescriptions.ts';
import { rootBetween } from '#tests/support/root-between.ts';

const mount = { registerDistance: 44, apertureControl: 'lens' } as const;
const fNumber = 90;

interface Pair {
  readonly onCamera: PrescriptionName;
  readonly turnedRound: PrescriptionName;
  readonly gap: number;
  /** Whether the stop of the first is imaged in front of the subject. */
  readonly inFront: boolean;
}

const pairs: readonly Pair[] = [
  { onCamera: 'double-gauss-100', turnedRound: 'triplet-50', gap: 60, inFront: false },
  { onCamera: 'double-gauss-100', turnedRound: 'triplet-50', gap: 5, inFront: false },
  { onCamera: 'triplet-50', turnedRound: 'double-gauss-100', gap: 5, inFront: true },
];

/** A published lens, turned round, so far before another one at infinity, all in one list of surfaces. */
function coupled({ onCamera, turnedRound, gap }: Pair) {
  const [mainGlass, frontGlass] = [prescriptions[onCamera], prescriptions[turnedRound]];
  const [main, front] = [lensOfPrescription(mainGlass, mount), lensOfPrescription(frontGlass, mount)];
  const solved = solveRig(
    assembleRig([camera, on(main, { fNumber }), ring(gap), on(front, { fNumber: 4, reversed: true })]),
  );
  if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
  const turned = reversedPrescription(frontGlass);
  const toSensor = glassPoints(mainGlass.surfaces).backFocus;
  const surfaces = [
    ...turned.surfaces.with(-1, { ...turned.surfaces.at(-1)!, thickness: gap }),
    ...mainGlass.surfaces.with(-1, { ...mainGlass.surfaces.at(-1)!, thickness: toSensor }),
  ];
  const stop = turned.surfaces.length + mainGlass.stop;
  const stopRadius =
    lensInUse(main, 0, fNumber).entrancePupil / glassPupils(mainGlass.surfaces, mainGlass.stop).entranceOverStop / 2;
  const before = surfaces.slice(0, stop);
  const toStop = before.reduce((sum, { thickness }) => sum + thickness, 0);
  const sensorAt = surfaces.reduce((sum, { thickness }) => sum + thickness, 0);
  const sharpAt = -glassPoints(turned.surfaces).frontFocus;
  /** Where on the sensor the ray ends that leaves a point behind the sharp plane and passes the stop at *inStop*. */
  const landing = (offset: number, across: number, inStop: number) => {
    const from = { z: -sharpAt - offset, y: across };
    const angle = rootBetween(-0.12, 0.12, (tried) => heightAt(exactRay(before, from, tried), toStop) - inStop);
    return heightAt(exactRay(surfaces, from, angle), sensorAt);
  };
  return { solved, landing, stopRadius };
}

describe.each(pairs)(
  '$turnedRound turned round on $onCamera, $gap mm apart, by exact rays through their glass',
  (pair) => {
    const { solved, landing, stopRadius } = coupled(pair);

    it('blurs by the circle of confusion at both limits', () => {
      const c = 0.05;
      const { nearLimit, farLimit } = limitsOfCone(solved, c);
      for (const offset of [-nearLimit, farLimit]) {
        const blur = Math.abs(landing(offset, 0, stopRadius) - landing(offset, 0, -stopRadius));
        expect(blur).toEqual(closeTo(c, { relative: 0.01, because: 'spherical aberration that is left at f/90' }));
      }
    });

    it('shows details off the plane as large as the chief ray does', () => {
      for (const offset of [-2, 0, 3]) {
        const size = Math.abs(landing(offset, 0.05, 0)) / 0.05;
        const distortion = { relative: 1e-4, because: 'distortion, a twentieth of a millimetre off the axis' };
        expect(magnificationOffPlaneOfCone({ ...solved, offset })).toEqual(closeTo(size, distortion));
      }
    });

    it('is seen from the side on which the stop is imaged', () => {
      expect(Math.abs(solved.inverseEntrancePupilDistance)).toBeGreaterThan(0.001);
      expect(solved.inverseEntrancePupilDistance > 0).toBe(pair.inFront);
    });
  },
);
