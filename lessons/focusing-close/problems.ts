import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { numberFamily } from '#core/practice/family.ts';

const first = numberFamily({
  id: 'first',
  asks: 'focus-distance',
  question: '⟨… the question⟩ {focal-length}, {magnification}, {principal-separation}',
  givens: (draw) => ({
    'focal-length': draw.pick([60]),
    magnification: draw.pick([0.6]),
    'principal-separation': draw.pick([50]),
  }),
  tolerance: { relative: 0.02, because: '⟨… why that far and no farther⟩' },
  // ⟨… at least two wrong routes that learners take, each with its id, its value and why that number came out⟩
  mistakes: [],
  hint: '⟨… the next thought to have⟩',
  working: [{ formula: focusDistanceFormula, note: '⟨… what is done and why⟩' }],
});

/** ⟨… four families or more⟩ */
export const families = [first];
