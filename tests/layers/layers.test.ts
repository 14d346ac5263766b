import { matchesGlob } from 'node:path';
import type { ICruiseResult } from 'dependency-cruiser';
import { beforeAll, describe, expect, it } from 'vitest';
import { exceptions, layers } from './directions.ts';
import { forbidden } from './graph-rules.ts';
import { moduleGraph, projectFiles } from './module-graph.ts';

const source = (path: string) => path.replace(/\.mts$/, '');

/** What goes against the rules, in words: which rule, who imports what, and by which way round a circle. */
function against({ summary }: ICruiseResult): string[] {
  return summary.violations.map(({ rule, from, to, cycle }) => {
    const way = cycle?.map(({ name }) => source(name)).join(' → ') ?? source(to);
    return `${rule.name}: ${source(from)} → ${way}`;
  });
}

/** An exception's import from the repository's root: `#tests/…` and a lesson's path alike. */
const inTree = (imports: string) => imports.replace(/^(?:#|(?:\.\.\/)+)/, '');

const importsOf = ({ modules }: ICruiseResult, file: string) =>
  modules
    .filter((module) => source(module.source) === file)
    .flatMap(({ dependencies }) => dependencies.map(({ resolved }) => source(resolved)));

describe('the project', () => {
  let graph: ICruiseResult;
  beforeAll(async () => {
    graph = await moduleGraph(projectFiles(), forbidden);
  }, 120_000);

  it.each(layers)('has imports in $folder to look at, in code and in components', ({ folder }) => {
    const files = graph.modules.filter((module) => module.source.startsWith(`${folder}/`));
    const kinds = folder === 'core' ? ['.ts'] : folder === 'site' ? ['.svelte', '.astro', '.css'] : ['.svelte', '.mdx'];
    for (const kind of kinds)
      expect(files.some((file) => source(file.source).endsWith(kind) && file.dependencies.length > 0)).toBe(true);
  });

  it('imports only what lies below, what is there, and never in a circle', () => {
    const isAllowed = (words: string) =>
      exceptions.some(({ file, imports }) => {
        const [head, imported] = words.split(' → ');
        return head!.endsWith(`: ${file}`) && matchesGlob(imported!, inTree(imports));
      });
    expect(against(graph).filter((words) => !isAllowed(words))).toEqual([]);
  });

  it.each(exceptions)('still needs that $file imports $imports', ({ file, imports }) => {
    expect(importsOf(graph, file).some((path) => matchesGlob(path, inTree(imports)))).toBe(true);
  });
});

/** Who imports what, and the rule that it breaks. */
const broken = [
  ['core/gaussian/a.ts', `import '#site/state/kit.ts';`, 'core: only'],
  ['core/gaussian/b.ts', `import type { Kit } from '../../site/state/kit.ts';`, 'core: only'],
  ['core/gaussian/c.ts', `export const kit = () => import('#site/state/kit.ts');`, 'core: only'],
  ['core/gaussian/d.ts', `import 'svelte';`, 'core: packages'],
  ['core/gaussian/e.ts', `import 'node:fs';`, 'core: packages'],
  ['core/gaussian/f.test.ts', `import '#site/state/kit.ts';`, 'core: only'],
  ['core/gaussian/g.ts', `import './not-there.ts';`, 'nothing that is not there'],
  [
    'site/figures/A.svelte',
    `<script lang="ts">\n  import '#lessons/extension/bench.svelte.ts';\n</script>`,
    'site: only',
  ],
  ['site/figures/B.svelte', `<script module>import '#tests/reference/all.ts';</script>\n<p>text</p>`, 'site: only'],
  ['site/pages/c.astro', `---\nimport { all } from '#tests/reference/all.ts';\n---\n<p>{all}</p>`, 'site: only'],
  ['site/pages/d.ts', `export const files = import.meta.glob<object>('/lessons/ext*/bench.svelte.ts');`, 'site: only'],
  [
    'lessons/extension/figures/A.svelte',
    `<script>import '../../diffraction/bench.svelte.ts';</script>`,
    'lessons: only',
  ],
  ['lessons/extension/b.ts', `export { x } from '#lessons/diffraction/bench.svelte.ts';`, 'lessons: only'],
  ['lessons/extension/c.ts', `import 'd3-scale';`, 'lessons: packages'],
  ['lessons/extension/d.mdx', `Words.\n\nimport {\n  x\n} from '#tests/reference/all.ts';\n\n# Words`, 'lessons: only'],
] as const;

const kept = [
  ['core/gaussian/h.ts', `import '../quantity/errors.ts';`],
  ['core/gaussian/i.test.ts', `import { closeTo } from '#tests/support/close-to.ts'; import 'vitest';`],
  ['site/figures/E.svelte', `<script>import '#core/quantity/errors.ts'; import 'd3-scale';</script>`],
  ['site/styles/f.css', `@import './g.css';\np { color: red; }`],
  [
    'lessons/extension/figures/B.svelte',
    `<script>import '../bench.svelte.ts'; import { onMount } from 'svelte';</script>`,
  ],
  ['lessons/extension/figures/c.ts', `import '#site/state/kit.ts';`],
] as const;

const circles = {
  'of types': ['core/light/a.ts', 'core/light/b.ts', 'core/light/c.ts'],
  'by way of components': ['site/parts/A.svelte', 'site/parts/b.ts', 'site/parts/C.astro'],
} as const;

const others = [
  'site/state/kit.ts',
  'site/styles/g.css',
  'core/quantity/errors.ts',
  'tests/support/close-to.ts',
].concat(['tests/reference/all.ts', 'lessons/extension/bench.svelte.ts', 'lessons/diffraction/bench.svelte.ts']);

const importing = (path: string, other: string) =>
  path.endsWith('.ts')
    ? `import type { X } from '#${other}';`
    : path.endsWith('.astro')
      ? `---\nimport X from '#${other}';\n---\n<X />`
      : `<script lang="ts">\n  import X from '#${other}';\n</script>\n<X />`;

describe('the rules', () => {
  let found: readonly string[];
  beforeAll(async () => {
    const files = new Map(others.map((path) => [path, '']));
    for (const [path, text] of [...broken, ...kept]) files.set(path, text);
    for (const paths of Object.values(circles))
      paths.forEach((path, k) => files.set(path, importing(path, paths[(k + 1) % paths.length]!)));
    found = against(await moduleGraph(files, forbidden));
  }, 60_000);

  it.each(broken)('forbid what %s says', (path, _, rule) => {
    expect(found.filter((words) => words.includes(`: ${path} →`))).toEqual([expect.stringMatching(`^${rule}`)]);
  });

  it.each(kept)('allow what %s says', (path) => {
    expect(found.filter((words) => words.includes(`: ${path} →`))).toEqual([]);
  });

  it.each(Object.entries(circles))('find a circle %s, with all that is in it', (_, paths) => {
    const ways = found.filter((words) => words.startsWith('no circle') && words.includes(paths[0]));
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) for (const path of paths) expect(way).toContain(path);
  });
});
