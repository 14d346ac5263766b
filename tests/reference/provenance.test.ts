import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCases } from '#tests/support/reference-case.ts';

const here = import.meta.dirname;
const checks = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const read = (check: string, file: string) => readFileSync(join(here, check, file), 'utf8');
const rowsOf = (check: string) => readCases(JSON.parse(read(check, 'cases.json')), `${check}/cases.json`);

it('finds outside checks to look at', () => {
  expect(checks.length).toBeGreaterThan(0);
});

describe.each(checks)('outside check %s', (check) => {
  it.each(['PROVENANCE.md', 'cases.json', 'ours.ts', `${check}.test.ts`])('has %s', (file) => {
    expect(existsSync(join(here, check, file))).toBe(true);
  });

  it('says what was read, what is from memory and under which licence', () => {
    const provenance = read(check, 'PROVENANCE.md');
    expect(provenance).toMatch(/^# \S/);
    expect(provenance).toMatch(/\bread\b/i);
    expect(provenance).toMatch(/from memory/i);
    expect(provenance).toMatch(/licen[cs]e|public domain/i);
  });

  it('has cases that are each run by its test', () => {
    expect(rowsOf(check).length).toBeGreaterThan(0);
    expect(read(check, `${check}.test.ts`)).toMatch(/describeReference\(cases, ours\)/);
  });

  it('gives a source for whatever is not common practice, and none for what is', () => {
    for (const { id, kind, source } of rowsOf(check)) {
      if (kind === 'common practice') expect(source, id).toBe('none');
      else expect(source, id).not.toBe('none');
    }
  });

  it('cites without addresses, files and copies, which stand in the locator', () => {
    const technical =
      /(copy|extract) at |@[0-9a-f]{6}|\bmodules\/m|\belement (fs|eip|import)-|\b[a-z-]+\.(com|org|net|nl|info|py|java|cpp|pm|rst|html)\b/;
    for (const { id, title, source, note = '' } of rowsOf(check)) {
      for (const shown of [title, source, note]) expect(shown, id).not.toMatch(technical);
    }
  });

  it('names the version of every library', () => {
    for (const { id, kind, source } of rowsOf(check)) {
      if (kind === 'library' || kind === 'run-here') expect(source, id).toMatch(/\d+\.\d+/);
    }
  });
});

it('uses no id twice', () => {
  const ids = checks.flatMap((check) => rowsOf(check).map(({ id }) => id));
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});
