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
  'quantum-efficiency',
  'read-noise',
];

const ofCloseUpLens: readonly (QuantityName | 'close-up' | 'glass')[] = [
  'close-up',
  'glass',
  'close-up-power',
  'close-up-gap',
  'abbe-number',
];

const ofFlash: readonly (QuantityName | 'power' | 'flash')[] = [
  'power',
  'flash',
  'flash-power',
  'guide-number',
  'flash-distance',
  'flash-duration',
  'sync-speed',
];
const ofLight: readonly (QuantityName | 'light')[] = ['light', 'luminance', 'reflected-light-constant', 'iso'];
const ofHolding: readonly (QuantityName | 'holding' | 'turns-about')[] = [
  'holding',
  'turns-about',
  'shake-rate',
  'sideways-speed',
  'stabilisation',
];

const ofObjective: readonly QuantityName[] = ['objective-magnification', 'numerical-aperture', 'tube-focal-length'];

/** What does not stand first, in groups by the thing it belongs to; a group of none is left out. */
export function controlGroups(all: readonly string[], first: readonly string[]): readonly ControlGroup[] {
  const rest = all.filter((name) => !first.includes(name));
  const lens = rest.filter((name) => (ofLens as readonly string[]).includes(name));
  const camera = rest.filter((name) => (ofCamera as readonly string[]).includes(name));
  const printed = rest.filter((name) => name === 'printed' || name.startsWith('closest.'));
  const closeUp = rest.filter((name) => (ofCloseUpLens as readonly string[]).includes(name));
  const under = (prefixes: readonly string[], ...names: readonly string[]) =>
    rest.filter((name) => names.includes(name) || prefixes.some((prefix) => name.startsWith(`${prefix}.`)));
  const turned = under(['turned-lens', 'reversed-lens'], 'turned', 'front');
  const main = under(['main-lens'], 'main');
  const converter = under(['front-ring', 'rear-ring'], 'converter', 'converter-factor', 'converter-length');
  const objective = under(['objective'], 'objective', ...ofObjective);
  const holding = under([], ...ofHolding);
  const flash = under([], ...ofFlash);
  const light = under([], ...ofLight);
  const grouped = [
    ...holding,
    ...flash,
    ...light,
    ...lens,
    ...camera,
    ...printed,
    ...closeUp,
    ...turned,
    ...main,
    ...converter,
    ...objective,
  ];
  const others = rest.filter((name) => !grouped.includes(name));
  return [
    { name: 'holding', title: 'How it is held', controls: holding },
    { name: 'flash', title: 'The flash', controls: flash },
    { name: 'lens', title: 'The lens', controls: lens },
    { name: 'close-up', title: 'The close-up lens', controls: closeUp },
    { name: 'turned', title: 'The lens turned round', controls: turned },
    { name: 'main', title: 'The lens on the camera', controls: main },
    { name: 'converter', title: 'The converter', controls: converter },
    { name: 'objective', title: 'The objective', controls: objective },
    { name: 'camera', title: 'The camera', controls: camera },
    { name: 'printed', title: 'What a maker prints', controls: printed },
    { name: 'light', title: 'The light', controls: light },
    { name: 'picture', title: 'The subject and the picture', controls: others },
  ].filter(({ controls }) => controls.length > 0);
}
