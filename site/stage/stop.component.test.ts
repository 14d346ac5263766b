import { expect, it } from 'vitest';
import { stopInFigure } from './keys.ts';

it('stops what runs, and begins nothing that rests', () => {
  const stage = document.createElement('div');
  const button = document.createElement('button');
  button.dataset['does'] = 'run';
  button.setAttribute('aria-pressed', 'true');
  button.addEventListener('click', () => button.setAttribute('aria-pressed', 'false'));
  stage.append(button);
  stopInFigure(stage);
  expect(button.getAttribute('aria-pressed')).toBe('false');
  button.addEventListener('click', () => button.setAttribute('aria-pressed', 'clicked'));
  stopInFigure(stage);
  expect(button.getAttribute('aria-pressed')).toBe('false');
});
