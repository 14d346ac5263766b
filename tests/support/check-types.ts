/**
 * Checks all types: `astro check` those of .astro files, svelte-check all others, by the native compiler.
 *
 * For that compiler svelte-check writes every component as a module into a folder of its own, and leaves there what has been renamed since: the
 * folder is made anew.
 */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from './run.ts';

rmSync(join(root, '.svelte-check'), { recursive: true, force: true });
const astro = ['check', '--tsconfig', 'tests/support/astro-files.json', '--minimumFailingSeverity', 'warning'];
const others = ['--tsgo', '--tsconfig', './tsconfig.types.json', '--fail-on-warnings'];
process.exitCode = (await run('astro', astro)) || (await run('svelte-check', others));
