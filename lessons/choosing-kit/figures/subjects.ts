import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { lights } from '#site/state/crate.ts';

/** What a subject asks for. */
export const ofSubject = [
  'subject-width',
  'subject-depth',
  'subject-speed',
  'nearest.working-distance',
  'least.frame-fill',
  'luminance',
  'longest.exposure-time',
] as const satisfies readonly QuantityName[];

/** Steady light: longer than a quarter of a second nobody and nothing outdoors keeps still. */
const daylight = (luminance: number) => ({ luminance, 'longest.exposure-time': 1 / 4 });

/**
 * A flash as a light that burns steadily while it lasts: what a twin-arm flash of guide number 14 gives at 150 mm, spread over its 1/1000 s.
 */
const flash = { luminance: 1_000_000, 'longest.exposure-time': 1 / 1000 };

/** How bright it is, and for how long at most. */
export const ofLight = ['luminance', 'longest.exposure-time'] as const;
export const lightings = {
  sun: { label: lights.sun.label, ...daylight(lights.sun.luminance) },
  shade: { label: lights.shade.label, ...daylight(lights.shade.luminance) },
  window: { label: lights.window.label, ...daylight(lights.window.luminance) },
  flash: { label: 'lit by the flash', ...flash },
} as const;

const asked = (
  label: string,
  [width, depth, speed, room, fill]: readonly [number, number, number, number, number],
  light: typeof flash,
) => ({
  ...light,
  label,
  'subject-width': width,
  'subject-depth': depth,
  'subject-speed': speed,
  'nearest.working-distance': room,
  'least.frame-fill': fill,
});

/** Things that the club photographs: width, depth and room in mm, speed in mm/s, least share of the frame. Sizes and patience are assumed. */
export const subjects = {
  butterfly: asked('butterfly, wings closed', [60, 1.5, 5, 200, 0.7], lightings.sun),
  stamp: asked('stamp', [30, 0.4, 0.001, 60, 0.9], lightings.window),
  'flower-detail': asked('stamens in a breeze', [20, 4, 6, 60, 0.7], lightings.shade),
  'jumping-spider': asked('jumping spider', [6, 3, 5, 30, 0.5], flash),
  'water-drop': asked('drop on a wire', [7, 3, 0.05, 30, 0.5], flash),
  'frost-crystal': asked('frost crystal', [4.6, 2.4, 0.05, 25, 0.4], lightings.shade),
  'hoverfly-head': asked('hoverfly’s head', [3.2, 1.2, 0.2, 25, 0.4], flash),
} as const;
