import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** One thing that is said of a part: its name in a kit's file, what a form calls it, and how it is read. */
export interface Field {
  /** The id of the vocabulary where it is a quantity's, else a plain word. */
  readonly key: string;
  readonly label: string;
  readonly reads: Reads;
  /** A part without it is no such part. */
  readonly needed?: true;
  /** Folded in the form: what a ruler says, or what few know. */
  readonly group?: 'ruler' | 'points';
  readonly hint?: string;
}

/** How a field is read: by a quantity, as words, as a whole number or as one of a few. */
export type Reads =
  | {
      readonly by: 'quantity';
      readonly as: QuantityName;
      /** Range in the base unit, where it is narrower than the vocabulary's. */
      readonly least?: number;
      readonly most?: number;
      /** What is common, base unit, where the middle of the range is not. */
      readonly example?: number;
      /** May have been measured, and then has an error. */
      readonly withError?: true;
    }
  | { readonly by: 'text' }
  | { readonly by: 'count'; readonly least: number; readonly most: number }
  | { readonly by: 'choice'; readonly options: Readonly<Record<string, string>> };

export interface KindPlan {
  /** One of them, with its article, and several. */
  readonly one: string;
  readonly several: string;
  readonly fields: readonly Field[];
}

type QuantityReads = Extract<Reads, { by: 'quantity' }>;
type More = Omit<Field, 'key' | 'label' | 'reads'> & Pick<QuantityReads, 'least' | 'most' | 'example' | 'withError'>;

const needed = { needed: true } as const;

function quantity(key: string, label: string, as: QuantityName, more: More = {}): Field {
  const { least, most, example, withError, ...rest } = more;
  const range = {
    ...(least !== undefined && { least }),
    ...(most !== undefined && { most }),
    ...(example !== undefined && { example }),
    ...(withError && { withError }),
  };
  return { key, label, reads: { by: 'quantity', as, ...range }, ...rest };
}

function choice(key: string, label: string, options: Record<string, string>, hint?: string): Field {
  return { key, label, reads: { by: 'choice', options }, ...needed, ...(hint !== undefined && { hint }) };
}

const mount: Field = {
  key: 'mount',
  label: 'Mount',
  reads: { by: 'text' },
  hint: 'Any name. Only if you own cameras of more than one.',
};
const thread = quantity('thread', 'Thread', 'rim-diameter', { hint: 'The number after ⌀.' });
const contacts = choice('contacts', 'Contacts', { yes: 'passes them on', no: 'has none' });
/** Nothing that is put between is thinner. */
const thinnest = { least: 0.1, ...needed };

/**
 * What a kit may hold, and what is said of it: form, file, list and link all follow from this table. Lengths in mm.
 *
 * A link writes values in the order of the fields and kinds by their place: new ones are added at the end.
 */
