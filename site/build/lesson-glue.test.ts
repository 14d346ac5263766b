import { expect, test } from 'vitest';
import { gluedProse, islandsOf } from './lesson-glue.ts';

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
