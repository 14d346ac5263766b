import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { Range } from '#site/state/address.ts';
import { usualConditions, type ConditionName } from './conditions.ts';

/** Which condition stands in which group of answers. */
export const conditionsOf: Readonly<Record<string, readonly ConditionName[]>> = {
  depth: ['circle-of-confusion', 'subject-depth', 'overlap'],
  diffraction: ['wavelength'],
  movement: ['shake-rate', 'sideways-speed', 'subject-speed', 'stabilisation', 'sway'],
};

/** In which range each is accepted. */
export function rangeOfCondition(name: ConditionName): Range {
  const { least, most } = quantityOf(name);
  return name === 'overlap' ? { least: 0, most: 0.9 } : { least, most };
}

/** All of them, in the order in which an address says them. */
export const conditionNames = [...Object.keys(usualConditions), 'circle-of-confusion'] as readonly ConditionName[];
