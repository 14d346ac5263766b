import { quantityOf } from '#core/quantity/vocabulary.ts';
import { lights, rings, parts } from '#site/state/crate.ts';

const luminance = (light: keyof typeof lights) => lights[light].luminance;

/** What a subject brings along: sizes in mm, its speed in mm/s, how long it holds still in s. Invented, of the size and patience such things have. */
export const ofSubject = [
  'subject-width',
  'subject-depth',
  'subject-speed',
  'time-limit',
  'flight-distance',
  'frame-fill',
  'luminance',
] as const;

const still = quantityOf('subject-speed').least;

/** What the club takes pictures of, and last one's own, which begins as something of a common size. */
export const subjects = {
  'jumping-spider': {
    label: 'a jumping spider on a leaf',
    'subject-width': 6,
    'subject-depth': 3,
    'subject-speed': 5,
    'time-limit': 8,
    'flight-distance': 30,
    'frame-fill': 0.5,
    luminance: luminance('shade'),
  },
  'flower-detail': {
    label: 'stamens of a flower in a breeze',
    'subject-width': 20,
    'subject-depth': 4,
    'subject-speed': 6,
    'time-limit': 600,
    'flight-distance': 60,
    'frame-fill': 0.7,
    luminance: luminance('shade'),
  },
  butterfly: {
    label: 'a butterfly, wings square to you',
    'subject-width': 60,
    'subject-depth': 5,
    'subject-speed': 5,
    'time-limit': 20,
    'flight-distance': 200,
    'frame-fill': 0.7,
    luminance: luminance('sun'),
  },
  'hoverfly-head': {
    label: 'a hoverfly’s head, cool morning',
    'subject-width': 3.2,
    'subject-depth': 1.2,
    'subject-speed': 0.2,
    'time-limit': 90,
    'flight-distance': 25,
    'frame-fill': 0.4,
    luminance: luminance('shade'),
  },
  'water-drop': {
    label: 'a drop on a wire',
    'subject-width': 7,
    'subject-depth': 3,
    'subject-speed': 0.05,
    'time-limit': 180,
    'flight-distance': 30,
    'frame-fill': 0.5,
    luminance: luminance('window'),
  },
  'frost-crystal': {
    label: 'a frost crystal, melting',
    'subject-width': 4.6,
    'subject-depth': 2.4,
    'subject-speed': 0.05,
    'time-limit': 40,
    'flight-distance': 25,
    'frame-fill': 0.4,
    luminance: luminance('shade'),
  },
  'soap-film': {
    label: 'a soap film in a frame',
    'subject-width': 60,
    'subject-depth': 6,
    'subject-speed': 2,
    'time-limit': 20,
    'flight-distance': 100,
    'frame-fill': 0.9,
    luminance: luminance('window'),
  },
  stamp: {
    label: 'a stamp',
    'subject-width': 30,
    'subject-depth': 0.4,
    'subject-speed': still,
    'time-limit': 3600,
    'flight-distance': 60,
    'frame-fill': 0.9,
    luminance: luminance('window'),
  },
  own: {
    label: 'a subject of your own',
    'subject-width': 10,
    'subject-depth': 5,
    'subject-speed': 1,
    'time-limit': 60,
    'flight-distance': 50,
    'frame-fill': 0.5,
    luminance: luminance('shade'),
  },
} as const;

export type Planned = keyof typeof subjects;

/** What lights a subject beside daylight: the width of what shines on it, mm. */
export const sources = {
  head: { label: 'the bare flash head', 'source-size': 60 },
  paper: { label: 'diffusing paper', 'source-size': 100 },
  bowl: { label: 'a bowl with a hole for the lens', 'source-size': 160 },
  card: { label: 'a white card', 'source-size': 300 },
} as const;

/** What is looked at last: two things of the subject's own, and what can be hurt. One line of the card each. */
export const checks: Readonly<Record<Planned, readonly [string, string, string]>> = {
  'jumping-spider': ['eyes first', 'press as it stops', 'No flash near eyes; leave if it is disturbed'],
  'flower-detail': ['wait for the end of the swing', 'lay the plane along', 'Pick and bend nothing'],
  butterfly: ['no shadow on it', 'wings square to you', 'Go near slowly; no chasing'],
  'hoverfly-head': ['eyes first', 'near end first', 'No chilling; flash off if it flinches'],
  'water-drop': [
    'look at what hangs behind: it is in it, upside down',
    'near end first',
    'Keep water from mains and lamps',
  ],
  'frost-crystal': ['breath away', 'near end first', 'Cold hands, slippery ground'],
  'soap-film': ['place the card before you focus', 'focus the black edge', 'Wipe wet floors; no soap near mains'],
  stamp: ['a mirror in its place squares you up', 'two lights at 45°', 'Lamps get hot: keep paper away'],
  own: ['what matters most is in the plane', 'look at the corners', 'Harm nothing; local rules come first'],
};

const sums = [
  ...new Set(
    [0, 1, 2, 3, 4, 5, 6, 7].map((bits) => rings.filter((_, at) => bits & (1 << at)).reduce((a, b) => a + b, 0)),
  ),
].sort((a, b) => a - b);

/** Of a ring longer than this no crate tells, mm. */
const { longest } = parts.bellows;

/** What of the crate makes an extension, mm: the shortest rings that are long enough, the bellows, or nothing. Focusing does the rest. */
export function extensionInWords(extension: number | undefined): string {
  if (extension === undefined || extension <= 0) return 'lens alone';
  const sum = sums.find((length) => length >= extension - 0.05);
  if (sum !== undefined) return `lens + ${sum} mm of rings`;
  return extension <= longest ? 'lens + bellows' : 'longer than the bellows: another lens';
}
