import { existsSync } from 'node:fs';
import { createServer } from 'vite';
import { expect, test } from 'vitest';
import { gluedProse, islandsOf, lessonGlue } from './lesson-glue.ts';

test('prose gets its figure and its own script, and keeps the rest', () => {
  const glued = gluedProse('---\nquestion: How far?\n---\n\n<Part is="idea">\n\nFar.\n\n</Part>\n');
  expect(glued).toMatch(/^---\nquestion: How far\?\n---\nimport Bench from '\.\/figures\/Bench\.svelte';\n/);
  expect(glued).toMatch(/<Part is="idea">\n\nFar\.\n\n<\/Part>\n\n<Islands \/>\n$/);
});

test('a lesson’s script has its figure and its problems, and names no other lesson', () => {
  const script = islandsOf('extension');
  expect(script).toContain("lesson: 'extension'");
  expect([...script.matchAll(/(?:from |import\()'([^#'][^']*)'/g)].map(([, path]) => path)).toEqual([
    './Bench.svelte',
    '../problems.ts',
  ]);
});

test('the development server finds all that a lesson’s script names, though the file of the script is made', async () => {
  const server = await createServer({
    configFile: false,
    logLevel: 'error',
    plugins: [lessonGlue()],
    server: { middlewareMode: true, watch: null, ws: false },
    optimizeDeps: { noDiscovery: true },
  });
  try {
    const { pluginContainer } = server.environments.client;
    const address = '/lessons/extension/figures/Islands.astro?astro&type=script&index=0&lang.ts';
    const script = await pluginContainer.resolveId(address);
    const code = islandsOf('extension', ['core/gaussian/effective-f-number.formula.ts']);
    const names = [...code.matchAll(/(?:from |import\()'([^']+)'/g)].map(([, name]) => name!);
    const found = await Promise.all(names.map((name) => pluginContainer.resolveId(name, script?.id ?? address)));
    expect(names.filter((_, at) => !existsSync(found[at]?.id ?? ''))).toEqual([]);
    expect(names).toHaveLength(4);
  } finally {
    await server.close();
  }
});
