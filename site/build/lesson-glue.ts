import { existsSync, globSync, readFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { camelCase } from '#core/quantity/formula.ts';

const lesson = /\/lessons\/([^/]+)\/lesson\.mdx(?:\?|$)/;
const askedFor = /^\/lessons\/[^/]+\/figures\/Islands\.astro\?/;
const islands = /\/lessons\/([^/]+)\/figures\/Islands\.astro$/;

/** A lesson's prose with its figure at hand, as `<Bench />`, and with the script that brings its own islands to life at the end. */
export function gluedProse(mdx: string): string {
  const [, frontmatter = '', prose = mdx] = /^(---\n.*?\n---\n)(.*)$/s.exec(mdx) ?? [];
  const imports = "import Bench from './figures/Bench.svelte';\nimport Islands from './figures/Islands.astro';\n";
  // In the line of the fence: an author's error is found at the line that the author wrote.
  return `${frontmatter}${imports}\n${prose.trimStart()}\n<Islands />\n`;
}

/** The names of the formula files that *mdx* shows with numbers; what a bench gives under such a name goes before. */
export function formulasIn(mdx: string, files: readonly string[]): readonly string[] {
  const shown = [...mdx.matchAll(/<Formula of="([a-z-]+)"(?![^>]*\sbare\b)/g)].map(([, name]) => name!);
  return files.filter((file) => shown.includes(basename(file, '.formula.ts')));
}

/**
 * The island script of the lesson in *folder*: its figure, its problems, formulas in its prose, and nothing of any other lesson. An evening of
 * several lessons fetches it for the figure alone: there it finds no lesson to bring to life.
 */
export function islandsOf(slug: string, formulas: readonly string[] = []): string {
  const named = formulas.map((file) => ({ file, name: basename(file, '.formula.ts') }));
  const local = (name: string) => `${camelCase(name)}Formula`;
  return `<script>
  import { enliven } from '#site/islands/enliven.ts';
  import Bench from './Bench.svelte';
${named.map(({ file, name }) => `  import { ${local(name)} } from '#${file}';\n`).join('')}
  export const figure = Bench;
  enliven({ lesson: '${slug}', Bench, problems: () => import('../problems.ts'), formulas: { ${named.map(({ name }) => `'${name}': ${local(name)}`).join(', ')} } });
</script>
`;
}

const root = resolve(import.meta.dirname, '../..');
const figures = 'virtual:figures';

/** Each lesson's figure by slug, to be fetched: with the script that the lesson's own page has, so that no page loads another file for it. */
export function figuresOf(slugs: readonly string[]): string {
  const entries = slugs.map((slug) => {
    const script = `${root}/lessons/${slug}/figures/Islands.astro?astro&type=script&index=0&lang.ts`;
    return `  '${slug}': () => import('${script}'),`;
  });
  return `export const figures = {\n${entries.join('\n')}\n};\n`;
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
      if (source === figures) return `\0${figures}`;
      if (source.startsWith(root) && source.includes('/figures/Islands.astro?')) return source;
      // The development server asks by the address below the root; where there is no such file, nothing else finds what the script names.
      if (askedFor.test(source)) return `${root}${source}`;
      if (!/(?:^|\/)figures\/Islands\.astro$/.test(source) || importer === undefined) return undefined;
      const folder = /^.*\/lessons\/[^/]+(?=\/lesson\.mdx)/.exec(importer)?.[0];
      return folder === undefined ? undefined : `${folder}/figures/Islands.astro`;
    },
    load(id) {
      if (id === `\0${figures}`) {
        return figuresOf(
          globSync('lessons/*/lesson.mdx', { cwd: root })
            .map((file) => file.split('/')[1]!)
            .sort(),
        );
      }
      const slug = islands.exec(id)?.[1];
      if (slug === undefined) return undefined;
      const prose = resolve(root, 'lessons', slug, 'lesson.mdx');
      const mdx = existsSync(prose) ? readFileSync(prose, 'utf8') : '';
      this.addWatchFile(prose);
      return islandsOf(slug, formulasIn(mdx, globSync('core/*/*.formula.ts', { cwd: root }).sort()));
    },
    transform(code, id) {
      // The content layer asks for the same file with other words behind it, for code that is not prose.
      return lesson.test(id) && code.startsWith('---') ? { code: gluedProse(code), map: null } : undefined;
    },
  };
}
