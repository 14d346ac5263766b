import { expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { byHand, chain, tracedChain } from './rig-speed.ts';

it.each([1, 12, 40])(
  'what is multiplied out by hand is what the engine answers, number for number: %d mm',
  (extension) => {
    const rig = assembleRig(chain(extension));
    expect(byHand(rig)).toEqual(solveRig(rig));
  },
);

it('what is traced in the bench is the lens it says, sharp at the magnification it is set to', () => {
  for (const at of [0.2, 0.7]) {
    expect(solveRig(assembleRig(tracedChain(at)))).toMatchObject({ magnification: expect.closeTo(at, 10) });
  }
});
