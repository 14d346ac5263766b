import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { wcagContrast } from 'culori';
import { describe, expect, it } from 'vitest';
import { root } from '#tests/support/run.ts';

/** One rule as it is written, and what of it has a colour. */
interface Rule {
  readonly file: string;
  readonly place: string;
  readonly selector: string;
  readonly text: string | undefined;
  readonly surface: string | undefined;
  /** What a shape is filled with, or a letter. */
  readonly fill: string | undefined;
}

const withoutRemarks = (css: string) => css.replace(/\/\*[^]*?\*\//g, '');

/** All rules of all style sheets and components; what is printed has a palette of its own. */
const rules = globSync('{site,lessons}/**/*.{css,svelte,astro}', { cwd: root })
  .filter((file) => !/palette\.css$|print\.css$|paper\.css$/.test(file))
  .flatMap((file): Rule[] => {
    const source = readFileSync(join(root, file), 'utf8');
    const css = file.endsWith('.css')
      ? source
      : [...source.matchAll(/<style[^>]*>([^]*?)<\/style>/g)].map(([, style]) => style).join('\n');
    return [...withoutRemarks(css).matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(([, selector = '', body = '']) => {
      const valueOf = (property: string) =>
        [...body.matchAll(new RegExp(`(?:^|[;\\s])${property}:\\s*([^;]+)`, 'g'))].at(-1)?.[1]?.trim();
      const isWritten = /(?:^|[\s(,>])(?:text|tspan)\b|\.quiet|\.note|\.caution/.test(selector);
      return {
        file,
        place: `${file}: ${selector.trim().replace(/\s+/g, ' ')}`,
        selector,
        text: valueOf('color') ?? (isWritten ? valueOf('fill') : undefined),
        surface: valueOf('background') ?? valueOf('background-color'),
        fill: valueOf('fill'),
      };
    });
  });

/** The variables of one theme, as the style sheet has them for whoever has chosen it by hand. */
function variablesOf(theme: string): ReadonlyMap<string, string> {
  const css = withoutRemarks(readFileSync(join(root, 'site/styles/palette.css'), 'utf8'));
  const block = new RegExp(`\\[data-theme='${theme}'\\] \\{([^}]*)\\}`).exec(css)![1]!;
  return new Map([...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, hex]) => [name!, hex!]));
}

/** The variables that a value is made of: a quantity's mark is any of the six. Undefined for what is no colour of the palette. */
function namesIn(value: string | undefined): readonly string[] | undefined {
  if (value === undefined || !/^var\(--[\w-]+(?:, var\(--[\w-]+\))?\)$/.test(value)) return undefined;
  const names = [...value.matchAll(/--([\w-]+)/g)].map(([, name]) => name!);
  return names.flatMap((name) => (name === 'mark' ? [1, 2, 3, 4, 5, 6].map((hue) => `mark-${hue}`) : [name]));
}

/** Parts that are seen and have no text on them: thumbs, bars, ticks, boxes. */
const isMark = ({ selector }: Rule) => /thumb|track|progress|checkbox|\.tick/.test(selector);

const [written, seen] = [4.5, 3];

describe.each(['light', 'dark'])('by the %s palette of the style sheet', (theme) => {
  const variables = variablesOf(theme);
  const contrast = (one: string, other: string) => wcagContrast(variables.get(one) ?? '', variables.get(other) ?? '');
  /** Pairs of names with too little between them. */
  const faint = (colours: readonly string[], surfaces: readonly string[], least: number) =>
    colours.flatMap((one) =>
      surfaces.filter((other) => !(contrast(one, other) >= least)).map((other) => `--${one} on --${other}`),
    );
  const known = (names: readonly string[] | undefined) => names?.filter((name) => variables.has(name)) ?? [];

  /** What text without a ground of its own may stand on. */
  const surfaces = [
    ...new Set(rules.flatMap((rule) => (isMark(rule) || rule.text !== undefined ? [] : known(namesIn(rule.surface))))),
  ];

  it('stands no text on anything but ground, paper and highlight, unless it says its own colour', () => {
    expect(surfaces.sort()).toEqual(['ground', 'lit', 'paper']);
    expect(faint(['ink'], surfaces, written)).toEqual([]);
  });

  it('has every colour that text is given 4.5:1 on all of these', () => {
    const coloured = rules.filter(({ text, surface }) => text !== undefined && namesIn(surface) === undefined);
    expect(coloured.length).toBeGreaterThan(60);
    const faults = coloured.flatMap(({ place, text }) =>
      faint(known(namesIn(text)), surfaces, written).map((pair) => `${place}: ${pair}`),
    );
    expect(faults).toEqual([]);
  });

  it('has every pair of text and ground that one rule gives 4.5:1', () => {
    const pairs = rules.filter(({ text, surface }) => namesIn(text) && namesIn(surface));
    expect(pairs.length).toBeGreaterThan(8);
    const faults = pairs.flatMap(({ place, text, surface }) =>
      faint(known(namesIn(text)), known(namesIn(surface)), written).map((pair) => `${place}: ${pair}`),
    );
    expect(faults).toEqual([]);
  });

  it('has what is a part of a control and no text 3:1 on ground and paper', () => {
    const parts = rules.filter((rule) => isMark(rule) && rule.text === undefined);
    const names = parts.flatMap(({ surface }) => known(namesIn(surface)));
    expect(names.length).toBeGreaterThan(8);
    const drawn = names.filter((name) => !surfaces.includes(name));
    expect(faint(drawn, ['ground', 'paper'], seen)).toEqual([]);
  });
});

it('gives text a colour that is the same in both palettes only where a ground of such a colour is drawn for it', () => {
  const isFixed = (value: string | undefined) => value !== undefined && /^#[0-9a-f]{3,6}$/.test(value);
  const fixed = rules.filter(({ text }) => isFixed(text));
  expect(fixed.length).toBeGreaterThan(0);
  const bare = fixed.filter(({ file, text }) => {
    const grounds = rules.filter((rule) => rule.file === file).flatMap(({ surface, fill }) => [surface, fill]);
    return !grounds.some((ground) => isFixed(ground) && wcagContrast(text!, ground!) >= written);
  });
  expect(bare.map(({ place }) => place)).toEqual([]);
  // All else is of the palette, the system's, or what stands around it.
  const others = rules.flatMap(({ text }) => (text === undefined || isFixed(text) || namesIn(text) ? [] : [text]));
  expect(others.filter((text) => !/^(?:inherit|currentcolor|transparent|HighlightText)$/i.test(text))).toEqual([]);
});

it('gives the dark palette by the system as by hand', () => {
  const css = readFileSync(join(root, 'site/styles/palette.css'), 'utf8');
  const system = /prefers-color-scheme: dark\) \{\s*[^{]*\{([^}]*)\}/.exec(css)![1]!;
  const bySystem = [...system.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]);
  expect(bySystem).toEqual([...variablesOf('dark')]);
});
