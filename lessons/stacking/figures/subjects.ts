/**
 * What the club stacks, mm, and how long it stays as it is, s: invented, but of the size and the patience such things have.
 */
export const subjects = {
  'frost-crystal': { label: 'frost crystal, melting', 'subject-depth': 2, 'time-limit': 40 },
  'hoverfly-head': { label: 'hoverfly at rest on a cool morning', 'subject-depth': 2.5, 'time-limit': 90 },
  'jumping-spider': { label: 'jumping spider, about to walk on', 'subject-depth': 4, 'time-limit': 8 },
  'drop-on-wire': { label: 'drop on a wire, drying', 'subject-depth': 3, 'time-limit': 180 },
  'bay-leaf': { label: 'bay leaf, pressed under glass', 'subject-depth': 5, 'time-limit': 3600 },
  'drawing-pin': { label: 'drawing pin', 'subject-depth': 8, 'time-limit': 3600 },
} as const;
