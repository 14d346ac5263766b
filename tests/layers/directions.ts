/** The layers of the workbook and what each may import; the lint rules and the test of the layers both read it here. */
export interface Layer {
  readonly folder: 'core' | 'site' | 'lessons';
  /** Layers it may import by their alias. A lesson's own files are imported relatively, so `lessons` is never among them. */
  readonly mayImport: readonly ('core' | 'site')[];
  /** Packages it may import; `'any'` for all of them. */
  readonly packages: readonly string[] | 'any';
}

export const layers: readonly Layer[] = [
  // The bits of the one seeded generator.
  { folder: 'core', mayImport: ['core'], packages: ['pure-rand'] },
  { folder: 'site', mayImport: ['core', 'site'], packages: 'any' },
  { folder: 'lessons', mayImport: ['core', 'site'], packages: ['svelte'] },
];

/** One import that goes against the directions, and why it may. */
export interface Exception {
  readonly file: string;
  readonly imports: string;
  readonly because: string;
}

export const exceptions: readonly Exception[] = [
  {
    file: 'site/pages/sources.astro',
    imports: '#tests/reference/all.ts',
    because: 'the Sources page shows at build what the outside checks compare, so that it cannot drift from them',
  },
  {
    file: 'site/pages/search.astro',
    imports: '#tests/reference/all.ts',
    because: 'what the outside checks are called can be looked for, by the tests’ own data',
  },
  {
    file: 'site/check/engine.ts',
    imports: '../../lessons/*/problems.ts',
    because: 'the slips that an answer is checked for are those of the lessons’ problems: there is no second list',
  },
  ...['Bench.svelte', 'Definitions.astro'].map((name) => ({
    file: 'site/pages/workshop.astro',
    imports: `../../lessons/*/figures/${name}`,
    because:
      'an evening shows steps of several lessons in one page, with the styles of their figures and what these refer to',
  })),
  {
    file: 'site/practice/families.ts',
    imports: '../../lessons/*/problems.ts',
    because:
      'a sheet or a review asks problems of any lesson, each fetched when it is asked of: there is no second list',
  },
  ...['bench.svelte.ts', 'problems.ts', 'stage.ts', 'figures/given.ts'].map((name) => ({
    file: 'site/lesson/lesson.ts',
    imports: `../../lessons/*/${name}`,
    because: 'the loader reads every lesson’s folder as data while the site is built',
  })),
];

/** Files that test what they stand beside: they may also import tests/ and any package. */
export const testFiles = '**/*.test.ts';