export const kinds = {
  camera: {
    one: 'a camera',
    several: 'Cameras',
    fields: [
      quantity('sensor-width', 'Sensor, width', 'sensor-width', needed),
      quantity('sensor-height', 'Sensor, height', 'sensor-height', needed),
      quantity('register-distance', 'Register', 'register-distance', {
        ...needed,
        // Common practice: what the makers of the mounts in use print.
        hint: 'From the mount’s metal ring to the sensor: 16 to 20 mm on most cameras of today without a mirror, 44 to 47 mm on those with one. The manual gives it; the mark ⌽ on top of the camera is over the sensor.',
      }),
      {
        key: 'pixels-across',
        label: 'Pixels side by side',
        reads: { by: 'count', least: 100, most: 100000 },
        hint: 'Along the width, as in 6000 × 4000.',
      },
      quantity('sync-speed', 'Flash sync speed', 'sync-speed'),
      mount,
    ],
  },
  lens: {
    one: 'a lens',
    several: 'Lenses',
    fields: [
      quantity('focal-length', 'Focal length', 'focal-length', { ...needed, withError: true }),
      quantity('max-aperture', 'Widest f-number', 'max-aperture', {
        ...needed,
        hint: 'The smallest number: 1:1.8 is f/1.8.',
      }),
      quantity('smallest-aperture', 'Smallest opening', 'f-number', { hint: 'The largest f-number, such as f/22.' }),
      quantity('focus-distance', 'Nearest focus distance', 'focus-distance', {
        least: 10,
        hint: 'From the sensor: the last number on the focus ring, or the manual’s.',
      }),
      quantity('focus-magnification', 'Greatest magnification', 'focus-magnification', {
        least: 0.001,
        withError: true,
        hint: 'By itself, with no ring on: m₀, such as 1:4. This or the nearest distance is needed.',
      }),
      choice(
        'focusing',
        'Focused close',
        { whole: 'the whole lens moves out', inside: 'glass moves inside' },
        'Plain 50 mm lenses move as a whole; most macro lenses and zooms move glass inside.',
      ),
      thread,
      choice('iris', 'f-number set', { camera: 'on the camera', lens: 'by a ring on the lens' }),
      quantity('barrel-length', 'Length, focused far', 'barrel-length', {
        group: 'ruler',
        hint: 'From the mount’s metal ring to the front rim.',
      }),
      quantity('closest-barrel-length', 'Length, focused nearest', 'barrel-length', {
        group: 'ruler',
        hint: 'Only if glass moves inside and the lens still grows.',
      }),
      quantity('rim-diameter', 'Front rim, diameter', 'rim-diameter', { group: 'ruler' }),
      quantity('rear-protrusion', 'Stands out behind its mount', 'rear-protrusion', { group: 'ruler' }),
      quantity('pupil-magnification', 'P, pupil magnification', 'pupil-magnification', {
        group: 'points',
        withError: true,
      }),
      quantity('principal-separation', 'HH′, between the principal planes', 'principal-separation', {
        group: 'points',
        withError: true,
      }),
      quantity('front-principal-depth', 'h, front rim to H', 'front-principal-depth', {
        group: 'points',
        withError: true,
      }),
      quantity('register-distance', 'Register of its own mount', 'register-distance', {
        group: 'points',
        hint: 'Only for a lens made for another mount than your camera’s.',
      }),
      mount,
    ],
  },
  ring: {
    one: 'an extension ring',
    several: 'Extension rings',
    fields: [quantity('extension', 'Length', 'extension', thinnest), contacts, mount],
  },
  bellows: {
    one: 'bellows',
    several: 'Bellows',
    fields: [
      quantity('shortest', 'Shortest', 'extension', thinnest),
      quantity('longest', 'Longest', 'extension', thinnest),
      mount,
    ],
  },
  'close-up-lens': {
    one: 'a close-up lens',
    several: 'Close-up lenses',
    fields: [
      quantity('close-up-power', 'Power', 'close-up-power', { ...needed, hint: 'Engraved: +4 is 4 dioptres.' }),
      choice('glass', 'Made of', { single: 'a single glass', cemented: 'two glasses cemented' }),
      thread,
    ],
  },
  converter: {
    one: 'a converter',
    several: 'Converters',
    fields: [
      quantity('converter-factor', 'Factor', 'converter-factor', { ...needed, least: 1.01, hint: 'Engraved: 2×.' }),
      quantity('converter-length', 'Length', 'converter-length', {
        ...needed,
        hint: 'From metal ring to metal ring.',
      }),
      contacts,
      mount,
      quantity('focal-length', 'Focal length, without its minus', 'focal-length', {
        group: 'points',
        hint: 'These three together say where the converter bends light. Without them it is taken as one thin lens.',
      }),
      quantity('principal-separation', 'HH′, between the principal planes', 'principal-separation', {
        group: 'points',
      }),
      quantity('front-principal-depth', 'h, front metal ring to H', 'front-principal-depth', { group: 'points' }),
    ],
  },
  'reversing-ring': {
    one: 'a reversing ring',
    several: 'Reversing rings',
    fields: [quantity('extension', 'Length', 'extension', thinnest), thread, mount],
  },
  'coupling-ring': {
    one: 'a coupling ring',
    several: 'Coupling rings',
    fields: [quantity('extension', 'Length', 'extension', thinnest), thread],
  },
  objective: {
    one: 'an infinity objective',
    several: 'Objectives',
    fields: [
      quantity('objective-magnification', 'Magnification', 'objective-magnification', {
        ...needed,
        hint: 'Engraved before the slash: 4×/0.10.',
      }),
      quantity('numerical-aperture', 'NA', 'numerical-aperture', {
        ...needed,
        example: 0.1,
        hint: 'Engraved after the slash.',
      }),
      quantity('working-distance', 'Working distance', 'working-distance', { ...needed, least: 0.01, most: 200 }),
      quantity('tube-focal-length', 'Tube lens it is made for', 'tube-focal-length', {
        ...needed,
        hint: 'The maker’s, often 200 mm.',
      }),
    ],
  },
  flash: {
    one: 'a flash',
    several: 'Flashes',
    fields: [
      quantity('guide-number', 'Guide number', 'guide-number', { ...needed, hint: 'In metres, at ISO 100.' }),
      quantity('flash-duration', 'Duration at full power', 'flash-duration'),
      quantity('recycling-time', 'Recharging time', 'recycling-time'),
      quantity('source-size', 'Width of its window', 'source-size'),
    ],
  },
  light: {
    one: 'a light or diffuser',
    several: 'Lights and diffusers',
    fields: [
      quantity('source-size', 'Width', 'source-size', { ...needed, hint: 'Of what shines, as the subject sees it.' }),
    ],
  },
  support: {
    one: 'a tripod, rail or other support',
    several: 'Supports',
    fields: [
      choice('support', 'What it is', { tripod: 'a tripod', rail: 'a focusing rail', other: 'something else' }),
      quantity('frame-step', 'Smallest step', 'frame-step', { hint: 'Of a rail.' }),
      quantity('stack-travel', 'Longest way', 'stack-travel', { hint: 'Of a rail.' }),
    ],
  },
  'tube-lens': {
    one: 'a tube lens',
    several: 'Tube lenses',
    fields: [
      quantity('tube-focal-length', 'Focal length', 'tube-focal-length', {
        ...needed,
        hint: 'It goes so far before the sensor, rings or a tube between, with an infinity objective in front.',
      }),
    ],
  },
  'finite-objective': {
    one: 'an objective for a tube',
    several: 'Objectives for a tube',
    fields: [
      quantity('objective-magnification', 'Magnification', 'objective-magnification', {
        ...needed,
        hint: 'Engraved before the slash: 10×/0.25. On another length of tube it is another.',
      }),
      quantity('numerical-aperture', 'NA', 'numerical-aperture', {
        ...needed,
        example: 0.1,
        hint: 'Engraved after the slash.',
      }),
      quantity('working-distance', 'Working distance', 'working-distance', { ...needed, least: 0.01, most: 200 }),
      quantity('tube-length', 'Tube length', 'extension', {
        ...needed,
        least: 100,
        most: 250,
        hint: 'Engraved, as in 160/0.17. An adapter to your mount counts as a ring.',
      }),
    ],
  },
} as const satisfies Record<string, KindPlan>;

export type Kind = keyof typeof kinds;

/** In the order that links count by. */
export const kindNames = Object.keys(kinds) as Kind[];

/** In the order in which readers look for them: what goes on the camera, then what stands beside it. */
export const listedKinds: readonly Kind[] = [
  ...kindNames.slice(0, kindNames.indexOf('flash')),
  ...kindNames.slice(kindNames.indexOf('tube-lens')),
  ...kindNames.slice(kindNames.indexOf('flash'), kindNames.indexOf('tube-lens')),
];

/** The table's row for a kind. */
export const planOf = (kind: Kind): KindPlan => kinds[kind];
