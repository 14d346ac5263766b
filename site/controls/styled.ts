import type { Attachment } from 'svelte/attachments';

/**
 * Sets an element's own style, as an attachment. Svelte's style attributes with values in them do so too, and tell one property from another; for
 * the few places that need one, every page would carry that.
 */
export const styled =
  (style: string): Attachment<HTMLElement> =>
  (element) => {
    element.style.cssText = style;
  };
