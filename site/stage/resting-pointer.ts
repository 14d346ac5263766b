/** So long a pointer lies still before a wall no longer shows it, milliseconds. */
const rest = 3000;

/**
 * Marks *stage*, for as long as there is one, with `data-pointer="rests"` from the start and whenever no pointer has moved over it for a while: one
 * that was left somewhere points at nothing.
 */
export function watchPointer(stage: HTMLElement): void {
  let timer = 0;
  const rests = () => (stage.dataset['pointer'] = 'rests');
  rests();
  stage.addEventListener('pointermove', ({ movementX, movementY }) => {
    // A page that changes below a still pointer is told of it as of a move by nothing.
    if (!movementX && !movementY) return;
    delete stage.dataset['pointer'];
    clearTimeout(timer);
    timer = window.setTimeout(rests, rest);
  });
}
