import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { formulaLine } from '#site/state/formula-line.ts';
import { numberPatcher } from './patch.ts';
import { numericFormula } from './render.ts';
import { switchExample } from './switch-example.ts';

/** What `Line.astro` builds. */
function built(subjectDistance: number): string {
  const line = formulaLine(workingDistanceFormula, {
    'subject-distance': subjectDistance,
    'front-principal-depth': 22,
  });
  const texts = 'texts' in line ? line.texts : {};
  return `<div data-equation="working-distance"><div data-equation-numbers ${'words' in line ? 'hidden' : ''}>${numericFormula(workingDistanceFormula, texts)}</div>
    <p data-equation-words ${'texts' in line ? 'hidden' : ''}>${'words' in line ? line.words : ''}</p></div>`;
}

const lineAt = (distance: number | { readonly words: string; readonly value: number }) => () =>
  formulaLine(workingDistanceFormula, { 'subject-distance': distance, 'front-principal-depth': 22 });
const prose = () => undefined;

beforeEach(() => {
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      observe() {}
    },
  );
});
afterEach(() => {
  vi.unstubAllGlobals();
  document.body.innerHTML = '';
});

const numbers = () =>
  [...document.querySelectorAll<HTMLElement>('.katex-html [data-number]')].map(({ textContent }) =>
    textContent.replace('\u2009', ' '),
  );
const isHidden = (part: string) => document.querySelector<HTMLElement>(`[data-equation-${part}]`)!.hidden;

it('prints each line anew as a whole, so that its numbers agree after every movement, in both halves', () => {
  document.body.innerHTML = built(107.4712);
  const patch = numberPatcher(document);
  expect(numbers()).toEqual(['107.5 mm', '22 mm', '85.5 mm']);
  patch({ line: lineAt(150), inProse: prose });
  expect(numbers()).toEqual(['150 mm', '22 mm', '128 mm']);
  const spoken = [...document.querySelectorAll('mtext[data-number]')].map(({ textContent }) => textContent);
  expect(spoken).toEqual(['150\u2009mm', '22\u2009mm', '128\u2009mm']);
});

it('gives way to words where there is no equation, and comes back', () => {
  document.body.innerHTML = built(107.4712);
  const patch = numberPatcher(document);
  patch({ line: lineAt({ words: '∞, set to infinity', value: Infinity }), inProse: prose });
  expect([isHidden('numbers'), isHidden('words')]).toEqual([true, false]);
  expect(document.querySelector('[data-equation-words]')!.textContent).toBe(
    'No numbers here. Subject distance: ∞, set to infinity.',
  );
  patch({ line: lineAt(150), inProse: prose });
  expect([isHidden('numbers'), isHidden('words')]).toEqual([false, true]);
  expect(numbers()).toEqual(['150 mm', '22 mm', '128 mm']);
});

it('keeps an example as it was built until it follows, and puts it back', () => {
  document.body.innerHTML = `<div data-example><button>own</button>${built(107.4712)}</div>`;
  const patch = numberPatcher(document);
  const as = { line: lineAt(150), inProse: prose };
  patch(as);
  expect(numbers()).toEqual(['107.5 mm', '22 mm', '85.5 mm']);
  switchExample(document.querySelector('button')!);
  patch(as);
  expect(numbers()).toEqual(['150 mm', '22 mm', '128 mm']);
  switchExample(document.querySelector('button')!);
  patch(as);
  expect(numbers()).toEqual(['107.5 mm', '22 mm', '85.5 mm']);
});
