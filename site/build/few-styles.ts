import { createHash } from 'node:crypto';
import { globSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { afterBuild } from './after-build.ts';
import { filesNamed, reachable, type Built } from './reached.ts';
import { rulesOf, sheetOf, usedRules, type Rule } from './style-rules.ts';

/** A style sheet's link in the head of a page, and the same with its address apart. */
const link = /<link rel="stylesheet" href="[^"]+">/g;
const named = /<link rel="stylesheet" href="([^"]+)">/g;

interface Page {
  readonly name: string;
  readonly html: string;
  readonly used: Map<string, Rule>;
}

function readPage(name: string, built: Built, rules: (file: string) => Rule[]): Page {
  const file = join(built.folder, name);
  const html = readFileSync(file, 'utf8');
  const scripts = reachable(filesNamed(html, 'js', dirname(file), built), built);
  const text = html + [...scripts.values()].join('\n');
  const sheets = [...html.matchAll(named)].map(([, href = '']) => join(built.folder, href.slice(built.base.length)));
  const known = new Map<string, boolean>();
  const has = (mark: string) => {
    if (!known.has(mark)) known.set(mark, text.includes(mark));
    return known.get(mark)!;
  };
  return { name, html, used: usedRules(sheets.flatMap(rules), has) };
}

/** What all of *pages* have, in the order of the first. */
function inAll(pages: readonly Page[]): ReadonlySet<string> {
  const [first, ...others] = pages;
  return new Set([...(first?.used.keys() ?? [])].filter((key) => others.every(({ used }) => used.has(key))));
}

/**
 * Astro integration: after the build, a page's styles come in three files in place of twenty: what every page has, what every lesson has, and its
 * own. Each holds only what can apply there.
 *
 * The build makes a style sheet for each piece of a script and names those of all lessons on each: two in three were for components that a page has
 * not, or came twice, and each was asked for by itself.
 */
export const fewStyles = () => afterBuild('few-styles', joinStyles);

function joinStyles(built: Built): void {
  const parsed = new Map<string, Rule[]>();
  const rules = (file: string) => {
    const found = parsed.get(file) ?? rulesOf(readFileSync(file, 'utf8'));
    parsed.set(file, found);
    return found;
  };
  const pages = globSync('**/*.html', { cwd: built.folder })
    .sort()
    .map((name) => readPage(name, built, rules))
    .filter(({ used }) => used.size > 0);
  const lessons = pages.filter(({ name }) => name.startsWith('lessons'));
  const [exemplar] = lessons;
  if (!exemplar) throw new Error('No lesson names a style sheet: its link is looked for in vain.');
  const ofEvery = inAll([exemplar, ...pages]);
  const ofLessons = inAll(lessons);
  for (const file of parsed.keys()) rmSync(file);

  const write = (name: string, used: ReadonlyMap<string, Rule>, wanted: (key: string) => boolean) => {
    const css = sheetOf([...used].filter(([key]) => wanted(key)).map(([, rule]) => rule));
    if (css === '') return '';
    const digest = createHash('sha256').update(css).digest('base64url').slice(0, 8);
    const file = `_astro/${name}.${digest}.css`;
    writeFileSync(join(built.folder, file), css);
    return `<link rel="stylesheet" href="${built.base}${file}">`;
  };
  const every = write('every', exemplar.used, (key) => ofEvery.has(key));
  const lesson = write('lesson', exemplar.used, (key) => ofLessons.has(key) && !ofEvery.has(key));
  for (const page of pages) {
    const isLesson = lessons.includes(page);
    const ownName = basename(dirname(join('home', page.name)));
    const own = write(`${ownName}-own`, page.used, (key) => !(isLesson ? ofLessons : ofEvery).has(key));
    const [before = '', ...rest] = page.html.split(link);
    writeFileSync(join(built.folder, page.name), [before, every, isLesson ? lesson : '', own, ...rest].join(''));
  }
}
