import { describe, expect, it } from 'vitest';
import { counted, wholeDeal } from './counted.ts';
import { keepersOf, keepersSoFar, type Rocking } from './rocking-layout.ts';

const state: Rocking = {
  sway: 1,
  focusOffset: 0,
  nearLimit: 0.5,
  farLimit: 0.5,
  closed: { nearLimit: 1, farLimit: 1 },
};
const expected = { share: 0.383, shareInWords: '38 %', closedTo: 'f/16' };

describe('what is said of the frames', () => {
  it('is of those that are drawn, as the hand has taken them', () => {
    for (const taken of [0, 5, 39]) {
      const midway = { ...state, turn: 1, taken };
      expect(counted(midway, expected)).toMatchObject({
        kept: `${keepersOf(midway, midway)} of ${taken} in focus`,
        keptClosed: `dashed, f/16: ${keepersOf(midway, midway.closed)} of ${taken}`,
      });
      expect(counted(midway, expected).soFar[0]).toBe(
        `of all ${40 + taken}, as set now: ${keepersSoFar(midway, midway)} in focus`,
      );
    }
    expect(counted(state, expected)).toEqual({
      kept: `${keepersOf(state, state)} of these 40 in focus`,
      soFar: ['computed: 38 %, so 15 ± 3 of 40'],
      keptClosed: `dashed, f/16: ${keepersOf(state, state.closed)} of 40`,
    });
  });

  it('is of a whole deal on paper, however few of it are taken', () => {
    const midway = { ...state, turn: 1, taken: 5 };
    const onPaper = wholeDeal(midway);
    expect(counted(onPaper, expected)).toEqual(counted({ ...midway, taken: 40 }, expected));
    expect(counted(onPaper, expected).soFar[0]).toMatch(/^of all 80, /);
  });
});
