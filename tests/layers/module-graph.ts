import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';
import { globSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix, sep } from 'node:path';
import { root } from '#tests/support/run.ts';

/** What imports, components, prose and styles beside code, and the data it imports. */
const importing = '{core,site,lessons,tests}/**/*.{ts,svelte,astro,mdx,css,json}';

/** Every file of the project that can import another or be imported, by its path from the root. */
export function projectFiles(): ReadonlyMap<string, string> {
  const paths = globSync(importing, { cwd: root }).map((path) => path.split(sep).join('/'));
  return new Map(paths.sort().map((path) => [path, readFileSync(join(root, path), 'utf8')]));
}

const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match[1] as string);
const scripts = /<script\b[^>]*>([^]*?)<\/script>/g;

/** The script of a file: what a TypeScript parser can be given, with whatever it imports. */
function scriptOf(path: string, text: string): string {
  switch (posix.extname(path)) {
    case '.svelte':
      return all(text, scripts).join('\n');
    case '.astro':
      return [...all(text, /^---\n([^]*?)^---$/gm).slice(0, 1), ...all(text, scripts)].join('\n');
    case '.mdx':
      return all(text, /^(import\s[^;]*;)$/gm).join('\n');
    case '.css':
      return all(text, /@import\s+(?:url\()?(['"][^'"]+['"])/g)
        .map((name) => `import ${name};`)
        .join('\n');
    default:
      return text;
  }
}

/** An import for every file that a glob of the build takes in: they are imports too. */
function globbed(path: string, script: string, paths: readonly string[]): string {
  return all(script, /\bimport\.meta\.glob(?:<[^(]*>)?\(\s*['"]([^'"]+)['"]/g)
    .map((glob) => (glob.startsWith('/') ? glob.slice(1) : posix.join(posix.dirname(path), glob)))
    .flatMap((glob) => paths.filter((other) => posix.matchesGlob(other, glob)))
    .map((other) => `\nimport '#${other}';`)
    .join('');
}

/** Where a file is written, so that what imports it finds it. */
const writtenAs = (path: string) => (/\.(?:ts|json)$/.test(path) ? path : `${path}.mts`);

/**
 * What these files import, as dependency-cruiser finds it, and what of it goes against the rules. Types count as imports.
 *
 * It reads TypeScript. So each file is written out as its script alone, `Sheet.svelte` as `Sheet.svelte.mts`, where an import of `Sheet.svelte`
 * finds it; there are no packages there, and the name of one stays as it was written.
 */
export async function moduleGraph(
  files: ReadonlyMap<string, string>,
  forbidden: IForbiddenRuleType[],
): Promise<ICruiseResult> {
  const baseDir = mkdtempSync(join(tmpdir(), 'module-graph-'));
  try {
    const { name, type, imports } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as object & {
      readonly [key: string]: unknown;
    };
    writeFileSync(join(baseDir, 'package.json'), JSON.stringify({ name, type, imports }));
    const paths = [...files.keys()];
    for (const [path, text] of files) {
      const written = join(baseDir, writtenAs(path));
      mkdirSync(dirname(written), { recursive: true });
      const script = scriptOf(path, text);
      writeFileSync(written, script + globbed(path, script, paths));
    }
    const folders = [...new Set(paths.map((path) => path.split('/')[0] as string))];
    const { output } = await cruise(folders, {
      baseDir,
      parser: 'tsc',
      moduleSystems: ['es6', 'tsd'],
      tsPreCompilationDeps: true,
      validate: true,
      ruleSet: { forbidden },
      enhancedResolveOptions: { extensions: ['.mts'], conditionNames: ['import'] },
    });
    return output as ICruiseResult;
  } finally {
    rmSync(baseDir, { recursive: true, force: true });
  }
}
