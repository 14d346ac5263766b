import { describe, expect, it } from 'vitest';
import type { ProblemFamily } from '#core/practice/family.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';
import { plainText, searchEntries } from './entries.ts';
import { finderOf, wordsIn } from './find.ts';

const problems = Object.fromEntries(
  (await everyLessonFile('problems.ts')).map(({ slug, exports }) => [
    slug,
    exports['families'] as readonly ProblemFamily[],
  ]),
);
const lessons = {
  extension: {
    question: 'What does each extension ring give?',
    summary: 'Work out what rings give.',
    prose:
      '<Part is="idea">\n\nEach millimetre of **extension** counts the same: <Letter symbol="m" /> grows by $1/f$.\n\n</Part>',
  },
  reversed: { question: 'What does a lens do back to front?', summary: 'Turn a lens round.', prose: '' },
};
const sources = [{ check: 'iso-2720', title: 'Exposure meters', text: 'ISO 2720' }];
const entries = searchEntries({ lessons, problems, sources });
const search = finderOf(entries);
const find = (query: string) => search(query).entries;
const hasNumbers = (query: string) => search(query).hasNumbers;
const first = (query: string) => find(query)[0];
const titles = (query: string, count = 3) =>
  find(query)
    .slice(0, count)
    .map(({ title }) => title);

describe('the search', () => {
  // What people type, and one of the first three that they should see.
  it.each<[string, string]>([
    ['NA', 'numerical aperture'],
    ['dioptre', 'power of the close-up lens'],
    ['1:2', 'magnification'],
    ['f/11', 'f-number'],
    ['f11', 'f-number'],
    ['0,5x', 'magnification'],
    ['extension', 'What does each extension ring give?'],
    ['back to front', 'What does a lens do back to front?'],
    ['bellows factor', 'effective f-number'],
    ['depth of feild', 'depth of field'],
    ['entrance pup', 'entrance pupil'],
    ['DOF', 'depth of field'],
    ['check answer', 'Check an answer'],
    ['exposure meters', 'Exposure meters'],
    ['CoC', 'circle of confusion'],
  ])('finds for %s: %s', (query, title) => {
    expect(titles(query)).toContain(title);
  });

  it('finds parts of lessons, formulas and problems, each where it stands', () => {
    expect(
      find('millimetre counts').some(
        ({ kind, path }) => kind === 'Part of a lesson' && path === 'lessons/extension/#idea',
      ),
    ).toBe(true);
    expect(
      find('effective f-number').some(
        ({ kind, path }) => kind === 'Formula' && path === 'formulas/#effective-f-number',
      ),
    ).toBe(true);
    expect(
      find('rings closest focus crop factor').some(
        ({ kind, path }) => kind === 'Problem' && path === 'lessons/extension/#check',
      ),
    ).toBe(true);
  });

  it('finds a standard by its number', () => {
    expect(find('ISO 2720').some(({ title }) => title === 'Exposure meters')).toBe(true);
  });

  it('knows when numbers are asked about', () => {
    expect(hasNumbers('50 mm, 36 mm ring, f/8')).toBe(true);
    expect(hasNumbers('depth of field')).toBe(false);
  });

  it('finds nothing for nothing, and takes any text', () => {
    expect(find('')).toEqual([]);
    expect(find('qqqqzzzz')).toEqual([]);
    expect(() => find('(\u0000 <b> 1e999 */')).not.toThrow();
    expect(first('magnification')).toBeDefined();
  });

  it('reads words as they are typed', () => {
    expect(wordsIn('F 8, 0,5× and N_w')).toEqual(['f/8', '0.5', 'and', 'nw']);
  });

  it('leaves marks and components out of prose', () => {
    expect(plainText('**Rings** give what <Letter symbol="N_w" /> says: see [the idea](#idea) <Check />.')).toBe(
      'Rings give what Nw says: see the idea .',
    );
  });

  it('puts the letter where prose has a number of the figure, or its name where it has no letter', () => {
    const prose =
      'The lens gives <Live q="focus-magnification" />. The ring adds <Live q="extension" /> divided by\n<Live q="lens.focal-length" />, <Live q="sync-speed" />.';
    expect(plainText(prose)).toBe('The lens gives m0. The ring adds e divided by f, sync speed.');
  });
});
