import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { describe, expect, it } from 'vitest';
import { readCases } from '../reference-case.ts';
import { root } from '../run.ts';
import { check } from './check.ts';
import { formula } from './formula.ts';
import { lesson } from './lesson.ts';
import { isUnfilled } from './scaffold.ts';
import { filledTemplates } from './template.ts';

const begun = await lesson(['focusing-close', 'gaussian/subject-distance']);

describe('the scaffold of a formula', () => {
  const { files } = formula(['depth/frame-step', 'depth-of-field', 'overlap']);
  const source = files['core/depth/frame-step.formula.ts'] ?? '';

  it('is a formula file and its test', () => {
    expect(Object.keys(files)).toEqual(['core/depth/frame-step.formula.ts', 'core/depth/frame-step.formula.test.ts']);
    expect(source).toContain('export function frameStep({ depthOfField, overlap }: Named<Inputs>): number');
    expect(source).toContain('export const frameStepFormula');
  });

  it('does not pass for a formula', () => {
    expect(source).toContain(`throw new Error('frameStep is not written yet')`);
  });

  it('finds the quantity in a name that says by which route', () => {
    const { files } = formula(['gaussian/magnification-from-print', 'image-width']);
    expect(Object.values(files)[0]).toContain(`gives: 'magnification'`);
  });

  it.each([
    [['depth/sharpness', 'overlap'], /has no "sharpness"/],
    [['depth/frame-step', 'sharpness'], /has no "sharpness"/],
    [['nowhere/frame-step', 'overlap'], /no topic "nowhere"/],
    [['depth/frame-step'], /has inputs/],
    [['depth/frameStep', 'overlap'], /"frameStep" is no name of ours/],
    [[], /A name is missing/],
  ])('refuses %j in words', (args, words) => {
    expect(() => formula(args)).toThrow(words);
  });
});

it('refuses a template with a mark that nothing is called', () => {
  expect(() => filledTemplates('check', {})).toThrow(/templates\/check\/.*: nothing is called name/);
});

describe('the scaffold of an outside check', () => {
  const { files } = check(['made-up']);

  it('is the four files that every outside check has', () => {
    const names = ['PROVENANCE.md', 'cases.json', 'ours.ts', 'made-up.test.ts'];
    expect(Object.keys(files)).toEqual(names.map((name) => `tests/reference/made-up/${name}`));
  });

  it('does not pass for an outside check', () => {
    const cases: unknown = JSON.parse(files['tests/reference/made-up/cases.json'] ?? '');
    expect(() => readCases(cases)).toThrow(/must be a text that says something/);
  });
});

describe('the scaffold of a lesson', () => {
  it('is what the contract of a lesson asks for', () => {
    const names = [
      'bench.svelte.ts',
      'figures/Bench.svelte',
      'figures/Drawing.svelte',
      'lesson.mdx',
      'problems.ts',
      'stage.ts',
    ];
    expect(Object.keys(begun.files).sort()).toEqual(names.map((name) => `lessons/focusing-close/${name}`));
  });

  it('runs at fewer than forty lines of code before its own content', async () => {
    const lines = await Promise.all(
      ['bench.svelte.ts', 'figures/Bench.svelte', 'figures/Drawing.svelte'].map(async (name) => {
        const filepath = `lessons/focusing-close/${name}`;
        const text = await format(begun.files[filepath]!, { ...(await resolveConfig(filepath)), filepath });
        return text.split('\n').filter((line) => !/^\s*(?:$|\/[/*])/.test(line)).length;
      }),
    );
    expect(lines.reduce((sum, count) => sum + count)).toBeLessThan(40);
  });

  it('imports only what there is', () => {
    const imported = Object.values(begun.files).flatMap((text) => [...text.matchAll(/ from '#([^']+)'/g)]);
    expect(imported.length).toBeGreaterThan(0);
    for (const [, path = ''] of imported) expect(existsSync(join(root, path)), path).toBe(true);
  });

  it.each([
    [['sharpening', 'gaussian/subject-distance'], /no lesson "sharpening"/],
    [['focusing-close', 'gaussian/sharpness'], /no core\/gaussian\/sharpness.formula.ts/],
    [['focusing-close'], /There is no/],
    [[], /A name is missing/],
  ])('refuses %j in words', async (args, words) => {
    await expect(lesson(args)).rejects.toThrow(words);
  });
});

const all = { lesson: begun, formula: formula(['depth/frame-step', 'overlap']), check: check(['made-up']) };

describe.each(Object.entries(all))('what the scaffold of a %s writes', (_, { files }) => {
  it('shows where it is to be filled in', () => {
    expect(Object.values(files).some(isUnfilled)).toBe(true);
  });

  it.each(Object.entries(files))('can be formatted: %s', async (filepath, text) => {
    const written = await format(text, { ...(await resolveConfig(filepath)), filepath });
    expect(written).not.toBe('');
  });
});
