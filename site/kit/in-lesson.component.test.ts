import { afterEach, beforeEach, expect, it } from 'vitest';
import { lessonIn } from '#site/lesson/lesson.ts';
import { ownParts } from '#site/state/own-parts.svelte.ts';
import { ownCamera as camera } from '#tests/support/own-parts.ts';
import { kitOf } from './change.ts';
import { kitIn } from './in-lesson.ts';
import { keptKit } from './kept-kit.ts';
import type { NewPart } from './part.ts';

// Other tests share what this page keeps.
const button = document.createElement('button');
const { load } = ownParts;
beforeEach(() => {
  // A lesson that searches chains may have been drawn before.
  ownParts.load = undefined;
  button.dataset['exampleSwitch'] = '';
  document.body.append(button);
});
afterEach(() => {
  // None is kept again: a lesson that is drawn later shall fetch none.
  localStorage.removeItem('ring-and-ruler.kit');
  ownParts.load = load;
  button.remove();
});

const words = (slug: string, ...parts: readonly NewPart[]) => {
  const { bench } = lessonIn(slug);
  keptKit.write(kitOf(...parts));
  const kit = kitIn(bench, '');
  const { textContent } = button;
  kit.stop();
  bench.offer({});
  return textContent;
};

it('the example is worked with one’s own kit wherever something of it can be chosen', () => {
  const paper: NewPart = { kind: 'light', name: 'Paper', 'source-size': 300 };
  expect(words('size-of-light', paper)).toBe('Work it with my own kit');
  expect(words('extension', paper)).toBe('Work it with the figure’s numbers');
  expect(words('extension', camera)).toBe('Work it with my own kit');
});
