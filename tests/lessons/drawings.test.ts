import fc from 'fast-check';
import { render } from 'svelte/server';
import { afterEach, describe, expect, it } from 'vitest';
import { anySettingOf, drawnLessons, extremesOf, inputsOf, type Setting } from './settings.ts';

/** A number that went wrong, or a slot that nobody filled, as it stands in markup. */
const broken = /NaN|undefined|null|\[object|[="(\s,-]Infinity(?=["),\s])/;

/** The first of these in a drawing, with what stands around it; '' where there is none. */
function brokenIn(body: string): string {
  // What stands before is taken afterwards: asked of the expression, it would be tried at each of a drawing's 100,000 letters.
  const at = body.search(broken);
  return at < 0 ? '' : body.slice(Math.max(0, at - 60), at + 30);
}

const emptyReading = /<output name="([^"]*)"[^>]*>(?:\s|<!--[^>]*-->)*<\/output>/;

describe.each(await drawnLessons())('the figure of $slug', ({ bench, Figure, props }) => {
  afterEach(() => void bench.read(''));

  /** What is wrong with the page's figure, readings and controls as drawn with this setting. */
  function faultsAt(setting: Setting): string[] {
    bench.read(setting);
    const { body: whole } = render(Figure, { props });
    // A reading may be infinite, and says so in words; nothing that is drawn may.
    const body = whole.replaceAll(' data-value="Infinity"', '');
    return [...bench.notices.map(({ text }) => text), brokenIn(body), emptyReading.exec(body)?.[0] ?? ''].filter(
      (fault) => fault !== '',
    );
  }

  it('is drawn with readings, and a field with its range and a slider for every input that stands in it', () => {
    const { body } = render(Figure, { props });
    expect(body).toMatch(/<output name=/);
    const fields = body.match(/<input class="field[^>]*>/g) ?? [];
    expect(fields.length).toBeGreaterThan(1);
    const ids = fields.map((field) => / id="([^"]*)"/.exec(field)![1]);
    expect(new Set(ids).size, ids.join(' ')).toBe(ids.length);
    for (const field of fields) {
      const [, name] = / name="([^"]*)"/.exec(field) ?? [];
      for (const attribute of ['min', 'max', 'step']) expect(field).toMatch(new RegExp(` ${attribute}="[^"]+"`));
      expect(body).toContain(`<label for="field-${name}"`);
    }
    const named = inputsOf(bench).filter((name) => fields.some((field) => field.includes(` name="${name}"`)));
    expect(named.length).toBeGreaterThan(1);
  });

  it.each(extremesOf(bench))('holds numbers and words only, at ?%s', (setting) => {
    expect(faultsAt(setting)).toEqual([]);
  });

  it('holds numbers and words only, wherever else an address takes it', () => {
    fc.assert(
      fc.property(anySettingOf(bench), (setting) => {
        expect(faultsAt(setting)).toEqual([]);
      }),
      // A drawing takes a hundred times as long as its numbers, which `benches.test.ts` tries in 500 places: half of these stand at ends.
      { seed: 12, numRuns: 30 },
    );
  });
});

describe.each(await drawnLessons())('the address of $slug', ({ bench }) => {
  afterEach(() => void bench.read(''));

  it('says what the bench is set to: read again, it gives the same answers and the same choices', () => {
    fc.assert(
      fc.property(anySettingOf(bench), (setting) => {
        bench.read(setting);
        const [answers, address] = [{ ...bench.answers }, bench.write('')];
        const chosen = Object.keys(bench.choices).map((choice) => bench.chosen(choice));
        bench.read('');
        bench.read(address);
        expect(bench.notices).toEqual([]);
        expect({ ...bench.answers }).toEqual(answers);
        expect(Object.keys(bench.choices).map((choice) => bench.chosen(choice))).toEqual(chosen);
        expect(bench.write('')).toBe(address);
      }),
      { seed: 13, numRuns: 100 },
    );
  });

  it('is empty at the start, and leaves what it does not know to others', () => {
    expect(bench.write('')).toBe('');
    expect(bench.write('?practice=x:1')).toBe('?practice=x%3A1');
  });
});
