import MiniSearch from 'minisearch';
import { readStatement } from '#core/diagnosis/statement.ts';
import { nameInFull } from '#core/quantity/part.ts';
import type { SearchEntry } from './entries.ts';

/** At most so many results are worth reading. */
const most = 20;

/** What words are made of: letters, digits, and what stands between them in f/8, 1:2, 1/200, px/mm, N_w, close-up. */
const word = /[\p{L}\d]+(?:[/:.'′-][\p{L}\d]+)*/gu;

const weightOf: Readonly<Record<SearchEntry['kind'], number>> = {
  Lesson: 1.6,
  Word: 1.5,
  Page: 1.3,
  Formula: 1.1,
  'Part of a lesson': 1,
  Problem: 0.7,
  Source: 0.6,
};

/** Words as they are looked for: small, a decimal comma as a point, an f-number as f/8. */
export function wordsIn(text: string): string[] {
  const plain = text
    .toLowerCase()
    .replace(/(\d),(?=\d)/g, '$1.')
    .replace(/\bf ?(?=\d)/g, 'f/')
    .replace(/(?<=\d) ?[×x](?!\p{L})/gu, '')
    .replace(/_/g, '');
  const words = plain.match(word) ?? [];
  // Of what is joined each part is found too: close-up by close, px/mm by px.
  return words.flatMap((one) => (/^\p{L}+(?:[-/]\p{L}+)+$/u.test(one) ? [one, ...one.split(/[-/]/)] : [one]));
}

/** Words of a question that are in every text: what they leave is what is looked for, unless they leave nothing. */
const everywhere = new Set(
  'a an and are at be by can do does for from get have how i in is it me my no not of on or our so than that the their them there they this to too was we what when where which who why will with you your'.split(
    ' ',
  ),
);

function asked(query: string): string {
  const words = query.split(/\s+/);
  const telling = words.filter((one) => !everywhere.has(one.toLowerCase().replace(/[?!.,]+$/, '')));
  return (telling.length > 0 ? telling : words).join(' ');
}

/** A phrase by which it is found again, however it was typed. */
const phraseOf = (text: string): string => wordsIn(text).join(' ');

/** What goes by each phrase, by its title before by what else it is called, and what weighs more first. */
function namesOf(entries: readonly SearchEntry[]): ReadonlyMap<string, readonly SearchEntry[]> {
  const names = new Map<string, SearchEntry[]>();
  const add = (phrase: string, entry: SearchEntry) => {
    const key = phraseOf(phrase);
    if (key === '') return;
    const all = names.get(key) ?? [];
    if (!all.includes(entry)) names.set(key, [...all, entry]);
  };
  const heavyFirst = entries
    .filter(({ kind }) => kind === 'Lesson' || kind === 'Word' || kind === 'Page')
    .sort((one, other) => weightOf[other.kind] - weightOf[one.kind]);
  for (const entry of heavyFirst) add(entry.title, entry);
  for (const entry of heavyFirst) for (const phrase of entry.also.split(', ')) add(phrase, entry);
  return names;
}

/** What is found for a query. */
export interface Found {
  /** Best first. */
  readonly entries: readonly SearchEntry[];
  /** True where the query holds numbers, so that an answer could be worked out from it. */
  readonly hasNumbers: boolean;
}

/** Looks through *entries*; the index is made here, in some tens of milliseconds. */
export function finderOf(entries: readonly SearchEntry[]): (query: string) => Found {
  const index = new MiniSearch<SearchEntry & { readonly id: number }>({
    fields: ['title', 'also', 'text'],
    tokenize: wordsIn,
    processTerm: (term) => term,
    searchOptions: {
      boost: { title: 4, also: 3 },
      boostDocument: (id) => weightOf[entries[id as number]!.kind],
      prefix: (term) => term.length > 2,
      fuzzy: (term) => (term.length > 4 && !/\d/.test(term) ? 0.2 : false),
      combineWith: 'OR',
    },
  });
  index.addAll(entries.map((entry, id) => ({ ...entry, id })));
  const called = namesOf(entries);
  return (query) => {
    const { numbers, asked: wanted } = readStatement(query);
    // The names of what it writes in the trade's way: 1:2 is a magnification, f/11 an f-number, NA a numerical aperture.
    const named = [...numbers.map(({ quantity }) => quantity), ...wanted].map((id) => nameInFull(id));
    const found = index.search([asked(query), ...named].join(' ')).map(({ id }) => entries[id as number]!);
    // What somebody calls just so is what they mean.
    const meant = called.get(phraseOf(query)) ?? called.get(phraseOf(asked(query))) ?? [];
    const all = [...new Set([...meant, ...found])].slice(0, most);
    return { entries: all, hasNumbers: numbers.length > 0 };
  };
}
