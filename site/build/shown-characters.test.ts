import { expect, test } from 'vitest';
import { everyFormula } from '#tests/support/every-formula.ts';
import { symbolicFormula } from '../controls/formula/render.ts';
import { shownCharacters } from './shown-characters.ts';

const shown = new Set(shownCharacters());

test('holds what is typed and what pages say', () => {
  for (const character of 'azAZ09 .,:;!?%&()+-=µλ×−–…′″“”’∞→¼½') expect(shown, character).toContain(character);
});

test('holds every character that any formula is set in', async () => {
  for (const { path, formula } of await everyFormula()) {
    const html = symbolicFormula(formula.tex).replace(/<math.*?<\/math>/gs, '');
    const text = html.replace(/<[^>]+>/g, '').replace(/&[a-z]+;|&#x[0-9a-f]+;/g, '');
    for (const character of text.trim())
      if (character > '~') expect(shown, `${path}: ${character}`).toContain(character);
  }
});

test('leaves out what no page shows', () => {
  for (const character of 'ЖשあΨ') expect(shown, character).not.toContain(character);
});
