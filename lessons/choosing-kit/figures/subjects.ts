import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { asking, type Asking } from '#site/state/asking.ts';
import { lights } from '#site/state/crate-light.ts';

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

const asked = (label: string, { room, 'frame-fill': fill, ...subject }: Asking, light: typeof flash) => ({
  ...light,
  ...subject,
  label,
  'nearest.working-distance': room,
  'least.frame-fill': fill,
});

/** Things that the club photographs. */
export const subjects = {
  butterfly: asked('butterfly, wings closed', asking['butterfly-closed'], lightings.sun),
  stamp: asked('stamp', asking.stamp, lightings.window),
  'flower-detail': asked('stamens in a breeze', asking['flower-detail'], lightings.shade),
  'jumping-spider': asked('jumping spider', asking['jumping-spider'], flash),
  'water-drop': asked('drop on a wire', asking['water-drop'], flash),
  'frost-crystal': asked('frost crystal', asking['frost-crystal'], lightings.shade),
  'hoverfly-head': asked('hoverfly’s head', asking['hoverfly-head'], flash),
} as const;
