import { subjects as photographed } from '#site/state/subjects.ts';

/**
 * What the club stacks and how long it stays as it is, s: invented, but of the size, mm, and the patience such things have.
 *
 * Of the spider there is no picture.
 */
export const subjects = {
  'frost-crystal': { ...photographed['frost-crystal'], label: 'frost crystal, melting', 'time-limit': 40 },
  'hoverfly-head': { ...photographed['hoverfly-head'], label: 'hoverfly at rest on a cool morning', 'time-limit': 90 },
  'jumping-spider': { label: 'jumping spider, about to walk on', 'subject-depth': 4, 'time-limit': 8 },
  'drop-on-wire': { ...photographed['drop-on-wire'], label: 'drop on a wire, drying', 'time-limit': 180 },
  'bay-leaf': { ...photographed['bay-leaf'], label: 'bay leaf, pressed under glass', 'time-limit': 3600 },
  'drawing-pin': { ...photographed['drawing-pin'], 'time-limit': 3600 },
  'slanted-scale': { ...photographed['slanted-scale'], 'time-limit': 3600 },
} as const;

export type Stacked = keyof typeof subjects;
