/** Every formula of the core names the outside checks that meet it, and at least one of them holds a number that others made. */
import { afterAll, describe, expect, it } from 'vitest';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { formulasImported } from '#tests/support/formulas-imported.ts';
import { CallCounter } from '#tests/support/formulas-run.ts';
import { everyFormula } from '#tests/support/every-formula.ts';
import { isMadeByOthers } from './all.ts';
import { compare, readCases, type Ours, type ReferenceCase } from '#tests/support/reference-case.ts';

const answers = import.meta.glob<Ours>('./*/ours.ts', { eager: true, import: 'ours' });
const here = import.meta.dirname;
const counter = new CallCounter();
afterAll(() => counter.stop());

interface Check {
  readonly name: string;
  /** Formula files that its `ours.ts` takes from the core. */
  readonly imported: ReadonlySet<string>;
  /** Formula files that ran for a number that others made. */
  readonly metOutside: ReadonlySet<string>;
  /** Formula files that ran for any of its numbers. */
  readonly ran: ReadonlySet<string>;
}

const names = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

/** What each check runs for a number that others made, and for its other numbers. */
const runs = names.flatMap((name) => {
  const rows = readCases(JSON.parse(readFileSync(join(here, name, 'cases.json'), 'utf8')), name);
  const ours = answers[`./${name}/ours.ts`]!;
  const runOf = (some: readonly ReferenceCase[]) => () => some.forEach((row) => compare(row, ours));
  return [runOf(rows.filter(isMadeByOthers)), runOf(rows.filter((row) => !isMadeByOthers(row)))];
});
const ran = counter.formulasRunBy(runs);

const checks = names.map((name, at): Check => {
  const [metOutside, ranOtherwise] = [ran[2 * at]!, ran[2 * at + 1]!];
  return {
    name,
    imported: formulasImported(`tests/reference/${name}/ours.ts`),
    metOutside,
    ran: new Set([...metOutside, ...ranOtherwise]),
  };
});
const formulas = await everyFormula();

it('has formulas and checks to look at', () => {
  expect(formulas.length).toBeGreaterThan(100);
  expect(checks.length).toBeGreaterThan(50);
});

describe.each(formulas)('$path', ({ path, formula }) => {
  it('names the checks that take it from the core, all of them and no other', () => {
    const taking = checks.filter(({ imported }) => imported.has(path)).map(({ name }) => name);
    expect(formula.checkedBy).toEqual(taking.sort());
  });

  it('is run by every check that it names', () => {
    const idle = checks.filter(({ name, ran }) => formula.checkedBy.includes(name) && !ran.has(path));
    expect(idle.map(({ name }) => name)).toEqual([]);
  });

  it('meets a number that was not made by this project', () => {
    const meeting = checks.filter(({ name, metOutside }) => formula.checkedBy.includes(name) && metOutside.has(path));
    expect(meeting.map(({ name }) => name)).not.toEqual([]);
  });
});
