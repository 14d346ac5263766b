import type { QuantityId, QuantityName } from '#core/quantity/vocabulary.ts';

/**
 * One quantity, one mark: the colour and line style that a quantity keeps in figure, formula, slider and plot.
 *
 * Hue goes by role: blue before the lens, violet behind it, plum the lens itself and spatial frequencies, rust what is added and
 * what it does to size and blur, ochre the cone of light, green what is sharp. Quantities that can share a figure differ in
 * hue or in line style, and always in letter. The dash-dotted line belongs to the optical axis and is nobody's mark.
 */
export interface Mark {
  /** A CSS colour that follows the theme. */
  readonly colour: `var(--mark-${Hue})`;
  /** SVG `stroke-dasharray` in pixels for a line about 2 px wide; `none` is a solid line. */
  readonly dash: string;
}

type Hue = 1 | 2 | 3 | 4 | 5 | 6;

const dashes = { solid: 'none', long: '15 4', dashed: '7 4', dotted: '2 3', double: '11 3 2 3 2 3' };

const [blue, violet, plum, rust, ochre, green] = [1, 2, 3, 4, 5, 6] as const;

const table = {
  // before the lens
  'subject-distance': [blue, 'solid'],
  'focus-distance': [blue, 'dashed'],
  'entrance-pupil-distance': [blue, 'long'],
  'hyperfocal-distance': [blue, 'double'],
  'field-width': [blue, 'dotted'],
  'field-height': [blue, 'dotted'],
  'subject-width': [blue, 'long'],
  'subject-depth': [blue, 'double'],
  'background-distance': [blue, 'dashed'],
  'background-width': [blue, 'double'],
  'viewing-distance': [blue, 'solid'],
  'working-distance': [green, 'long'],
  'flight-distance': [green, 'dotted'],
  'angle-of-view': [blue, 'dotted'],
  'air-gap': [blue, 'dashed'],
  'pane-thickness': [blue, 'dotted'],
  'immersion-depth': [blue, 'solid'],
  // behind the lens
  'image-distance': [violet, 'solid'],
  'register-distance': [violet, 'dashed'],
  'sensor-width': [violet, 'dotted'],
  'sensor-height': [violet, 'dotted'],
  'image-width': [violet, 'long'],
  'pixel-pitch': [violet, 'double'],
  'nyquist-frequency': [violet, 'dashed'],
  'pixels-per-millimetre': [violet, 'solid'],
  'crop-factor': [violet, 'dashed'],
  'print-width': [violet, 'long'],
  'edge-shift': [violet, 'dashed'],
  // the lens
  'focal-length': [plum, 'solid'],
  'front-principal-depth': [plum, 'dashed'],
  'rim-diameter': [plum, 'long'],
  'barrel-length': [plum, 'double'],
  'rear-protrusion': [plum, 'double'],
  'principal-separation': [plum, 'dotted'],
  'converter-length': [plum, 'double'],
  'tube-focal-length': [plum, 'long'],
  'abbe-number': [plum, 'dotted'],
  'refractive-index': [plum, 'solid'],
  // the wave
  wavelength: [plum, 'long'],
  'spatial-frequency': [plum, 'dashed'],
  'cutoff-frequency': [plum, 'dotted'],
  contrast: [blue, 'solid'],
  'airy-diameter': [rust, 'solid'],
  'image-radius': [violet, 'solid'],
  'defocus-aberration': [rust, 'dotted'],
  'spherical-aberration': [rust, 'double'],
  'wave-depth': [green, 'long'],
  // what is added, and what it does to size and blur
  extension: [rust, 'solid'],
  'focus-travel': [rust, 'dashed'],
  'stopped-down': [rust, 'double'],
  magnification: [rust, 'long'],
  'focus-magnification': [rust, 'dotted'],
  'objective-magnification': [rust, 'dotted'],
  'converter-factor': [rust, 'double'],
  'close-up-power': [rust, 'double'],
  'close-up-gap': [rust, 'dashed'],
  'circle-of-confusion': [rust, 'dashed'],
  'defocus-blur': [rust, 'double'],
  'background-blur': [rust, 'dotted'],
  'colour-blur': [rust, 'solid'],
  'motion-blur': [rust, 'dotted'],
  'scale-change': [rust, 'double'],
  'hidden-band': [rust, 'dotted'],
  // the cone of light
  'f-number': [ochre, 'solid'],
  'effective-f-number': [ochre, 'dashed'],
  'entrance-pupil': [ochre, 'dotted'],
  'exit-pupil': [ochre, 'dashed'],
  'pupil-magnification': [ochre, 'double'],
  'light-loss': [ochre, 'long'],
  'finder-loss': [ochre, 'dotted'],
  'lens-shadow': [ochre, 'long'],
  'max-aperture': [ochre, 'long'],
  'best-f-number': [ochre, 'long'],
  'balanced-f-number': [ochre, 'dotted'],
  'numerical-aperture': [ochre, 'double'],
  // what is sharp
  'depth-of-field': [green, 'solid'],
  'depth-of-field-close-up': [green, 'dashed'],
  'depth-of-field-in-medium': [green, 'double'],
  'inverse-entrance-pupil-distance': [blue, 'double'],
  'near-limit': [green, 'dotted'],
  'far-limit': [green, 'double'],
  'frame-step': [green, 'dashed'],
  'frame-count': [green, 'dotted'],
  'stack-travel': [blue, 'dashed'],
  overlap: [green, 'double'],
  'colour-spread': [green, 'dashed'],
  'keeper-share': [green, 'dashed'],
  'keeper-frames': [green, 'dotted'],
  // exposure
  'exposure-time': [ochre, 'dotted'],
  iso: [plum, 'dashed'],
  'exposure-value': [plum, 'double'],
  'lighting-difference': [ochre, 'double'],
  'light-value': [plum, 'long'],
  illuminance: [blue, 'solid'],
  luminance: [blue, 'dashed'],
  'reflected-light-constant': [blue, 'long'],
  'incident-light-constant': [blue, 'long'],
  'ambient-share': [blue, 'dotted'],
  'ambient-underexposure': [blue, 'double'],
  'flash-underexposure': [violet, 'double'],
  'background-underexposure': [violet, 'dotted'],
  'ambient-share-of-full-exposure': [ochre, 'dashed'],
  'guide-number': [violet, 'solid'],
  'flash-power': [violet, 'long'],
  'flash-distance': [violet, 'dashed'],
  'flash-duration': [violet, 'dotted'],
  'sync-speed': [violet, 'double'],
  // what a pixel counts
  electrons: [blue, 'solid'],
  'quantum-efficiency': [blue, 'dashed'],
  'full-well': [blue, 'dotted'],
  'read-noise': [blue, 'double'],
  'signal-to-noise': [blue, 'long'],
  // movement and time
  'shake-rate': [blue, 'solid'],
  'sideways-speed': [blue, 'dashed'],
  'subject-speed': [blue, 'double'],
  'swing-period': [blue, 'long'],
  'swing-amplitude': [blue, 'dotted'],
  sway: [violet, 'solid'],
  stabilisation: [violet, 'double'],
  'subject-tilt': [blue, 'dotted'],
  'focus-offset': [rust, 'dashed'],
  'turn-angle': [violet, 'long'],
  'settling-time': [plum, 'dotted'],
  'recycling-time': [plum, 'double'],
  'stack-time': [plum, 'dashed'],
  'time-limit': [plum, 'long'],
  // size of light
  'source-size': [ochre, 'solid'],
  'source-angle': [ochre, 'dashed'],
  'light-angle': [plum, 'dotted'],
  'lighting-ratio': [green, 'dashed'],
  penumbra: [ochre, 'dotted'],
  'edge-height': [blue, 'solid'],
  'ball-radius': [blue, 'dashed'],
  'catchlight-width': [ochre, 'double'],
  'catchlight-width-paraxial': [ochre, 'long'],
  'film-thickness': [blue, 'long'],
  'incidence-angle': [violet, 'solid'],
  'refraction-angle': [violet, 'dashed'],
  reflectance: [ochre, 'long'],
  'film-reflectance': [ochre, 'solid'],
  'interference-order': [violet, 'dotted'],
  // choosing
  'frame-fill': [violet, 'solid'],
  'chain-count': [plum, 'solid'],
  'chain-rank': [plum, 'dotted'],
  merit: [green, 'solid'],
  price: [ochre, 'dotted'],
  budget: [ochre, 'dashed'],
} as const satisfies Record<QuantityId, readonly [Hue, keyof typeof dashes]>;

/**
 * The mark of a quantity; a part prefix (`reversed-lens.focal-length`) changes nothing.
 *
 * @example markOf('working-distance') // { colour: 'var(--mark-6)', dash: '15 4' }
 */
export function markOf(name: QuantityName): Mark {
  const [hue, style] = table[name.slice(name.lastIndexOf('.') + 1) as QuantityId];
  return { colour: `var(--mark-${hue})`, dash: dashes[style] };
}
