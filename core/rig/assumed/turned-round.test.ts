import { describe, expect, it } from 'vitest';
import { assembleRig } from '../assemble.ts';
import type { Lens } from '../lens.ts';
import { solveRig } from '../solve.ts';
import type { KnownLens } from './known-lens.ts';
import { possibleLenses } from './possible-lenses.ts';
import { spanOver } from './span-over.ts';
import { turnedRound } from './turned-round.ts';
import { usualRearProtrusion } from './usual-rear-protrusion.ts';

const known: KnownLens = {
  focalLength: 58,
  registerDistance: 44,
  focusing: 'whole',
  closestMagnification: 0.15,
  principalSeparation: -4,
  barrelLength: 40,
  pupilMagnification: 1,
  apertureControl: 'lens',
};

/** Room before a lens turned round on a ring of 4 mm. */
function room(lens: Lens): number | undefined {
  const solved = solveRig(
    assembleRig([
      { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 },
      { part: 'ring', extension: 4 },
      { part: 'lens', lens, focusMagnification: 0, fNumber: 8, reversed: true },
    ]),
  );
  return 'workingDistance' in solved ? solved.workingDistance : undefined;
}

describe('a lens turned round', () => {
  it('of which the part behind its mount is not known has it assumed, and less room or more by it', () => {
    const lenses = possibleLenses(known);
    expect(lenses.extremes).toHaveLength(1);
    expect(lenses.assumed).toEqual([]);
    const turned = turnedRound(lenses);
    expect(turned.assumed).toEqual(['rear-protrusion']);
    const { least, usual, most } = spanOver(turned, room)!;
    const bare = room(lenses.usual)!;
    expect([bare - most, bare - usual!, bare - least]).toEqual([
      usualRearProtrusion.least,
      expect.closeTo(usualRearProtrusion.usual, 10),
      expect.closeTo(usualRearProtrusion.most, 10),
    ]);
  });

  it('of which it is known is taken by that, 0 too', () => {
    for (const rearProtrusion of [0, 10.8]) {
      const lenses = possibleLenses({ ...known, rearProtrusion });
      expect(turnedRound(lenses)).toBe(lenses);
    }
  });

  it('has it beside everything else that is open', () => {
    const lenses = possibleLenses({ ...known, principalSeparation: undefined!, pupilMagnification: undefined! });
    const { assumed, extremes, usual } = turnedRound(lenses);
    expect(assumed).toEqual([...lenses.assumed, 'rear-protrusion']);
    expect(extremes).toContainEqual(usual);
    for (const lens of lenses.extremes) {
      for (const rearProtrusion of [usualRearProtrusion.least, usualRearProtrusion.most]) {
        expect(extremes).toContainEqual({ ...lens, rearProtrusion });
      }
    }
  });
});
