import { globSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './run.ts';

/** The folders' names under `lessons/`, in order. Throws where there is none: a contract of nothing always holds. */
export function lessonSlugs(): readonly string[] {
  const slugs = globSync('lessons/*/', { cwd: root }).map((folder) => basename(folder));
  if (slugs.length === 0) throw new Error(`no lessons/*/ below ${root}`);
  return slugs.sort();
}

/** What the lessons that have a file of this name export from it. Throws where there is none. */
export async function everyLessonFile(
  name: string,
): Promise<readonly { slug: string; exports: Readonly<Record<string, unknown>> }[]> {
  const paths = globSync(`lessons/*/${name}`, { cwd: root }).sort();
  if (paths.length === 0) throw new Error(`no lessons/*/${name} below ${root}`);
  return Promise.all(
    paths.map(async (path) => ({
      slug: basename(dirname(path)),
      exports: (await import(pathToFileURL(join(root, path)).href)) as Readonly<Record<string, unknown>>,
    })),
  );
}
