/** A term of the prose, which leads to its entry by itself, or a letter of a formula. */
type Asked = HTMLElement;

const isTerm = (asked: Asked): asked is HTMLAnchorElement => asked instanceof HTMLAnchorElement;

/** What can be asked at a place of the page. */
function askedAt(target: EventTarget | null): Asked | undefined {
  return target instanceof Element
    ? (target.closest<HTMLElement>('a.term, .lesson .katex-html [data-quantity]') ?? undefined)
    : undefined;
}

/** Most visits ask nothing: what all terms and letters mean is fetched with the first. */
const fetchMeanings = () => import('./meaning-of.ts');

/**
 * Shows a term's plain sentence beside the term, and what a letter means beside the letter: under a mouse, at a touch, a term's at the
 * keyboard's focus too. To a keyboard a formula says itself in words.
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

  let term: Asked | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function close() {
    clearTimeout(waiting);
    term?.removeAttribute('aria-describedby');
    if (bubble.matches(':popover-open')) bubble.hidePopover();
    term = undefined;
  }

  /** Does *otherwise* where the network does not give what it means. */
  async function show(asked: Asked, otherwise?: () => void) {
    clearTimeout(waiting);
    if (asked === term) return;
    close();
    term = asked;
    const meaning = await fetchMeanings().then(
      ({ meaningOf }) => meaningOf(asked),
      () => undefined,
    );
    // Something else may have been looked at since.
    if (term !== asked) return;
    if (!meaning) {
      term = undefined;
      otherwise?.();
      return;
    }
    sentence.textContent = meaning.sentence;
    onward.href = meaning.entry;
    if (isTerm(asked)) asked.setAttribute('aria-describedby', bubble.id);
    bubble.showPopover();
    place(bubble, asked);
  }

  document.addEventListener('pointerover', ({ target, pointerType }) => {
    if (pointerType === 'touch') return;
    const asked = askedAt(target);
    clearTimeout(waiting);
    if (asked) waiting = setTimeout(() => void show(asked), 200);
    else if (target instanceof Node && !bubble.contains(target)) waiting = setTimeout(close, 300);
  });
  document.addEventListener('focusin', ({ target }) => {
    const asked = askedAt(target);
    // A finger's focus comes with its click.
    if (asked?.matches(':focus-visible')) void show(asked);
    else if (target instanceof Node && !bubble.contains(target)) close();
  });
  document.addEventListener('click', (event) => {
    const asked = askedAt(event.target);
    const isTouch = (event as PointerEvent).pointerType === 'touch';
    if (asked && !isTerm(asked)) void show(asked);
    else if (asked && isTouch && asked !== term) {
      event.preventDefault();
      void show(asked, () => location.assign((asked as HTMLAnchorElement).href));
    } else if (event.target instanceof Node && !bubble.contains(event.target)) close();
  });
  document.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') close();
    // Who hears the page is told a term's meaning as the focus comes to it: it has to be here by then.
    else if (key === 'Tab') fetchMeanings().catch(() => undefined);
  });
  /** The bubble goes with its term, which the keyboard's focus may just have brought into view, and ends with it. */
  function follow() {
    if (!term || !bubble.matches(':popover-open')) return;
    const { top, bottom } = term.getBoundingClientRect();
    if (bottom < 0 || top > document.documentElement.clientHeight) close();
    else place(bubble, term);
  }
  window.addEventListener('resize', follow);
  document.addEventListener('scroll', follow, { passive: true, capture: true });
}

/** Below the first line of what is asked, else above it; within the window. */
function place(bubble: HTMLElement, asked: Asked) {
  const line = asked.getClientRects()[0]!;
  const { offsetWidth: width, offsetHeight: height } = bubble;
  const { clientWidth, clientHeight } = document.documentElement;
  const fitsBelow = line.bottom + height + 4 < clientHeight;
  bubble.style.insetInlineStart = `${Math.max(8, Math.min(line.left, clientWidth - width - 8))}px`;
  bubble.style.insetBlockStart = `${fitsBelow ? line.bottom + 4 : line.top - height - 4}px`;
}
