import { globSync, readFileSync } from 'node:fs';
import { dirname, join, posix, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '#tests/support/run.ts';
import { exceptions, layers, type Layer } from './directions.ts';

/** Every specifier of an import, static or dynamic, of an export from elsewhere, of a glob and of a stylesheet's import. */
const specifiers =
  /(?:\bimport\s|\bfrom\s|\bimport\s*\(\s*|\bimport\.meta\.glob(?:<[^(]*>)?\(\s*|@import\s(?:url\()?)\s*(['"])([^'"\n]+)\1/g;

function filesOf(layer: Layer): string[] {
  const found = globSync(`${layer.folder}/**/*.{ts,svelte,astro,mdx,css}`, { cwd: root });
  return found.map((file) => file.split(sep).join('/')).sort();
}

function importsOf(file: string): string[] {
  return [...readFileSync(join(root, file), 'utf8').matchAll(specifiers)].map((match) => match[2] as string);
}

const isPackage = (specifier: string) => !/^[#./]/.test(specifier);

/** `core`, `site`, `lessons/extension`, `tests`: where in the project an import leads. */
function destination(file: string, specifier: string): string {
  const path = specifier.startsWith('.') ? posix.join(dirname(file), specifier) : specifier.replace(/^[#/]/, '');
  const [folder = '', name = ''] = path.split('/');
  return folder === 'lessons' ? `lessons/${name}` : folder;
}

function allowed(layer: Layer, file: string, specifier: string): boolean {
  if (exceptions.some((exception) => exception.file === file && exception.imports === specifier)) return true;
  const inTest = file.endsWith('.test.ts');
  if (isPackage(specifier)) {
    const listed = (name: string) => specifier === name || specifier.startsWith(`${name}/`);
    return inTest || layer.packages === 'any' || layer.packages.some(listed);
  }
  const where = destination(file, specifier);
  const fromOwnFolder = where === destination(file, `./${file.split('/').at(-1)}`);
  return fromOwnFolder || (inTest && where === 'tests') || layer.mayImport.some((name) => name === where);
}

function layerOf(file: string): Layer {
  return layers.find(({ folder }) => file.startsWith(`${folder}/`)) as Layer;
}

describe.each(layers)('$folder', (layer) => {
  const files = filesOf(layer);

  it('has files to look at, and imports in them', () => {
    expect(files.flatMap(importsOf).length).toBeGreaterThan(0);
  });

  it('imports only what lies below it', () => {
    const against = files.flatMap((file) =>
      importsOf(file)
        .filter((specifier) => !allowed(layer, file, specifier))
        .map((specifier) => `${file} imports ${specifier}`),
    );
    expect(against).toEqual([]);
  });
});

describe('an exception', () => {
  it.each(exceptions)('is still needed: $file imports $imports', ({ file, imports }) => {
    expect(importsOf(file)).toContain(imports);
  });
});

describe('the directions', () => {
  it.each([
    ['core/gaussian/x.ts', '#site/state/kit.ts'],
    ['core/gaussian/x.ts', '../../site/state/kit.ts'],
    ['core/gaussian/x.ts', 'svelte'],
    ['core/gaussian/x.ts', 'node:fs'],
    ['site/figures/x.svelte', '#lessons/extension/bench.svelte.ts'],
    ['site/figures/x.svelte', '#tests/reference/all.ts'],
    ['lessons/extension/figures/x.svelte', '../../diffraction/bench.svelte.ts'],
    ['lessons/extension/figures/x.svelte', '#lessons/diffraction/bench.svelte.ts'],
    ['lessons/extension/bench.svelte.ts', 'd3-scale'],
  ])('forbid that %s imports %s', (file, specifier) => {
    expect(allowed(layerOf(file), file, specifier)).toBe(false);
  });

  it.each([
    ['core/gaussian/x.ts', '../quantity/errors.ts'],
    ['core/gaussian/x.test.ts', '#tests/support/close-to.ts'],
    ['site/figures/x.svelte', '#core/quantity/print.ts'],
    ['site/figures/x.svelte', 'd3-scale'],
    ['lessons/extension/figures/x.svelte', '../bench.svelte.ts'],
    ['lessons/extension/figures/x.svelte', '#site/state/address.ts'],
  ])('allow that %s imports %s', (file, specifier) => {
    expect(allowed(layerOf(file), file, specifier)).toBe(true);
  });
});
