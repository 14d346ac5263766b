import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** What a lesson is about: of its readings and its controls (inputs and choices) the two or three that stand first. */
export interface FirstThings<Reading extends string = string> {
  readonly readings: readonly Reading[];
  readonly controls: readonly string[];
  /** The folds of the rest, where they are not those of the things that controls belong to. */
  readonly folds?: readonly ControlGroup[];
  /** The fold that is asked for now, by name. */
  readonly open?: string | undefined;
  /** A fold was opened by a press. */
  readonly onopen?: (name: string) => void;
}

/** A folded group of controls, called after the thing that they belong to. */
export interface ControlGroup {
  readonly name: string;
  readonly title: string;
  readonly controls: readonly string[];
}

/** What belongs to a thing: by name, and whatever a part's name stands before. */
interface Thing extends Omit<ControlGroup, 'controls'> {
  readonly names?: readonly (QuantityName | Choice)[];
  readonly parts?: readonly string[];
}

/** Choices that stand with what they fill. */
type Choice =
  | 'circle-of-confusion-by'
  | 'close-up'
  | 'converter'
  | 'flash'
  | 'front'
  | 'glass'
  | 'holding'
  | 'lens'
  | 'light'
  | 'main'
  | 'objective'
  | 'power'
  | 'printed'
  | 'sensor'
  | 'turned'
  | 'turns-about';

/** In the order in which they stand. */
const things: readonly Thing[] = [
  {
    name: 'holding',
    title: 'How it is held',
    names: ['holding', 'turns-about', 'shake-rate', 'sideways-speed', 'stabilisation'],
  },
  {
    name: 'flash',
    title: 'The flash',
    names: [
      'power',
      'flash',
      'flash-power',
      'guide-number',
      'flash-distance',
      'source-size',
      'flash-duration',
      'sync-speed',
    ],
  },
  {
    name: 'lens',
    title: 'The lens',
    names: [
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
    ],
  },
  {
    name: 'close-up',
    title: 'The close-up lens',
    names: ['close-up', 'glass', 'close-up-power', 'close-up-gap', 'abbe-number'],
  },
  {
    name: 'turned',
    title: 'The lens turned round',
    names: ['turned', 'front'],
    parts: ['turned-lens', 'reversed-lens'],
  },
  { name: 'main', title: 'The lens on the camera', names: ['main'], parts: ['main-lens'] },
  {
    name: 'converter',
    title: 'The converter',
    names: ['converter', 'converter-factor', 'converter-length'],
    parts: ['front-ring', 'rear-ring'],
  },
  {
    name: 'objective',
    title: 'The objective',
    names: ['objective', 'objective-magnification', 'numerical-aperture', 'tube-focal-length'],
    parts: ['objective'],
  },
  {
    name: 'camera',
    title: 'The camera',
    names: [
      'sensor',
      'sensor-width',
      'sensor-height',
      'pixel-pitch',
      'register-distance',
      'circle-of-confusion-by',
      'circle-of-confusion',
      'quantum-efficiency',
      'read-noise',
    ],
  },
  { name: 'printed', title: 'What a maker prints', names: ['printed'], parts: ['closest'] },
  {
    name: 'light',
    title: 'The light',
    names: ['light', 'source-size', 'light-angle', 'luminance', 'reflected-light-constant', 'iso'],
  },
  { name: 'picture', title: 'The subject and the picture' },
];

/** The thing that a control belongs to; the picture, where it belongs to no other. */
const thingOf = (control: string): Thing =>
  things.find(
    ({ names = [], parts = [] }) =>
      (names as readonly string[]).includes(control) || parts.some((part) => control.startsWith(`${part}.`)),
  ) ?? things.at(-1)!;

/** What does not stand first, in groups by the thing it belongs to, each in one of them; a group of none is left out. */
export function controlGroups(all: readonly string[], first: readonly string[]): readonly ControlGroup[] {
  const rest = all.filter((name) => !first.includes(name));
  return things
    .map(({ name, title }) => ({ name, title, controls: rest.filter((control) => thingOf(control).name === name) }))
    .filter(({ controls }) => controls.length > 0);
}
