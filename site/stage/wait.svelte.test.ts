import { expect, it } from 'vitest';
import { captionToCome, captionToSkip, Wait } from './wait.svelte.ts';

it('keeps the first press while a picture is computed, says so, and lets the second go on', () => {
  const wait = new Wait();
  wait.isOn = true;
  expect(wait.words).toBe(captionToCome);
  expect(wait.keeps(1)).toBe(true);
  expect(wait.words).toBe(`${captionToCome}${captionToSkip}`);
  expect(wait.keeps(1)).toBe(false);
});

it('keeps nothing once the caption stands', () => {
  const wait = new Wait();
  expect(wait.words).toBeUndefined();
  expect(wait.keeps(1)).toBe(false);
});

it('lets go back, and far on, at once', () => {
  const wait = new Wait();
  wait.isOn = true;
  expect([-1, Infinity, -Infinity].map((by) => wait.keeps(by))).toEqual([false, false, false]);
  expect(wait.words).toBe(captionToCome);
});

it('has forgotten at the next place what was pressed', () => {
  const wait = new Wait();
  wait.isOn = true;
  wait.keeps(1);
  wait.isPressed = false;
  expect(wait.words).toBe(captionToCome);
  expect(wait.keeps(1)).toBe(true);
});
