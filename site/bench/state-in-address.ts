import { plainNumber } from '#core/quantity/plain-number.ts';
import { addressOfChain } from '#site/chain/chain-in-text.ts';
import { conditionNames } from './condition-fields.ts';
import { usualConditions, type Conditions } from './conditions.ts';
import { usualLayers } from './drawn.ts';
import type { BenchState } from './state.ts';

/** The conditions that are not the usual ones, as a query says them. */
const saidOf = (conditions: Conditions): readonly string[] =>
  conditionNames.flatMap((name) => {
    const value = conditions[name];
    const isUsual = value === undefined || value === (usualConditions as Record<string, number>)[name];
    return isUsual ? [] : [`${name}=${plainNumber(value)}`];
  });

/** The query with which the field card takes over what stands on the bench. */
export function queryForCard({ chain, beside, conditions }: BenchState): string {
  const chains = [chain, ...(beside ? [beside] : [])].map((one) => `chain=${addressOfChain(one)}`);
  return `?${[...chains, ...saidOf(conditions)].join('&')}`;
}

/** The query that `read-state.ts` reads back as this state. */
export function writeState({ chain, beside, equal, conditions, shown }: BenchState): string {
  const said = [`chain=${addressOfChain(chain)}`];
  if (beside) said.push(`beside=${addressOfChain(beside)}`);
  if (beside && equal) said.push(`equal=${equal}`);
  said.push(...saidOf(conditions));
  if (shown.join() !== usualLayers.join()) said.push(`show=${shown.join(',')}`);
  return `?${said.join('&')}`;
}
