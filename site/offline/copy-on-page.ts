import { keepCopy, lookForNewer, removeCopy, showNewer, wantCopy, type CopySize, type CopyState } from './copy.ts';

/* The copy's place at the foot of every page; fetched once the page stands, for nothing on it waits for this. */

const find = (name: string) => document.querySelector<HTMLElement>(`[data-copy${name}]`)!;
const [box, words, newer] = [find(''), find('-words'), find('-newer')];
const [look, remove, keep] = [find('-look'), find('-remove'), find('-keep')];

const inWords = {
  impossible: () => '',
  none: () => 'The course is not kept on this device: without a network it does not open.',
  fetching: () => 'The course is being fetched, to be kept on this device …',
  failed: () =>
    'The course could not be kept on this device: the network did not give all of it, or the device has no room. The next visit tries again.',
  kept: (size: CopySize | undefined) =>
    `The whole course is kept on this device${size ? ` (${size.files} files, ${(size.bytes / 1e6).toFixed(1)} MB)` : ''} and opens without a network.`,
};

function tell(state: CopyState) {
  words.textContent = state.kind === 'kept' ? inWords.kept(state.size) : inWords[state.kind]();
  box.hidden = state.kind === 'impossible';
  look.hidden = remove.hidden = state.kind !== 'kept';
  keep.hidden = state.kind !== 'none';
  newer.hidden = !(state.kind === 'kept' && state.newer);
}

look.addEventListener('click', async () => {
  words.textContent = 'Looking for a newer edition …';
  const answered = await lookForNewer();
  words.textContent = answered
    ? 'This is the newest edition, or a newer one is being fetched: it is offered at the top once it is whole.'
    : 'The network did not answer. The copy on this device stays as it is.';
});
remove.addEventListener('click', async () => {
  await removeCopy();
  tell({ kind: 'none' });
});
keep.addEventListener('click', () => {
  wantCopy();
  void keepCopy(tell);
});
find('-show').addEventListener('click', () => void showNewer());

void keepCopy(tell);
