import { plainNumber, readPlainNumber } from '#core/quantity/plain-number.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { conditionNames, rangeOfCondition } from '#site/bench/condition-fields.ts';
import { usualConditions, type Conditions } from '#site/bench/conditions.ts';
import { chainInAddress, readChain } from '#site/chain/chain-text.ts';
import { firstChain, type Chain } from '#site/chain/chain.ts';
import { readAddress } from '#site/state/address.ts';
import { lineNames, type LineName } from './card.ts';
import { papers, sizes, type Paper, type Size } from './size.ts';
import { units, type Unit } from './words.ts';

/** All that the page is set to; its address says it whole. */
export interface CardState {
  /** At least one. */
  readonly chains: readonly Chain[];
  /** Blank where chains stay as they are set. */
  readonly magnifications: readonly number[];
  readonly fNumbers: readonly number[];
  readonly lines: readonly LineName[];
  readonly unit: Unit;
  readonly size: Size;
  readonly paper: Paper;
  /** Each chain has a card of its own. */
  readonly apart: boolean;
  readonly conditions: Conditions;
}

/** So many chains, magnifications and f-numbers a card takes. */
export const mostChains = 12;
export const mostMagnifications = 12;
export const mostFNumbers = 16;

export const usualFNumbers: readonly number[] = [2.8, 4, 5.6, 8, 11, 16, 22];

export const firstState = (): CardState => ({
  chains: [firstChain()],
  magnifications: [],
  fNumbers: usualFNumbers,
  lines: lineNames,
  unit: 'mm',
  size: 'a6',
  paper: 'a4',
  apart: false,
  conditions: usualConditions,
});

const labelled = <Key extends string>(options: Readonly<Record<Key, { readonly label: string }>>) => options;

/** Reads all of it from an address; what cannot be used is named, and everything else is kept. */
export function readState(search: string): { readonly state: CardState; readonly notices: readonly string[] } {
  const asked = new URLSearchParams(search);
  const usual = firstState();
  const { inputs, choices, notices } = readAddress(search, {
    inputs: Object.fromEntries(conditionNames.map((name) => [name, rangeOfCondition(name)])),
    choices: {
      unit: { label: 'units', options: labelled(units) },
      size: { label: 'size', options: labelled(sizes) },
      paper: { label: 'paper', options: labelled(papers) },
      each: {
        label: 'chains',
        options: { together: { label: 'on one card' }, apart: { label: 'on cards of their own' } },
      },
    },
  });
  const said = notices.map(({ text }) => text);
  const texts = asked.getAll('chain');
  if (texts.length > mostChains) said.push(`A card takes ${mostChains} chains; the link’s others are left out.`);
  const chains = texts.slice(0, mostChains).map((text) => {
    const reading = readChain(text);
    said.push(...reading.notices);
    return reading.chain;
  });
  const list = (name: string, of: 'magnification' | 'f-number', most: number): readonly number[] | undefined => {
    const text = asked.get(name);
    if (text === null) return undefined;
    const { least, most: greatest } = quantityOf(of);
    const values = text.split(',').map(readPlainNumber);
    if (values.every((one) => one !== undefined && one >= least && one <= greatest) && values.length <= most)
      return sorted(values as readonly number[]);
    said.push(
      `The link lists “${text.slice(0, 24)}” as ${quantityOf(of).name}s. It takes up to ${most} plain numbers from ${plainNumber(least)} to ${plainNumber(greatest)} with commas between them. The usual ones are shown.`,
    );
    return undefined;
  };
  const lines = asked.get('lines')?.split(',');
  const strange = lines?.find((name) => !(lineNames as readonly string[]).includes(name));
  if (strange !== undefined)
    said.push(`The link asks for a line “${strange.slice(0, 24)}”. A card has ${lineNames.join(', ')}.`);
  const known = lineNames.filter((name) => lines?.includes(name));
  return {
    state: {
      chains: chains.length > 0 ? chains : usual.chains,
      magnifications: list('at', 'magnification', mostMagnifications) ?? usual.magnifications,
      fNumbers: list('f', 'f-number', mostFNumbers) ?? usual.fNumbers,
      lines: known.length > 0 ? known : usual.lines,
      unit: (choices['unit'] as Unit | undefined) ?? usual.unit,
      size: (choices['size'] as Size | undefined) ?? usual.size,
      paper: (choices['paper'] as Paper | undefined) ?? usual.paper,
      apart: choices['each'] === 'apart',
      conditions: { ...usualConditions, ...inputs },
    },
    notices: said,
  };
}

const sorted = (values: readonly number[]) => [...new Set(values)].sort((one, other) => one - other);

/** The query that {@link readState} reads back as this state. */
export function writeState(state: CardState): string {
  const usual = firstState();
  const said = state.chains.map((chain) => `chain=${chainInAddress(chain)}`);
  if (state.magnifications.length > 0) said.push(`at=${state.magnifications.map(plainNumber).join(',')}`);
  if (state.fNumbers.join() !== usual.fNumbers.join()) said.push(`f=${state.fNumbers.map(plainNumber).join(',')}`);
  if (state.lines.join() !== usual.lines.join()) said.push(`lines=${state.lines.join(',')}`);
  for (const name of ['unit', 'size', 'paper'] as const)
    if (state[name] !== usual[name]) said.push(`${name}=${state[name]}`);
  if (state.apart) said.push('each=apart');
  for (const name of conditionNames) {
    const value = state.conditions[name];
    if (value !== undefined && value !== (usualConditions as Record<string, number>)[name])
      said.push(`${name}=${plainNumber(value)}`);
  }
  return `?${said.join('&')}`;
}

/** Numbers as somebody types several: `0.5 1:1 2×`, `f/8 f/11`, with spaces or semicolons between them; in words what cannot be one. */
export function readList(of: 'magnification' | 'f-number', text: string, most: number): readonly number[] | string {
  const pieces = text.split(/[\s;]+|,\s+|,$/).filter((piece) => piece !== '');
  if (pieces.length > most) return `A card takes ${most} of them at most. Nothing has changed.`;
  const values: number[] = [];
  for (const piece of pieces) {
    const reading = readQuantity(of, piece);
    if (reading.kind === 'blank') continue;
    if (reading.kind !== 'value') return reading.message;
    values.push(reading.value);
  }
  return sorted(values);
}
