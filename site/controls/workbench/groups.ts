import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** What a lesson is about: of its readings and its controls (inputs and choices) the two or three that stand first. */
export interface FirstThings<Reading extends string = string> {
  readonly readings: readonly Reading[];
  readonly controls: readonly string[];
}

/** A folded group of controls, called after the thing that they belong to. */
export interface ControlGroup {
  readonly name: string;
  readonly title: string;
  readonly controls: readonly string[];
}

const ofLens: readonly (QuantityName | 'lens')[] = [
  'lens',
  'focal-length',
  'focus-magnification',
  'max-aperture',
  'f-number',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'barrel-length',
  'rear-protrusion',
  'focus-travel',
  'reversed-lens.register-distance',
];
const ofCamera: readonly (QuantityName | 'sensor' | 'circle-of-confusion-by')[] = [
  'sensor',
  'sensor-width',
  'sensor-height',
  'pixel-pitch',
  'register-distance',
  'circle-of-confusion-by',
  'circle-of-confusion',
];

const ofCloseUpLens: readonly (QuantityName | 'close-up' | 'glass')[] = [
  'close-up',
  'glass',
  'close-up-power',
  'close-up-gap',
  'abbe-number',
];

/** What does not stand first, in groups by the thing it belongs to; a group of none is left out. */
export function controlGroups(all: readonly string[], first: readonly string[]): readonly ControlGroup[] {
  const rest = all.filter((name) => !first.includes(name));
  const lens = rest.filter((name) => (ofLens as readonly string[]).includes(name));
  const camera = rest.filter((name) => (ofCamera as readonly string[]).includes(name));
  const printed = rest.filter((name) => name === 'printed' || name.startsWith('closest.'));
  const closeUp = rest.filter((name) => (ofCloseUpLens as readonly string[]).includes(name));
  const others = rest.filter((name) => ![...lens, ...camera, ...printed, ...closeUp].includes(name));
  return [
    { name: 'lens', title: 'The lens', controls: lens },
    { name: 'close-up', title: 'The close-up lens', controls: closeUp },
    { name: 'camera', title: 'The camera', controls: camera },
    { name: 'printed', title: 'What a maker prints', controls: printed },
    { name: 'picture', title: 'The subject and the picture', controls: others },
  ].filter(({ controls }) => controls.length > 0);
}
