import { keptChoice } from '#site/state/bench.svelte.ts';

/**
 * The subjects that are rendered, as pages name them: how wide each is, mm, and how high its nearest place lies above its deepest one.
 *
 * The core that draws them stays in the worker; a test holds these numbers to it.
 */
export const photographed = {
  'slanted-scale': { label: 'slanted scale', width: 24, top: 16 },
  'drawing-pin': { label: 'drawing pin', width: 12, top: 8.2 },
  'bay-leaf': { label: 'bay leaf with hairs', width: 36, top: 7 },
  'hoverfly-head': { label: 'hoverfly’s head', width: 3.2, top: 2.6 },
  'drop-on-wire': { label: 'drop on a wire', width: 7, top: 12 },
  'frost-crystal': { label: 'frost crystal, tilted', width: 4.6, top: 2.4 },
  stamp: { label: 'engraved stamp', width: 30, top: 1.2 },
} as const;

export type Photographed = keyof typeof photographed;

/** The choice of what is in a lesson's picture; the first is there at the start. */
export function subjectChoice(slugs: readonly Photographed[]) {
  return keptChoice(
    'Subject of the picture',
    Object.fromEntries(slugs.map((slug) => [slug, photographed[slug].label])),
  );
}
