import { photographed } from '#site/figures/picture/photographed.ts';

/**
 * What the club stacks, mm, and how long it stays as it is, s: invented, but of the size and the patience such things have.
 *
 * Of the spider there is no picture.
 */
export const subjects = {
  'frost-crystal': {
    ...photographed['frost-crystal'],
    label: 'frost crystal, melting',
    'subject-depth': 2.4,
    'time-limit': 40,
  },
  'hoverfly-head': {
    ...photographed['hoverfly-head'],
    label: 'hoverfly at rest on a cool morning',
    'subject-depth': 2.6,
    'time-limit': 90,
  },
  'jumping-spider': { label: 'jumping spider, about to walk on', 'subject-depth': 4, 'time-limit': 8 },
  'drop-on-wire': {
    ...photographed['drop-on-wire'],
    label: 'drop on a wire, drying',
    'subject-depth': 3,
    'time-limit': 180,
  },
  'bay-leaf': {
    ...photographed['bay-leaf'],
    label: 'bay leaf, pressed under glass',
    'subject-depth': 7,
    'time-limit': 3600,
  },
  'drawing-pin': { ...photographed['drawing-pin'], 'subject-depth': 8.2, 'time-limit': 3600 },
  'slanted-scale': { ...photographed['slanted-scale'], 'subject-depth': 16, 'time-limit': 3600 },
} as const;

export type SubjectSlug = keyof typeof subjects;
