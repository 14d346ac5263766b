import { codeOf, type CodeOf } from './address-code.ts';
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

/** Draws an address as a QR code; fetched for the paper that has a place for one. */
let drawCode: CodeOf | undefined;

/** Opens the browser's dialogue for this part of the lesson. */
export async function printOut(paper: Paper): Promise<void> {
  // Without a network there may be no code: the address stands there in letters as well.
  if (paper === 'card') drawCode ??= await codeOf().catch(() => undefined);
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
    const address = addressOfFigure();
    for (const place of document.querySelectorAll('[data-address]')) place.textContent = address;
    for (const place of document.querySelectorAll('[data-address-code]'))
      place.replaceChildren(drawCode?.(address) ?? '');
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
    void printOut(button.dataset['print'] as Paper);
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
