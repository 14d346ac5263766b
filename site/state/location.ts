import { withParameter } from './address.ts';

/**
 * The page's address as the one road by which state travels between islands: whoever wants to set the figure
 * goes to an address; whoever shows it listens.
 */
const moved = 'address-moved';

/** Replaces the query of the page's address without a visit to the server and tells the listeners. */
export function goTo(search: string): void {
  replaceSearch(search);
  window.dispatchEvent(new Event(moved));
}

/** Goes there as {@link goTo} does, and leaves an entry behind: the browser's Back brings what was set. */
export function goOn(search: string): void {
  history.pushState(null, '', location.href);
  goTo(search);
}

/** Goes there as {@link goTo} does, in an entry of its own: the browser's Back leads out of it, and Forward in again. */
export function goInto(search: string): void {
  history.pushState({ isEntered: true }, '', location.href);
  goTo(search);
}

let isLeaving = false;

/** Goes there out of such an entry, back to the one before; as {@link goTo} does where none was gone into. */
export function goOutTo(search: string): void {
  if (isLeaving) return;
  isLeaving = (history.state as { isEntered?: true } | null)?.isEntered === true;
  if (!isLeaving) return goTo(search);
  const arrive = () => {
    isLeaving = false;
    goTo(search);
  };
  window.addEventListener('popstate', arrive, { once: true });
  history.back();
}

/**
 * Replaces the query in silence: for the one who already shows what the address says. The problem being practised stays
 * in it until another is named: it has nothing to do with the figure.
 */
export function replaceSearch(search: string): void {
  const kept = withParameter(search, 'practice', problemIn(search) ?? problemIn(location.search));
  history.replaceState(history.state, '', `${location.pathname}${kept}${location.hash}`);
}

function problemIn(search: string): string | null {
  return new URLSearchParams(search).get('practice');
}

/** Calls *listener* whenever the address is set from elsewhere; returns the way to stop. */
export function onMoved(listener: () => void): () => void {
  window.addEventListener(moved, listener);
  window.addEventListener('popstate', listener);
  return () => {
    window.removeEventListener(moved, listener);
    window.removeEventListener('popstate', listener);
  };
}
