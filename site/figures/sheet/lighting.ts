/** Pointing at a quantity anywhere on the page, or focusing it, lights it everywhere: letter, dimension, slider, reading. */
export function lightTogether(root: HTMLElement): () => void {
  let lit: string | undefined;
  const light = (id: string | undefined) => {
    if (id === lit) return;
    for (const element of root.querySelectorAll('[data-quantity].lit')) element.classList.remove('lit');
    lit = id;
    if (id === undefined) return;
    for (const element of root.querySelectorAll(`[data-quantity="${CSS.escape(id)}"]`)) element.classList.add('lit');
  };
  const follow = (event: Event) => {
    if (event.target instanceof Element)
      light(event.target.closest<HTMLElement>('[data-quantity]')?.dataset['quantity']);
  };
  root.addEventListener('pointerover', follow);
  root.addEventListener('focusin', follow);
  return () => {
    root.removeEventListener('pointerover', follow);
    root.removeEventListener('focusin', follow);
    light(undefined);
  };
}
