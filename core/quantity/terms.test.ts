import { describe, expect, it } from 'vitest';
import { glossary } from './glossary.ts';
import { terms } from './terms.ts';
import { quantityIds } from './vocabulary.ts';

const letters = (text: string) => text.toLowerCase();

describe('the glossary', () => {
  it('explains every quantity once, under its own id', () => {
    expect(terms.flatMap(({ quantity }) => quantity ?? []).sort()).toEqual([...quantityIds].sort());
    expect(new Set(terms.map(({ id }) => id)).size).toBe(terms.length);
    expect(new Set(terms.map(({ name }) => letters(name))).size).toBe(terms.length);
  });

  it('never writes two terms alike: a form in prose means one of them', () => {
    const forms = terms.flatMap((term) => term.forms.map((form) => letters(form)));
    expect(forms.filter((form, index) => forms.indexOf(form) !== index)).toEqual([]);
  });

  it.each(terms)('says what $id is in a plain sentence and in an exact one', ({ plain, exact }) => {
    expect(plain).toMatch(/^\p{Lu}[^\n]*[.]$/u);
    expect(exact).toMatch(/^[^\n]*[.)]$/u);
    expect(exact).not.toBe(plain);
  });

  it.each(terms)('keeps the plain sentence on $id free of letters of formulas, and short', ({ plain }) => {
    expect(plain).not.toMatch(/[λνΔθ′]|\b[A-Z]_\w|\b(?!f-)[a-zA-Z] = /u);
    expect(plain.split(/\s+/).length).toBeLessThanOrEqual(30);
  });

  it('has for each quantity a fragment that fits a formula’s legend', () => {
    for (const { quantity } of terms) {
      if (quantity) expect(glossary[quantity].meaning.split(/\s+/).length, quantity).toBeLessThanOrEqual(12);
    }
  });
});
