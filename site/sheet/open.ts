/**
 * Brings a formula's fields to life when it is opened, and no sooner: the sheet's own script is nothing but this. What solves, and every
 * formula, comes in one file with the first of them.
 */
export function openOnDemand(): void {
  document.addEventListener('toggle', ({ target }) => void follow(target as HTMLElement), { capture: true });
  const asked = new URLSearchParams(location.search).get('formula');
  if (asked === null) return;
  const fold = foldOf(asked);
  if (fold) {
    fold.open = true;
    fold.closest('.entry')!.scrollIntoView();
  } else {
    const notice = document.querySelector<HTMLElement>('[data-sheet-notice]')!;
    notice.textContent = `The link asks for a formula “${asked.slice(0, 40)}”, which this sheet does not have. All that it has stand below.`;
    notice.hidden = false;
  }
}

const foldOf = (id: string) => document.querySelector<HTMLDetailsElement>(`details[data-fill-in="${CSS.escape(id)}"]`);

async function follow(fold: HTMLElement): Promise<void> {
  const id = fold.dataset['fillIn'];
  if (!(fold instanceof HTMLDetailsElement) || id === undefined) return;
  const place = fold.querySelector<HTMLElement>('[data-fields]')!;
  if (!fold.open) {
    if (new URLSearchParams(location.search).get('formula') === id) forget();
    return;
  }
  const isFirst = place.dataset['fields'] === '';
  place.dataset['fields'] = 'asked';
  try {
    const { fillIn, recall } = await import('./fill-in.ts');
    if (isFirst) fillIn(id, fold, place);
    else recall(id);
  } catch {
    place.dataset['fields'] = '';
    place.textContent =
      'The fields could not be fetched. Close this formula and open it again to try once more; the example below stands.';
  }
}

/** The address speaks of no formula that is closed. */
function forget(): void {
  history.replaceState(history.state, '', location.pathname);
}
