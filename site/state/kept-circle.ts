import { quantityOf } from '#core/quantity/vocabulary.ts';
import { stored } from './stored.ts';

const name = 'circle-of-confusion';
const { least, most } = quantityOf(name);

/** The circle of confusion that the reader has set, mm; null where it is the body's. It goes with the reader from lesson to lesson. */
export const ownCircle = stored<number | null>({
  key: name,
  words: 'circle of confusion of your own',
  renewed: 'Set it again where you need it.',
  fallback: null,
  isValid: (value): value is number | null =>
    value === null || (typeof value === 'number' && value >= least && value <= most),
});
