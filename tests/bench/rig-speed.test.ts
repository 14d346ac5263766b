import { expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { byHand, chain } from './rig-speed.ts';

it.each([1, 12, 40])(
  'what is multiplied out by hand is what the engine answers, number for number: %d mm',
  (extension) => {
    const rig = assembleRig(chain(extension));
    expect(byHand(rig)).toEqual(solveRig(rig));
  },
);
