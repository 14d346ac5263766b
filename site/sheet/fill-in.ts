import { mount } from 'svelte';
import type { Formula } from '#core/quantity/formula.ts';
import { lineIn } from '#site/controls/formula/line.ts';
import FillIn from './FillIn.svelte';
import type { SheetSolvable } from './filling.svelte.ts';

// Read anew under a name of their own: else every lesson's scripts would be cut up along what the sheet shares with them.
const files = import.meta.glob<Record<string, unknown>>('../../core/*/*.formula.ts', { eager: true, query: '?sheet' });

const formulas = new Map(
  Object.entries(files).map(([path, exports]): [string, SheetSolvable] => {
    const id = path.slice(path.lastIndexOf('/') + 1).replace(/\.formula\.ts.*$/, '');
    const [, formula] = Object.entries(exports).find(([name]) => name.endsWith('Formula'))!;
    return [id, { id, ...(formula as Formula<never>) }];
  }),
);

/** What is filled in, by formula, as an address says it. */
const searches = new Map<string, string>();

/** Puts the fields of the formula *id* into *place*, and with them its equation, out of *fold*; the page's address follows. */
export function fillIn(id: string, fold: HTMLElement, place: HTMLElement): void {
  const formula = formulas.get(id)!;
  const equation = fold.querySelector<HTMLElement>('.numbers')!;
  const { show } = lineIn(equation.querySelector<HTMLElement>('[data-equation]')!);
  const { search } = location;
  const isMeant = new URLSearchParams(search).get('formula') === id;
  const settle = (filled: string) => {
    searches.set(id, filled);
    recall(id);
  };
  place.replaceChildren();
  mount(FillIn, { target: place, props: { formula, search: isMeant ? search : '', equation, show, settle } });
}

/** The page's address speaks of the formula *id* from now on, and leads to it without scripts too. */
export function recall(id: string): void {
  history.replaceState(history.state, '', `${location.pathname}${searches.get(id) ?? ''}#${id}`);
}
