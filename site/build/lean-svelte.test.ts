import { globSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { leanerModule } from './lean-svelte.ts';

const svelte = dirname(createRequire(import.meta.url).resolve('svelte/package.json'));
const installed = (file: string) =>
  [readFileSync(join(svelte, 'src/internal/client', file), 'utf8'), `/svelte/src/internal/client/${file}`] as const;

describe('leaner Svelte', () => {
  it('never takes over built markup', () => {
    const [code, id] = installed('dom/hydration.js');
    expect(leanerModule(code, id)).toContain('export const hydrating = false;');
    expect(leanerModule(code, id)).not.toMatch(/hydrating = value/);
  });

  it('gives objects back as they are', () => {
    expect(leanerModule(...installed('proxy.js'))).toContain('export const proxy = (value) => value;');
  });

  it('mounts without a boundary', () => {
    expect(leanerModule(...installed('render.js'))).not.toContain('boundary.js');
  });

  it('knows neither asynchronous components nor those of earlier editions', () => {
    const [flags, id] = installed('../flags/index.js');
    expect(leanerModule(flags, id)).not.toMatch(
      /export let (?:async|legacy)_mode_flag|(?:async|legacy)_mode_flag = true/,
    );
    expect(leanerModule(...installed('reactivity/async.js'))).toContain('fn(sync.map(derived));');
  });

  it('stops the build at an edition whose lines are others', () => {
    expect(() => leanerModule('export let hydrating = 0;', '/client/dom/hydration.js')).toThrow(/look at this edition/);
  });

  it('leaves all else alone', () => {
    expect(leanerModule('', '/client/runtime.js')).toBeUndefined();
  });
});

const sources = globSync(['site/**/*.svelte', 'site/**/*.svelte.ts', 'lessons/**/*.svelte', 'lessons/**/*.svelte.ts']);

it('there are components to look at', () => {
  expect(sources.length).toBeGreaterThan(10);
});

it.each(sources)('%s keeps no deep state', (file) => {
  expect(readFileSync(file, 'utf8')).not.toMatch(/\$state\((?!\)|undefined|null|true|false|-?\d|'|"|`)/);
});
