import { fitOn, unfit } from './fit.ts';
import { pagesOf, type Paper } from './paper.ts';

/** What is printed stands in the page's root for paper.css; where nothing does, as by the browser's own command, it is the learner's sheet. */
const named = () => document.documentElement.dataset;

/** Where the figure as it is set can be found: not in the middle of a demonstration, nor at somebody's problem. */
function addressOfFigure(): string {
  const { origin, pathname, searchParams } = new URL(location.href);
  for (const name of ['stage', 'answered', 'practice']) searchParams.delete(name);
  return `${origin}${pathname}${searchParams.size > 0 ? `?${searchParams}` : ''}`;
}

/** Opens the browser's dialogue for this part of the lesson. */
export function printOut(paper: Paper): void {
  named()['paper'] = paper;
  window.print();
}

/**
 * Readies the page whenever it is about to be printed, however that was asked for: *before* puts in what stands on paper alone, *after* takes it out.
 * Buttons with `data-print` print what they name. Returns the way to stop.
 */
export function followPrinting(before: () => void, after: () => void): () => void {
  const begin = () => {
    before();
    for (const place of document.querySelectorAll('[data-address]')) place.textContent = addressOfFigure();
    fitOn(pagesOf[(named()['paper'] ?? 'learner') as Paper]);
  };
  const end = () => {
    delete named()['paper'];
    unfit();
    after();
  };
  const click = ({ target }: MouseEvent) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-print]') : null;
    if (!button) return;
    button.closest<HTMLElement>('[popover]')?.hidePopover();
    printOut(button.dataset['print'] as Paper);
  };
  window.addEventListener('beforeprint', begin);
  window.addEventListener('afterprint', end);
  document.addEventListener('click', click);
  return () => {
    window.removeEventListener('beforeprint', begin);
    window.removeEventListener('afterprint', end);
    document.removeEventListener('click', click);
  };
}
