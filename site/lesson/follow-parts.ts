/** Says in the contents, and on the lesson itself, which part is being read; a link to a folded part opens it. */
export function followParts(): void {
  const lesson = document.querySelector<HTMLElement>('.lesson')!;
  const list = document.querySelector<HTMLElement>('#contents')!;
  const label = document.querySelector('.contents .here')!;
  const sections = [...lesson.querySelectorAll<HTMLElement>('section.part')];

  function say(part: string): void {
    if (lesson.dataset['here'] === part) return;
    lesson.dataset['here'] = part;
    for (const tick of document.querySelectorAll<HTMLElement>('[data-tick]'))
      tick.toggleAttribute('data-here', tick.dataset['tick'] === part);
    for (const link of list.querySelectorAll('a')) {
      if (link.hash === `#${part}`) {
        link.setAttribute('aria-current', 'true');
        label.textContent = link.textContent;
      } else link.removeAttribute('aria-current');
    }
  }

  // A part is read while it crosses a line a little below the middle: above that the figure stands on a phone.
  const watch = new IntersectionObserver(
    (entries) => {
      for (const { isIntersecting, target } of entries) if (isIntersecting) say(target.id || 'figure');
    },
    { rootMargin: '-60% 0px -39% 0px' },
  );
  for (const section of sections) if (section.id !== '') watch.observe(section);
  // Beside the text the figure is always there; below it, on a phone, its controls are a place of their own.
  const controls = lesson.querySelector('.part-figure .below');
  if (controls && matchMedia('(max-width: 63.99rem)').matches) watch.observe(controls);

  function openNamed(): void {
    const part = location.hash.length > 1 ? document.getElementById(location.hash.slice(1)) : null;
    const fold = part?.querySelector<HTMLDetailsElement>(':scope > .part-fold');
    if (fold && part?.id === 'instructor') fold.open = true;
  }
  openNamed();
  addEventListener('hashchange', openNamed);
  list.addEventListener('click', () => list.hidePopover());
}
