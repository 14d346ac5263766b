/// <reference types="vite/client" />
import { compare, readCases, type Comparison, type Ours, type ReferenceCase } from '#tests/support/reference-case.ts';

/** One number of one outside check, beside what the core makes of the same inputs. */
export interface ReferenceRow
  extends Pick<ReferenceCase, 'id' | 'title' | 'kind' | 'sourceText' | 'source' | 'because' | 'note'>, Comparison {
  /** Folder of the check, below `tests/reference/`. */
  readonly check: string;
  /** First heading of its `PROVENANCE.md`. */
  readonly checkTitle: string;
  /** Of ours from the expected number, relative to it; null where that is 0 or infinite and a ratio says nothing. */
  readonly relativeDeviation: number | null;
  /** The same in units of the tolerance: above 1 the check's test fails. */
  readonly deviationInTolerances: number;
}

/** One outside check, and how closely the core agrees with it. */
export interface CheckedSource {
  /** Its folder, below `tests/reference/`. */
  readonly check: string;
  readonly title: string;
  readonly rows: readonly ReferenceRow[];
  /** The row that takes up most of its tolerance. */
  readonly worst: ReferenceRow;
}

const cases = import.meta.glob<unknown>('./*/cases.json', { eager: true, import: 'default' });
const answers = import.meta.glob<Ours>('./*/ours.ts', { eager: true, import: 'ours' });
const provenances = import.meta.glob<string>('./*/PROVENANCE.md', { eager: true, query: '?raw', import: 'default' });

/**
 * Every number of every outside check, in the order of folders and rows: what the Sources page shows.
 *
 * @throws Error where a check lacks a file, a row lacks something, or the core refuses a row's inputs
 */
export function referenceRows(): readonly ReferenceRow[] {
  return Object.entries(cases).flatMap(([path, json]) => {
    const folder = path.replace(/cases\.json$/, '');
    const check = folder.replaceAll(/^\.\/|\/$/g, '');
    const ours = answers[`${folder}ours.ts`];
    const checkTitle = /^# (.+)$/m.exec(provenances[`${folder}PROVENANCE.md`] ?? '')?.[1];
    if (!ours) throw new Error(`tests/reference/${check} lacks an ours.ts that exports 'ours'`);
    if (!checkTitle) throw new Error(`tests/reference/${check} lacks a PROVENANCE.md with a '# title'`);
    return readCases(json, path).flatMap((row) =>
      compare(row, ours).map((compared) => ({
        ...about(row),
        check,
        checkTitle,
        ...compared,
        ...deviationOf(compared),
      })),
    );
  });
}

function about({ id, title, kind, sourceText, source, because, note }: ReferenceCase) {
  return { id, title, kind, sourceText, source, because, ...(note === undefined ? {} : { note }) };
}

function deviationOf({ expected, ours, allowed }: Comparison) {
  const apart = ours === expected ? 0 : Math.abs(ours - expected);
  return {
    relativeDeviation: expected === 0 || !Number.isFinite(expected) ? null : apart / Math.abs(expected),
    deviationInTolerances: apart === 0 ? 0 : apart / allowed,
  };
}

/** The same rows by check, in the order of titles. */
export function checkedSources(): readonly CheckedSource[] {
  const byCheck = Map.groupBy(referenceRows(), ({ check }) => check);
  return [...byCheck]
    .map(([check, rows]) => ({ check, title: rows[0]!.checkTitle, rows, worst: worstOf(rows) }))
    .sort((one, other) => one.title.localeCompare(other.title, 'en'));
}

/** Of at least one row, the one that takes up most of its tolerance. */
export function worstOf(rows: readonly ReferenceRow[]): ReferenceRow {
  return rows.reduce((worst, row) => (row.deviationInTolerances > worst.deviationInTolerances ? row : worst));
}

/** True where the source prints the number or a general-purpose library computed it: not common practice, and not worked out here. */
export function isMadeByOthers({ kind }: Pick<ReferenceRow, 'kind'>): boolean {
  return kind === 'published' || kind === 'run-here' || kind === 'library';
}
