/**
 * What the club stacks, mm, and how long it stays as it is, s: invented, but of the size and the patience such things have.
 *
 * `width` and `top`, its highest place above its deepest one, are those of the subject that is rendered; of the spider there is no picture.
 */
export const subjects = {
  'frost-crystal': { label: 'frost crystal, melting', 'subject-depth': 2.4, 'time-limit': 40, width: 4.6, top: 2.4 },
  'hoverfly-head': {
    label: 'hoverfly at rest on a cool morning',
    'subject-depth': 2.6,
    'time-limit': 90,
    width: 3.2,
    top: 2.6,
  },
  'jumping-spider': { label: 'jumping spider, about to walk on', 'subject-depth': 4, 'time-limit': 8 },
  'drop-on-wire': { label: 'drop on a wire, drying', 'subject-depth': 3, 'time-limit': 180, width: 7, top: 12 },
  'bay-leaf': { label: 'bay leaf, pressed under glass', 'subject-depth': 7, 'time-limit': 3600, width: 36, top: 7 },
  'drawing-pin': { label: 'drawing pin', 'subject-depth': 8.2, 'time-limit': 3600, width: 12, top: 8.2 },
  'slanted-scale': { label: 'slanted scale', 'subject-depth': 16, 'time-limit': 3600, width: 24, top: 16 },
} as const;

export type SubjectSlug = keyof typeof subjects;
