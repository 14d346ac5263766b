import type { Plugin } from 'vite';

const lesson = /\/lessons\/([^/]+)\/lesson\.mdx(?:\?|$)/;
const islands = /\/lessons\/([^/]+)\/figures\/Islands\.astro$/;

/** A lesson's prose with its figure at hand, as `<Bench />`, and with the script that brings its own islands to life at the end. */
export function gluedProse(mdx: string): string {
  const [, frontmatter = '', prose = mdx] = /^(---\n.*?\n---\n)(.*)$/s.exec(mdx) ?? [];
  const imports = "import Bench from './figures/Bench.svelte';\nimport Islands from './figures/Islands.astro';\n";
  // In the line of the fence: an author's error is found at the line that the author wrote.
  return `${frontmatter}${imports}\n${prose.trimStart()}\n<Islands />\n`;
}

/** The island script of the lesson in *folder*: its figure and its problems, and nothing of any other lesson. */
export function islandsOf(slug: string): string {
  return `<script>
  import { enliven } from '#site/islands/enliven.ts';
  import Bench from './Bench.svelte';
  import { families } from '../problems.ts';

  enliven({ lesson: '${slug}', Bench, families });
</script>
`;
}

/**
 * Vite plugin: what every lesson's folder would say alike is made from the folder.
 *
 * Each lesson has a script of its own, so that no page brings the figures of another.
 */
export function lessonGlue(): Plugin {
  return {
    name: 'lesson-glue',
    enforce: 'pre',
    resolveId(source, importer) {
      if (!/(?:^|\/)figures\/Islands\.astro$/.test(source) || importer === undefined) return undefined;
      const folder = /^.*\/lessons\/[^/]+(?=\/lesson\.mdx)/.exec(importer)?.[0];
      return folder === undefined ? undefined : `${folder}/figures/Islands.astro`;
    },
    load(id) {
      const slug = islands.exec(id)?.[1];
      return slug === undefined ? undefined : islandsOf(slug);
    },
    transform(code, id) {
      // The content layer asks for the same file with other words behind it, for code that is not prose.
      return lesson.test(id) && code.startsWith('---') ? { code: gluedProse(code), map: null } : undefined;
    },
  };
}
