import { readChainBy, type ReadOwn } from '#site/chain/chain-from-text.ts';
import { firstChain } from '#site/chain/chain.ts';
import { readAddress } from '#site/state/address.ts';
import { conditionNames, rangeOfCondition } from './condition-fields.ts';
import { usualConditions } from './conditions.ts';
import { layers, usualLayers, type Layer } from './drawn.ts';
import type { Alike } from './match.ts';
import type { BenchState } from './state.ts';

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
