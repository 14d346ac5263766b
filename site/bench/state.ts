import { plainNumber } from '#core/quantity/plain-number.ts';
import { addressOfChain, readChainBy, type ReadOwn } from '#site/chain/chain-in-text.ts';
import { firstChain, type Chain } from '#site/chain/chain.ts';
import { readAddress } from '#site/state/address.ts';
import { conditionNames, rangeOfCondition, usualConditions, type Conditions } from './conditions.ts';
import { layers, usualLayers, type Layer } from './drawn.ts';
import type { Alike } from './match.ts';

/** All that the page is set to; its address says it whole. */
export interface BenchState {
  readonly chain: Chain;
  /** A second chain, to compare with. */
  readonly beside?: Chain;
  /** What the second is set to have alike with the first, if anything. */
  readonly equal?: Alike;
  readonly conditions: Conditions;
  readonly shown: readonly Layer[];
}

export const firstState = (): BenchState => ({
  chain: firstChain(),
  conditions: usualConditions,
  shown: usualLayers,
});

const equalities: Readonly<Record<Alike, { readonly label: string }>> = {
  magnification: { label: 'equal magnification' },
  'working-distance': { label: 'equal distance' },
};

/** Reads all of it from an address; what cannot be used is named, and everything else is kept. *readOwn* is needed where parts are spelled out. */
export function readState(
  search: string,
  readOwn?: ReadOwn,
): { readonly state: BenchState; readonly notices: readonly string[] } {
  const asked = new URLSearchParams(search);
  const { inputs, choices, notices } = readAddress(search, {
    inputs: Object.fromEntries(conditionNames.map((name) => [name, rangeOfCondition(name)])),
    choices: { equal: { label: 'alike', options: equalities } },
  });
  const said = notices.map(({ text }) => text);
  const read = (name: 'chain' | 'beside') => {
    const text = asked.get(name);
    if (text === null) return undefined;
    const reading = readChainBy(text, readOwn);
    said.push(...reading.notices);
    return reading.chain;
  };
  const beside = read('beside');
  const shown = asked.get('show');
  const names = shown?.split(',') ?? [];
  const strange = names.find((name) => name !== '' && !Object.hasOwn(layers, name));
  if (strange !== undefined) {
    said.push(
      `The link asks for “${strange.slice(0, 24)}” to be drawn. What can be drawn is ${Object.keys(layers).join(', ')}.`,
    );
  }
  return {
    state: {
      chain: read('chain') ?? firstChain(),
      ...(beside && { beside }),
      ...(beside && choices['equal'] !== undefined && { equal: choices['equal'] as Alike }),
      conditions: { ...usualConditions, ...inputs },
      shown: shown === null ? usualLayers : (Object.keys(layers) as Layer[]).filter((name) => names.includes(name)),
    },
    notices: said,
  };
}

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

/** The query that {@link readState} reads back as this state. */
export function writeState({ chain, beside, equal, conditions, shown }: BenchState): string {
  const said = [`chain=${addressOfChain(chain)}`];
  if (beside) said.push(`beside=${addressOfChain(beside)}`);
  if (beside && equal) said.push(`equal=${equal}`);
  said.push(...saidOf(conditions));
  if (shown.join() !== usualLayers.join()) said.push(`show=${shown.join(',')}`);
  return `?${said.join('&')}`;
}
