import { findComb, noCombWords } from '#core/ruler/find-comb.ts';
import type { Answer } from '#tests/support/reference-case.ts';

export const ours = ({ light }: { light: readonly number[] }, id: string): Answer => {
  const comb = findComb(Float64Array.from(light));
  if (comb.outcome === 'no comb') throw new Error(noCombWords(comb));
  const { cycles, drift, variances } = comb;
  return id.startsWith('even-spectrum') ? { cycles } : { cycles, drift, error: Math.sqrt(variances.cycles) };
};
