import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { solveRig } from './solve.ts';
import { stopsOf } from './stops.ts';

const coupled = (main: number, front: number) =>
  assembleRig([camera, on(lens50, { fNumber: main }), ring(5), on(lens28, { fNumber: front, reversed: true })]);
const rounding = { relative: 1e-12, because: 'rounding' };

describe('stopsOf', () => {
  it('lists both lenses of a coupled pair, the one that limits first', () => {
    const stops = stopsOf(coupled(2, 8));
    expect(stops.map(({ part }) => part)).toEqual([3, 1]);
    // The main lens at infinity fills its own cone; the reversed one, at infinity too, lets a beam through as wide as its entrance pupil.
    expect(stops[1]?.effectiveFNumber).toEqual(closeTo(2, rounding));
    expect(stops[0]?.effectiveFNumber).toEqual(closeTo(50 / (28 / 8), rounding));
  });

  it('agrees with the solved rig on which one limits and by how much, whichever it is', () => {
    for (const rig of [coupled(2, 8), coupled(16, 2.8)]) {
      const solved = solveRig(rig);
      expect(solved).toMatchObject({ limitedBy: stopsOf(rig)[0]?.part });
      expect(solved).toMatchObject({ effectiveFNumber: stopsOf(rig)[0]?.effectiveFNumber });
    }
  });

  it('counts a bare rim of glass among them', () => {
    const rig = assembleRig([
      camera,
      ring(36),
      on(lens50),
      { part: 'close-up lens', closeUpPower: 4, clearAperture: 2 },
    ]);
    expect(stopsOf(rig)[0]).toMatchObject({ part: 3, fNumber: null, apertureControl: 'fixed' });
  });
});
