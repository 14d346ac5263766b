import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '#tests/support/run.ts';

const folder = join(root, 'tests/browser');
const readme = readFileSync(join(folder, 'README.md'), 'utf8');

/** What a table's line names: a file as a link, or the title of a test or a step, which stands in the file that is named last before it. */
const naming = /\]\((?<file>[^)]+)\)|“(?<title>[^”]+)”/g;

/** Each line of the tables that name where something is proved. */
const lines = readme.split('\n').filter((line) => line.startsWith('|') && line.includes(']('));

/** Each title with the file in which it should stand; no file where a line names none before it. */
const titles = lines.flatMap((line) => {
  let file = '';
  return [...line.matchAll(naming)].flatMap(({ groups }) => {
    file = groups!['file'] ?? file;
    return groups!['title'] === undefined ? [] : [{ file, title: groups!['title'] }];
  });
});

/** Whether *text* has *title* in a string, at its start or further in; a remark that says the same is no test. */
const quotes = (text: string, title: string) =>
  text
    .split(title)
    .some((before, at, parts) => at < parts.length - 1 && /['"`][^'"`]*$/.test(before.split('\n').at(-1)!));

it('names only files that there are', () => {
  const files = [...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, file]) => file!);
  expect(files.length).toBeGreaterThan(30);
  expect(files.filter((file) => !existsSync(join(folder, file)))).toEqual([]);
});

it('quotes only titles that stand in the file named before them', () => {
  expect(titles.length).toBeGreaterThan(50);
  const texts = new Map(titles.map(({ file }) => [file, file === '' ? '' : readFileSync(join(folder, file), 'utf8')]));
  const missing = titles.filter(({ file, title }) => !quotes(texts.get(file)!, title));
  expect(missing.map(({ file, title }) => `${file}: ${title}`)).toEqual([]);
});

it('has a place for everything that was proved', () => {
  const rows = readme.split('\n').filter((line) => /^\| (?!What|-)/.test(line));
  expect(rows.filter((row) => !row.includes(']('))).toEqual([]);
});
