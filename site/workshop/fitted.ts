/**
 * Shrinks the text of an element until what it holds has room, by `--fit`, a part of its size from 1 down to *least*; again whenever its room or what
 * it holds changes. What does not fit even then is to be scrolled to.
 */
export const fitted =
  (least: number) =>
  (element: HTMLElement): (() => void) => {
    const set = (part: number) => element.style.setProperty('--fit', part.toFixed(2));
    const overflows = () =>
      element.scrollHeight > element.clientHeight + 1 || element.scrollWidth > element.clientWidth + 1;
    const fit = () => {
      let part = 1;
      set(part);
      while (overflows() && part > least) set((part = Math.max(least, part - 0.04)));
    };
    const room = new ResizeObserver(fit);
    const content = new MutationObserver(fit);
    room.observe(element);
    content.observe(element, { childList: true, characterData: true, subtree: true });
    return () => {
      room.disconnect();
      content.disconnect();
    };
  };
