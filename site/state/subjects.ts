import { keptChoice } from './bench.svelte.ts';

/** A thing to photograph, lengths in mm. */
export interface Subject {
  readonly label: string;
  readonly width: number;
  /** Its nearest place above its deepest one. */
  readonly top: number;
  /** What of that is worth a stack. */
  readonly 'subject-depth'?: number;
  /** Of its boldest edge above what lies behind it. */
  readonly 'edge-height'?: number;
  /** Above the deepest place: what a photographer would focus on, the scale on its zero. */
  readonly focusHeight: number;
  /** Where a part of it fills the picture: what is focused on there, and which place is in the middle, from its own middle, downwards. */
  readonly detail?: { readonly focusHeight: number; readonly centre: { readonly x: number; readonly y: number } };
}

/**
 * What the club photographs and the core draws, each one record for picture, choice and bench. Surfaces and light go by the same names in
 * the core and stay in its worker; a test holds the sizes to them.
 */
export const subjects = {
  'slanted-scale': {
    label: 'slanted scale',
    width: 24,
    top: 16,
    'subject-depth': 16,
    'edge-height': 2,
    focusHeight: 8,
    detail: { focusHeight: 8, centre: { x: 0, y: 0 } },
  },
  'drawing-pin': {
    label: 'drawing pin',
    width: 12,
    top: 8.2,
    'subject-depth': 8.2,
    'edge-height': 3,
    focusHeight: 4,
  },
  'bay-leaf': {
    label: 'bay leaf with hairs',
    width: 36,
    top: 7,
    'subject-depth': 7,
    'edge-height': 1.5,
    focusHeight: 4,
    detail: { focusHeight: 3.3, centre: { x: 2, y: 0.8 } },
  },
  'hoverfly-head': {
    label: 'hoverfly’s head',
    width: 3.2,
    top: 2.6,
    'subject-depth': 2.6,
    'edge-height': 1,
    focusHeight: 1.6,
    detail: { focusHeight: 1.7, centre: { x: 0, y: 0 } },
  },
  'drop-on-wire': {
    label: 'drop on a wire',
    width: 7,
    top: 12,
    'subject-depth': 3,
    'edge-height': 2,
    focusHeight: 11.8,
  },
  'frost-crystal': {
    label: 'frost crystal, tilted',
    width: 4.6,
    top: 2.4,
    'subject-depth': 2.4,
    'edge-height': 1,
    focusHeight: 1.25,
  },
  stamp: {
    label: 'engraved stamp',
    width: 30,
    top: 1.2,
    focusHeight: 0.1,
    detail: { focusHeight: 0.2, centre: { x: -3.6, y: -1.5 } },
  },
} as const satisfies Record<string, Subject>;

export type SubjectSlug = keyof typeof subjects;

const { stamp: _, ...deep } = subjects;

/** Those deep enough for a stack. */
export const stackable = deep;

/** The choice of what is in a lesson's picture; the first is there at the start. */
export function subjectChoice(slugs = Object.keys(subjects) as readonly SubjectSlug[]) {
  return keptChoice('Subject of the picture', Object.fromEntries(slugs.map((slug) => [slug, subjects[slug].label])));
}
