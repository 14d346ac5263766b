/// <reference types="vite/client" />
import type { Formula } from '#core/quantity/formula.ts';

/** A formula under the name of its file. */
export interface NamedFormula {
  /** `effective-f-number-with-converter` */
  readonly id: string;
  readonly formula: Formula<never>;
}

export interface FormulaTopic {
  /** The topic's folder in the core. */
  readonly id: string;
  readonly heading: string;
  readonly formulas: readonly NamedFormula[];
}

/** In the order of the course; a topic without a heading of its own follows under its folder's name. */
const headings: Readonly<Record<string, string>> = {
  gaussian: 'The lens: image, distance, light',
  rig: 'Chains: rings, close-up lenses, reversed lenses, converters',
  depth: 'Depth of field',
  stack: 'Stacks: step, frames, scale, time',
  wave: 'Diffraction',
  exposure: 'Exposure, flash and holding still',
  light: 'Light on the subject',
};

const files = import.meta.glob<Record<string, unknown>>('../core/*/*.formula.ts', { eager: true });

/** Every formula of the core, by topic. Throws where a formula file exports no formula. */
export function formulaTopics(): readonly FormulaTopic[] {
  const topics = new Map<string, NamedFormula[]>();
  for (const [path, exports] of Object.entries(files)) {
    const [topic, file] = path.split('/').slice(-2) as [string, string];
    const formula = Object.entries(exports).find(([name]) => name.endsWith('Formula'))?.[1];
    if (formula === undefined) throw new Error(`${path}: a formula file exports its formula as <name>Formula.`);
    const named = { id: file.replace('.formula.ts', ''), formula: formula as Formula<never> };
    topics.set(topic, [...(topics.get(topic) ?? []), named]);
  }
  const rank = (id: string) => [...Object.keys(headings), id].indexOf(id);
  return [...topics]
    .map(([id, formulas]) => ({ id, heading: headings[id] ?? id, formulas }))
    .sort((one, other) => rank(one.id) - rank(other.id));
}
