/**
 * Shows a term's plain sentence beside the term: under a mouse, at a touch, at the keyboard's focus.
 *
 * One bubble for the page. It can be reached by the pointer, stays until something else is looked at, and Escape closes it. Where a finger
 * can only touch, the first touch shows the sentence and the bubble's link leads on; all others follow the term's own link as usual.
 */
export function showMeanings(): void {
  const bubble = document.createElement('div');
  const sentence = document.createElement('span');
  const onward = document.createElement('a');
  bubble.id = 'meaning';
  bubble.className = 'meaning';
  bubble.popover = 'manual';
  bubble.role = 'tooltip';
  onward.textContent = 'More exactly';
  // The term's own link leads there too: one stop for the keyboard is enough.
  onward.tabIndex = -1;
  bubble.append(sentence, ' ', onward);
  document.body.append(bubble);

  let term: HTMLAnchorElement | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function close() {
    clearTimeout(waiting);
    term?.removeAttribute('aria-describedby');
    if (term) bubble.hidePopover();
    term = undefined;
  }

  function show(link: HTMLAnchorElement) {
    clearTimeout(waiting);
    if (link === term) return;
    close();
    term = link;
    sentence.textContent = link.dataset['plain']!;
    onward.href = link.href;
    link.setAttribute('aria-describedby', bubble.id);
    bubble.showPopover();
    place(bubble, link);
  }

  const termAt = (target: EventTarget | null) =>
    target instanceof Element ? (target.closest<HTMLAnchorElement>('a.term') ?? undefined) : undefined;

  document.addEventListener('pointerover', ({ target, pointerType }) => {
    if (pointerType === 'touch') return;
    const link = termAt(target);
    clearTimeout(waiting);
    if (link) waiting = setTimeout(() => show(link), 200);
    else if (target instanceof Node && !bubble.contains(target)) waiting = setTimeout(close, 300);
  });
  document.addEventListener('focusin', ({ target }) => {
    const link = termAt(target);
    // A finger's focus comes with its click.
    if (link?.matches(':focus-visible')) show(link);
    else if (target instanceof Node && !bubble.contains(target)) close();
  });
  document.addEventListener('click', (event) => {
    const link = termAt(event.target);
    if (link && (event as PointerEvent).pointerType === 'touch' && link !== term) {
      event.preventDefault();
      show(link);
    } else if (event.target instanceof Node && !bubble.contains(event.target)) close();
  });
  document.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') close();
  });
  /** The bubble goes with its term, which the keyboard's focus may just have brought into view, and ends with it. */
  function follow() {
    if (!term) return;
    const { top, bottom } = term.getBoundingClientRect();
    if (bottom < 0 || top > document.documentElement.clientHeight) close();
    else place(bubble, term);
  }
  window.addEventListener('resize', follow);
  document.addEventListener('scroll', follow, { passive: true, capture: true });
}

/** Below the term's first line, else above it; within the window. */
function place(bubble: HTMLElement, link: HTMLElement) {
  const line = link.getClientRects()[0]!;
  const { offsetWidth: width, offsetHeight: height } = bubble;
  const { clientWidth, clientHeight } = document.documentElement;
  const fitsBelow = line.bottom + height + 4 < clientHeight;
  bubble.style.insetInlineStart = `${Math.max(8, Math.min(line.left, clientWidth - width - 8))}px`;
  bubble.style.insetBlockStart = `${fitsBelow ? line.bottom + 4 : line.top - height - 4}px`;
}
