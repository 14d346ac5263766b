import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { Built } from './reached.ts';

/** Astro integration of that *name*: does *task* with the files as they were built. */
export function afterBuild(name: string, task: (built: Built) => void | Promise<void>): AstroIntegration {
  let base = '/';
  return {
    name,
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': ({ dir }) => task({ folder: fileURLToPath(dir), base }),
    },
  };
}
