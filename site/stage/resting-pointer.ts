/** So long a pointer lies still before a wall no longer shows it, milliseconds. */
const rest = 3000;

/**
 * Marks *stage* with `data-pointer="rests"` from the start, and whenever no mouse has moved over it for a while, until the function returned is
 * called: a pointer that was left somewhere points at nothing.
 */
export function watchPointer(stage: HTMLElement): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const rests = () => (stage.dataset['pointer'] = 'rests');
  const moves = ({ movementX, movementY, pointerType }: PointerEvent) => {
    // A page that changes below a still pointer is told of it as of a move by nothing.
    if (pointerType !== 'mouse' || (movementX === 0 && movementY === 0)) return;
    delete stage.dataset['pointer'];
    clearTimeout(timer);
    timer = setTimeout(rests, rest);
  };
  rests();
  stage.addEventListener('pointermove', moves);
  return () => {
    clearTimeout(timer);
    stage.removeEventListener('pointermove', moves);
  };
}
