import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../run.ts';
import { isUnfilled } from './scaffold.ts';

const files = globSync('{core,lessons,tests/reference}/**/*.{ts,svelte,mdx,md,json}', { cwd: root });

it('finds files to look at', () => {
  expect(files.length).toBeGreaterThan(0);
});

it('finds nothing that was begun and not filled in', () => {
  expect(files.filter((file) => isUnfilled(readFileSync(join(root, file), 'utf8')))).toEqual([]);
});
