import { encodedSrgb } from '#core/light/srgb.ts';

/** What the paper of a print reflects. */
export const paper = 0.9;

/**
 * The level, 0 to 255, at which a screen of the sRGB curve shows something that reflects *share* of its light, seen so many *stops* darker: light
 * halves with every stop, the level does not.
 */
export function greyLevel(share: number, stops: number): number {
  const light = Math.min(1, Math.max(0, share * 2 ** -stops));
  return Math.round(255 * encodedSrgb([light, light, light])[0]);
}
