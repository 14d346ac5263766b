import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { holdings } from '#site/state/crate-light.ts';

/** What answers lean on besides the chain: the light, the subject, how the camera is held. Where they begin. */
const starts = {
  wavelength: 0.00055,
  'subject-depth': 3,
  overlap: 0.3,
  'shake-rate': holdings.elbows['shake-rate'],
  'sideways-speed': holdings.elbows['sideways-speed'],
  'subject-speed': quantityOf('subject-speed').least,
  stabilisation: 0,
  sway: holdings.elbows.sway,
} as const satisfies Partial<Record<QuantityName, number>>;

export type ConditionName = keyof typeof starts | 'circle-of-confusion';

/** Base units by id; without a circle of confusion it is the camera's usual one. */
export type Conditions = Readonly<Record<keyof typeof starts, number>> & {
  readonly 'circle-of-confusion'?: number;
};

export const usualConditions: Conditions = starts;
