import { terms } from '#core/quantity/terms.ts';
import { quantityOf, vocabulary, type QuantityName } from '#core/quantity/vocabulary.ts';
import { drawProblem } from '#core/practice/problem.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { course } from '#site/course.ts';
import { parts, type PartName } from '#site/lesson/parts.ts';
import { formulaSheet } from '#site/sheet/sheet.ts';
import { beginners } from './beginners.ts';

/** Something that can be found. */
export interface SearchEntry {
  readonly kind: 'Lesson' | 'Part of a lesson' | 'Word' | 'Formula' | 'Problem' | 'Source' | 'Page';
  readonly title: string;
  /** What else it is called, and its letter. */
  readonly also: string;
  /** What it says, in plain text; results show its beginning. */
  readonly text: string;
  /** Within the site, without its base: `lessons/extension/#idea`. */
  readonly path: string;
}

/** What entries are made from, besides what the core and the course hold. */
export interface SearchSources {
  /** Prose and summary of each written lesson, by slug. */
  readonly lessons: Readonly<
    Record<string, { readonly question: string; readonly summary: string; readonly prose: string }>
  >;
  /** The families of each lesson's problems, by slug. */
  readonly problems: Readonly<Record<string, readonly ProblemFamily[]>>;
  /** What the outside checks compare with. */
  readonly sources: readonly { readonly check: string; readonly title: string; readonly text: string }[];
}

const pages: readonly SearchEntry[] = [
  page(
    'Check an answer',
    'is it right, slip, mistake, calculator, work it out',
    'Write what you have and what you found; it says whether it is right.',
    'check/',
  ),
  page(
    'Practice',
    'problems, exercises, worksheet, quiz, review, questions, print a sheet, answers, progress',
    'Ten questions in ten minutes, and sheets of problems to print, with answers and working apart.',
    'practice/',
  ),
  page(
    'Field card',
    'depth table, pocket card, camera bag, cut marks, A6, cheat sheet, slowest shutter, f-numbers',
    'What your lenses and rings give at every f-number, on a card to print.',
    'field-card/',
  ),
  page(
    'Formula sheet',
    'equations, fill in, solve',
    'Every formula, by what you want to know, with fields to fill in.',
    'formulas/',
  ),
  page(
    'Kit',
    'my gear, own lenses, camera, rings, what I have, bag, import, export, QR',
    'Keep what you own: lessons, bench and field card work with it.',
    'kit/',
  ),
  page(
    'Ruler: measure your own lens',
    'photograph, magnification, focal length, field width, Exif, tilt, calibrate, test',
    'Open a photograph of a ruler: it says the magnification, and several say which lens it was.',
    'ruler/',
  ),
  page(
    'Bench',
    'chain, rig, set-up, simulate, rings, reversed, converter, compare two lenses, side view',
    'Put any chain of gear together, see it from the side to scale, and get every number that follows.',
    'bench/',
  ),
  page('The card', 'pocket, two pages', 'The formulas on two pages to print.', 'formulas/card/'),
  page('Glossary', 'words, terms, meaning, dictionary', 'Every word, first in plain words, then exactly.', 'glossary/'),
  page('Course', 'lessons, order, contents', 'All lessons in their order.', 'course/'),
  page(
    'Workshop',
    'instructor, teach, evening, projector, clicker, hands, plan, club, handout',
    'An instructor’s evening: planned from the lessons’ steps, projected as one sequence, with notes and a handout.',
    'workshop/',
  ),
  page(
    'A step by its number',
    'phone, short address, wall, demonstration',
    'The figure of a step that a wall shows, to drag on a phone.',
    'go/',
  ),
  page(
    'Printing',
    'print, printer, pdf, paper, download, save as PDF, print a lesson, print out',
    'Every lesson has a button at its head that prints its sheets; formula card, field card and practice sheets print from their own pages. The browser’s print dialogue saves any of them as a PDF.',
    'course/',
  ),
  page(
    'Without a network',
    'offline, no internet, no network, no signal, install, app, download the course, save for later',
    'After one visit the whole course opens without a network. The foot of every page says whether it is kept on this device.',
    'course/',
  ),
  page('Sources', 'checks, references, books, standards, patents', 'What the numbers are checked against.', 'sources/'),
];

