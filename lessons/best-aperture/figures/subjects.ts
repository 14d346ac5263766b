/**
 * What this lesson asks about, lengths in mm: how deep the part is that should be sharp, how high its nearest place is above the deepest of
 * the scene, and which place of it fills the picture, from the middle, downwards.
 */
export interface DeepSubject {
  readonly label: string;
  readonly 'subject-depth': number;
  readonly top: number;
  /** By the name that the core draws it by. */
  readonly scene: string;
  readonly centre: { readonly x: number; readonly y: number };
}

export const subjects = {
  'hoverfly-head': {
    label: 'hoverfly’s head, its front 2 mm',
    'subject-depth': 2,
    top: 2.6,
    scene: 'hoverfly-head',
    centre: { x: 0, y: 0 },
  },
  'pin-head': {
    label: 'drawing pin’s head, 1 mm',
    'subject-depth': 1,
    top: 1.2,
    scene: 'drawing-pin',
    centre: { x: -3, y: 2.5 },
  },
  'frost-crystal': {
    label: 'frost crystal, 2.4 mm',
    'subject-depth': 2.4,
    top: 2.4,
    scene: 'frost-crystal',
    centre: { x: 0, y: 0 },
  },
  'bay-leaf': {
    label: 'bay leaf, 7 mm',
    'subject-depth': 7,
    top: 7,
    scene: 'bay-leaf',
    centre: { x: 2, y: 0.8 },
  },
  'drawing-pin': {
    label: 'whole drawing pin, 8.2 mm',
    'subject-depth': 8.2,
    top: 8.2,
    scene: 'drawing-pin',
    centre: { x: 1.6, y: -1 },
  },
} as const satisfies Record<string, DeepSubject>;
