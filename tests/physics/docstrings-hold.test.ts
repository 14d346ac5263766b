import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';

const root = resolve(import.meta.dirname, '../..');
const sources = globSync('core/**/*.ts', { cwd: root, exclude: ['**/*.test.ts'] }).sort();

/** `@example call // number`, on one line; `...` after the number where more digits follow. */
const example = /@example (.+\)) \/\/ (-?[\d.e-]*\d)(\.\.\.)?\s*$/gm;
const citation = /\b([\w/-]*README\.md)#([\w-]+)/g;

const examples = sources.flatMap((path) =>
  [...readFileSync(resolve(root, path), 'utf8').matchAll(example)].map(([, call, number, dots]) => ({
    path,
    call: call!,
    number: number!,
    dots,
  })),
);
const citations = sources.flatMap((path) =>
  [...readFileSync(resolve(root, path), 'utf8').matchAll(citation)].map(([, file, anchor]) => ({
    path,
    file: file!,
    anchor: anchor!,
  })),
);

describe('examples in docstrings', () => {
  it('are found', () => expect(examples.length).toBeGreaterThan(0));

  it.each(examples)('$call is $number, in $path', async ({ path, call, number, dots }) => {
    const exports = (await import(pathToFileURL(resolve(root, path)).href)) as Record<string, unknown>;
    // The text is our own source, and this is the one place that runs it as it stands there.
    const answer: unknown = new Function(...Object.keys(exports), `return ${call}`)(...Object.values(exports));
    const decimals = number.split('.')[1]?.length ?? 0;
    const margin = dots ? 10 ** -decimals : 0.5 * 10 ** -decimals;
    expect(answer).toEqual(closeTo(Number(number), { absolute: margin, because: 'printed to so many decimals' }));
  });
});

describe('derivations that docstrings cite', () => {
  it('are found', () => expect(citations.length).toBeGreaterThan(0));

  it.each(citations)('$file#$anchor, from $path', ({ path, file, anchor }) => {
    // `README.md` stands beside the source; a longer path starts at the root, as a page prints it.
    const target = file.includes('/') ? file : join(dirname(path), file);
    expect(existsSync(resolve(root, target)), `${target} exists`).toBe(true);
    expect(anchorsOf(readFileSync(resolve(root, target), 'utf8'))).toContain(anchor);
  });
});

/** The anchors that a Markdown reader makes of headings. */
function anchorsOf(markdown: string): string[] {
  const headings = [...markdown.matchAll(/^#+ (.+)$/gm)].map((match) => match[1]!);
  return headings.map((heading) =>
    heading
      .toLowerCase()
      .replaceAll(/[^\w\s-]/g, '')
      .trim()
      .replaceAll(/\s/g, '-'),
  );
}