function page(title: string, also: string, text: string, path: string): SearchEntry {
  return { kind: 'Page', title, also, text, path };
}

/** Everything that can be found, in the order of the course, words and formulas after it. */
export function searchEntries({ lessons, problems, sources }: SearchSources): readonly SearchEntry[] {
  const written = course.filter(({ slug }) => slug in lessons);
  return [
    ...written.flatMap(({ slug }) => lessonEntries(slug, lessons[slug]!, problems[slug] ?? [])),
    ...terms.map(({ id, name, plain, exact, synonyms, forms, quantity }): SearchEntry => {
      const letter = quantity === undefined ? '' : vocabulary[quantity].symbol.replace('_', '');
      return {
        kind: 'Word',
        title: name,
        also: [letter, ...synonyms, ...forms].join(', '),
        text: `${plain} ${exact}`,
        path: `glossary/#${id}`,
      };
    }),
    ...formulaSheet().flatMap(({ questions }) =>
      questions.flatMap(({ asks, formulas }) =>
        formulas.map(({ id, name, formula }): SearchEntry => ({
          kind: 'Formula',
          title: name,
          also: asks,
          text: formula.says,
          path: `formulas/#${id}`,
        })),
      ),
    ),
    ...sources.map(({ check, title, text }): SearchEntry => ({
      kind: 'Source',
      title,
      also: '',
      text,
      path: `sources/#${check}`,
    })),
    ...pages,
  ];
}

function lessonEntries(
  slug: (typeof course)[number]['slug'],
  { question, summary, prose }: SearchSources['lessons'][string],
  families: readonly ProblemFamily[],
): readonly SearchEntry[] {
  const path = `lessons/${slug}/`;
  const inParts = [...prose.matchAll(/<Part is="([^"]+)"[^>]*>(.*?)<\/Part>/gs)].flatMap(
    ([, is, text]): SearchEntry[] => {
      const plain = plainText(text!);
      if (!Object.hasOwn(parts, is!) || plain === '') return [];
      return [
        {
          kind: 'Part of a lesson',
          title: `${question} ${parts[is as PartName]}`,
          also: '',
          text: plain,
          path: `${path}#${is}`,
        },
      ];
    },
  );
  const asked = families.map((family): SearchEntry => {
    return {
      kind: 'Problem',
      title: drawProblem(family, 1).question,
      also: question,
      text: family.hint,
      path: `${path}#check`,
    };
  });
  return [
    { kind: 'Lesson', title: question, also: `${slug.replaceAll('-', ' ')}, ${beginners[slug]}`, text: summary, path },
    ...inParts,
    ...asked,
  ];
}

/** What stands for a number of the figure, which is another each time: its letter, or its name where it has none. */
function letterOrName(name: string): string {
  const { symbol, name: words } = quantityOf(name as QuantityName);
  return (symbol || words).replace(/[_\\]/g, '');
}

/** The words of a lesson's prose, without marks, components and TeX. */
export function plainText(prose: string): string {
  return prose
    .replace(/\{\/\*.*?\*\/\}/gs, ' ')
    .replace(/<Live\b[^>]*\bq="([^"]*)"[^>]*\/>/g, (_, name: string) => letterOrName(name))
    .replace(/<Letter\b[^>]*symbol="([^"]*)"[^>]*\/>/g, (_, name: string) => name.replace(/[_\\]/g, ''))
    .replace(/<[^>]*?(?:question|answer|caption)="([^"]*)"[^>]*>/gs, ' $1 ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\$[^$]*\$/g, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_#|`]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}
