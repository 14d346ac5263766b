import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { course } from '#site/course.ts';
import { lessonSlugs } from '#tests/support/lessons.ts';
import { root } from '#tests/support/run.ts';

const files = ['lesson.mdx', 'bench.svelte.ts', 'problems.ts', 'stage.ts'];
const folders = ['figures'];
/** What a lesson draws with: parts, the layout behind them, their looks. */
const figureFile = /\.(svelte|ts|css)$|^Definitions\.astro$/;

function entries(slug: string, folder = '') {
  return readdirSync(join(root, 'lessons', slug, folder), { withFileTypes: true });
}

/** A test may stand beside what it tests. */
function isTestOfOne(name: string, sources: readonly string[]): boolean {
  return sources.some((source) => {
    const [stem] = /^[^.]+/.exec(source)!;
    return [`${stem}.test.ts`, `${stem}.svelte.test.ts`, `${stem}.component.test.ts`].includes(name);
  });
}

describe.each(lessonSlugs())('the folder lessons/%s', (slug) => {
  it('is named for a lesson of the course', () => {
    expect(course.map((lesson) => lesson.slug as string)).toContain(slug);
  });

  it('asks what the course says that it asks', () => {
    const prose = readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8');
    const asked = /^question: (['"]?)(.+)\1$/m.exec(prose)?.[2]?.replaceAll("''", "'");
    expect(asked).toBe(course.find((lesson) => lesson.slug === slug)?.question);
  });

  it('lists what an instructor brings as its own part for the instructor, or for the hands, names it', () => {
    const prose = readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8');
    const things = /^bring: \[(.+)\]$/m.exec(prose)![1]!.split(', ');
    const told = [...prose.matchAll(/<Part is="(?:instructor|hands-on)">(.*?)<\/Part>/gs)].map(([, text]) => text);
    const foreign = things.filter((thing) => {
      const noun = /(\S+)(?: (?:for|that|connected|whose|set|taken|in|on|behind|of) .*)?$/.exec(thing)![1]!;
      return !told.join(' ').includes(noun.replace(/s$/, ''));
    });
    expect(foreign).toEqual([]);
  });

  it('holds prose, bench, problems and stage', () => {
    const found = entries(slug).filter((entry) => entry.isFile());
    expect(found.map(({ name }) => name)).toEqual(expect.arrayContaining(files));
  });

  it('holds a folder of figures with something in it', () => {
    expect(
      entries(slug)
        .filter((entry) => entry.isDirectory())
        .map(({ name }) => name),
    ).toEqual(folders);
    expect(entries(slug, 'figures').some(({ name }) => name.endsWith('.svelte'))).toBe(true);
  });

  it('holds no stray file', () => {
    const own = entries(slug).filter((entry) => entry.isFile());
    const strayHere = own.map(({ name }) => name).filter((name) => !files.includes(name) && !isTestOfOne(name, files));
    const drawn = entries(slug, 'figures');
    const names = drawn.map(({ name }) => name);
    const strayThere = drawn.filter((entry) => {
      if (!entry.isFile() || !figureFile.test(entry.name)) return true;
      return (
        entry.name.endsWith('.test.ts') &&
        !isTestOfOne(
          entry.name,
          names.filter((name) => !name.endsWith('.test.ts')),
        )
      );
    });
    expect([...strayHere, ...strayThere.map(({ name }) => `figures/${name}`)]).toEqual([]);
  });
});
