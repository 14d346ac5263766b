import { expect, test } from 'vitest';
import { shownCharacters } from './shown-characters.ts';

const shown = new Set(shownCharacters());

test('holds what is typed and what pages say', () => {
  for (const character of 'azAZ09 .,:;!?%&()+-=µλ×−–…′″“”’∞→¼½') expect(shown, character).toContain(character);
});

test('leaves out what no page shows', () => {
  for (const character of 'ЖשあΨ') expect(shown, character).not.toContain(character);
});
