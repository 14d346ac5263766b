import { flashUnderexposureFormula } from '#core/exposure/flash-underexposure.formula.ts';
import { numberFamily } from '#core/practice/family.ts';

const first = numberFamily({
  id: 'first',
  asks: 'flash-underexposure',
  question: '⟨… the question⟩ {effective-f-number}, {flash.effective-f-number}',
  givens: (draw) => ({ 'effective-f-number': draw.pick([20]), 'flash.effective-f-number': draw.pick([20]) }),
  tolerance: { relative: 0.02, because: '⟨… why that far and no farther⟩' },
  // ⟨… at least two wrong routes that learners take, each with its id, its value and why that number came out⟩
  mistakes: [],
  hint: '⟨… the next thought to have⟩',
  working: [{ formula: flashUnderexposureFormula, note: '⟨… what is done and why⟩' }],
});

/** ⟨… four families or more⟩ */
export const families = [first];
