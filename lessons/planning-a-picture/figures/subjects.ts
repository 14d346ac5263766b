import { asking, type Asking } from '#site/state/asking.ts';
import { lampWidths, lights } from '#site/state/crate-light.ts';

const luminance = (light: keyof typeof lights) => lights[light].luminance;

/** What a subject brings along: sizes in mm, its speed in mm/s, how long it holds still in s. */
export const ofSubject = [
  'subject-width',
  'subject-depth',
  'subject-speed',
  'time-limit',
  'flight-distance',
  'frame-fill',
  'luminance',
] as const;

/** A subject that holds still for so long, s, in such a light. */
const planned = (label: string, { room, ...subject }: Asking, timeLimit: number, light: keyof typeof lights) => ({
  ...subject,
  label,
  'time-limit': timeLimit,
  'flight-distance': room,
  luminance: luminance(light),
});

/** What the club takes pictures of, and last one's own, which begins as something of a common size. */
export const subjects = {
  'jumping-spider': planned('a jumping spider on a leaf', asking['jumping-spider'], 8, 'shade'),
  'flower-detail': planned('stamens of a flower in a breeze', asking['flower-detail'], 600, 'shade'),
  butterfly: planned('a butterfly, wings square to you', asking.butterfly, 20, 'sun'),
  'hoverfly-head': planned('a hoverfly’s head, cool morning', asking['hoverfly-head'], 90, 'shade'),
  'water-drop': planned('a drop on a wire', asking['water-drop'], 180, 'window'),
  'frost-crystal': planned('a frost crystal, melting', asking['frost-crystal'], 40, 'shade'),
  'soap-film': planned('a soap film in a frame', asking['soap-film'], 20, 'window'),
  stamp: planned('a stamp', asking.stamp, 3600, 'window'),
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
  head: { label: 'the bare flash head', 'source-size': lampWidths.head },
  paper: { label: 'diffusing paper', 'source-size': lampWidths.paper },
  bowl: { label: 'a bowl with a hole for the lens', 'source-size': lampWidths.bowl },
  card: { label: 'a white card', 'source-size': lampWidths.card },
} as const;
