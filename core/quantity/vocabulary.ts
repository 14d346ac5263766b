/**
 * The one vocabulary: every quantity the workbook speaks of, as data.
 *
 * An id names the same thing everywhere: formula, slider, query parameter, `<output>`, table column, glossary entry.
 * What only the built pages print, the TeX of the letter and the meaning, stands in `glossary.ts`: readers' browsers need not load it.
 */

/** Units in which the core computes. `m` is kept for guide numbers alone; `''` is a pure number. */
export type BaseUnit =
  '' | 'mm' | 's' | 'm' | '1/mm' | 'dpt' | 'lx' | 'cd/m²' | 'rad' | 'rad/s' | 'mm/s' | 'stops' | 'px';

/** Units in which quantities are shown; `units.ts` has what each is worth and what else may be typed. */
export type ShownUnit =
  BaseUnit | 'µm' | 'nm' | 'ms' | 'min' | 'h' | '°' | '°/s' | 'lp/mm' | 'px/mm' | '1/m' | 'm/s' | '%';

/** How the trade writes a quantity: a plain number, `f/8`, `1/200 s`, `1:2`, `+3 dpt`, whole numbers, or a share in per cent. */
export type Writing = 'plain' | 'f-number' | 'shutter-time' | 'ratio' | 'signed' | 'whole' | 'share' | 'power-fraction';

export interface Quantity {
  /** Name in running text, lower case: the id with spaces, unless the trade writes it otherwise. */
  readonly name: string;
  /** Letter in plain text, an index after `_`; '' where the trade has none. */
  readonly symbol: string;
  readonly base: BaseUnit;
  /** Preferred unit on screens; lengths step up or down from it when a number gets unwieldy. */
  readonly shown: ShownUnit;
  readonly writing: Writing;
  /** Sensible range, base unit: what sliders span and fields accept. */
  readonly least: number;
  readonly most: number;
  /** Sliders are logarithmic where the trade thinks in ratios: unless said otherwise, above zero. Both ways: from zero, fine steps near it. */
  readonly scale: 'log' | 'linear' | 'log both ways';
}

type Row = Omit<Quantity, 'name'> & { readonly name?: string };
type Options = Partial<Pick<Quantity, 'name' | 'shown' | 'writing' | 'scale'>>;

function row(symbol: string, base: BaseUnit, least: number, most: number, options: Options = {}): Row {
  return { symbol, base, least, most, shown: base, writing: 'plain', scale: least > 0 ? 'log' : 'linear', ...options };
}

// One row a line, to be read as the table it is: letter, base unit, least, most, and what is not as usual.
// prettier-ignore
const rows = {
  'focal-length': row('f', 'mm', 4, 800),
  'f-number': row('N', '', 0.95, 64, { name: 'f-number', writing: 'f-number' }),
  'effective-f-number': row('N_w', '', 0.5, 1000, { name: 'effective f-number', writing: 'f-number' }),
  'max-aperture': row('N_0', '', 0.95, 22, { name: 'maximum aperture', writing: 'f-number' }),
  'balanced-f-number': row('', '', 0.05, 500, { name: 'balanced f-number', writing: 'f-number' }),
  'stopped-down': row('', 'stops', -10, 25),
  'finder-loss': row('', 'stops', -10, 30),
  'entrance-pupil': row('D', 'mm', 0.05, 400),
  'exit-pupil': row('D′', 'mm', 0.05, 1000),
  'entrance-pupil-distance': row('u', 'mm', 1, 50000),
  'inverse-entrance-pupil-distance': row('1/u', '1/mm', -0.2, 0.2, { shown: '1/m' }),
  'pupil-magnification': row('P', '', 0.2, 5),
  magnification: row('m', '', 0.02, 20, { writing: 'ratio' }),
  'focus-magnification': row('m_0', '', 0, 5, { writing: 'ratio' }),
  extension: row('e', 'mm', 0, 400),
  'focus-travel': row('q', 'mm', 0, 400),
  'subject-distance': row('s', 'mm', 1, 50000),
  'image-distance': row('s′', 'mm', 1, 20000),
  'focus-distance': row('L', 'mm', 1, 50000),
  'working-distance': row('w', 'mm', -500, 50000),
  'flight-distance': row('', 'mm', 5, 10000),
  'air-gap': row('', 'mm', 0, 10000),
  'pane-thickness': row('', 'mm', 0, 100),
  'immersion-depth': row('', 'mm', 0, 10000),
  'register-distance': row('R', 'mm', 5, 120),
  'principal-separation': row('HH′', 'mm', -100, 200, { name: 'principal plane separation' }),
  'front-principal-depth': row('h', 'mm', -200, 300),
  'rim-diameter': row('⌀', 'mm', 1, 300),
  'barrel-length': row('', 'mm', 1, 500),
  'rear-protrusion': row('', 'mm', 0, 100),
  'close-up-power': row('Φ', 'dpt', 0.1, 50, { name: 'power of the close-up lens', writing: 'signed' }),
  'close-up-gap': row('g', 'mm', -200, 310, { name: 'close-up gap' }),
  'abbe-number': row('V', '', 15, 100, { name: 'Abbe number' }),
  'colour-spread': row('', 'mm', 0, 1000),
  'colour-blur': row('', 'mm', 0, 100, { shown: 'µm' }),
  'converter-factor': row('k', '', 1, 4, { writing: 'ratio' }),
  'converter-length': row('ℓ', 'mm', 1, 150),
  'numerical-aperture': row('NA', '', 0.001, 0.99),
  'objective-magnification': row('', '', 1, 100, { writing: 'ratio' }),
  'tube-focal-length': row('', 'mm', 50, 500, { name: 'tube lens focal length' }),
  'sensor-width': row('W_x', 'mm', 1, 70),
  'sensor-height': row('W_y', 'mm', 1, 60),
  'angle-of-view': row('', 'rad', 0.0001, 3.1, { shown: '°' }),
  'crop-factor': row('', '', 0.5, 30),
  'pixel-pitch': row('p', 'mm', 0.0005, 0.03, { shown: 'µm' }),
  'field-width': row('', 'mm', 0.05, 3500),
  'field-height': row('', 'mm', 0.05, 3000),
  'subject-width': row('', 'mm', 0.05, 2000),
  'frame-fill': row('', '', 0.05, 1, { name: 'share of the picture width', writing: 'share', shown: '%' }),
  'subject-depth': row('Z', 'mm', 0.001, 1000),
  'image-width': row('', 'mm', 0.001, 4000),
  'pixels-per-millimetre': row('', '1/mm', 0.1, 40000, { shown: 'px/mm' }),
  'print-width': row('', 'mm', 50, 3000),
  'viewing-distance': row('', 'mm', 100, 10000),
  'circle-of-confusion': row('c', 'mm', 0.001, 0.2, { shown: 'µm' }),
  'depth-of-field': row('T', 'mm', 0.00001, 1000000),
  'depth-of-field-in-medium': row('', 'mm', 0.00001, 1000000),
  'depth-of-field-close-up': row('T_c', 'mm', 0.00001, 1000000, { name: 'depth of field, close-up form' }),
  'near-limit': row('', 'mm', 0.00001, 1000000),
  'far-limit': row('', 'mm', 0.00001, 1000000),
  'wave-depth': row('', 'mm', 0.00001, 1000, { name: 'depth by diffraction' }),
  'hyperfocal-distance': row('', 'mm', 1, 10000000),
  'background-distance': row('B', 'mm', 0, 100000),
  'background-blur': row('', 'mm', 0, 1000),
  'background-width': row('', 'mm', 0, 1000000),
  wavelength: row('λ', 'mm', 0.00038, 0.00078, { shown: 'nm', scale: 'linear' }),
  'airy-diameter': row('', 'mm', 0.0005, 2, { name: 'Airy disc', shown: 'µm' }),
  'image-radius': row('', 'mm', 0, 2, { shown: 'µm' }),
  'defocus-blur': row('b', 'mm', 0, 100, { shown: 'µm' }),
  'defocus-aberration': row('W₀₂₀', '', -200, 200, { name: 'defocus in waves' }),
  'spherical-aberration': row('W₀₄₀', '', -20, 20),
  contrast: row('', '', 0, 1, { writing: 'share', shown: '%' }),
  'spatial-frequency': row('ν', '1/mm', 1, 2000, { shown: 'lp/mm' }),
  'cutoff-frequency': row('ν_c', '1/mm', 1, 5000, { shown: 'lp/mm' }),
  'best-f-number': row('', '', 0.95, 64, { name: 'best f-number', writing: 'f-number' }),
  'nyquist-frequency': row('', '1/mm', 10, 1000, { name: 'Nyquist frequency', shown: 'lp/mm' }),
  'light-loss': row('', 'stops', 0, 20, { name: 'stops of light lost' }),
  'lens-shadow': row('', '', 0, 1, { writing: 'share', shown: '%' }),
  'exposure-time': row('t', 's', 0.000001, 3600, { writing: 'shutter-time' }),
  iso: row('S', '', 25, 409600, { name: 'ISO', writing: 'whole' }),
  illuminance: row('E', 'lx', 0.001, 200000),
  luminance: row('L_v', 'cd/m²', 0.0001, 1000000),
  'reflected-light-constant': row('K', '', 8, 16),
  'incident-light-constant': row('C', '', 200, 600),
  'lighting-difference': row('', 'stops', -25, 25),
  'exposure-value': row('EV', '', -10, 25),
  'light-value': row('LV', '', -10, 25),
  'guide-number': row('GN', 'm', 0.5, 100),
  'flash-power': row('', '', 1 / 512, 1, { writing: 'power-fraction' }),
  'flash-distance': row('d', 'mm', 1, 20000),
  'flash-duration': row('', 's', 0.000001, 0.1, { writing: 'shutter-time' }),
  'sync-speed': row('', 's', 1 / 8000, 1, { writing: 'shutter-time' }),
  'ambient-share': row('', '', 0, 1, { writing: 'share', shown: '%' }),
  'ambient-share-of-full-exposure': row('', '', 0, 40, { writing: 'share', shown: '%' }),
  'ambient-underexposure': row('', 'stops', -5, 15),
  'flash-underexposure': row('', 'stops', -15, 15),
  'background-underexposure': row('', 'stops', 0, 20),
  'quantum-efficiency': row('η', '', 0.05, 1, { writing: 'share', shown: '%', scale: 'linear' }),
  electrons: row('', '', 0.001, 2000000),
  'full-well': row('', '', 100, 1000000),
  'read-noise': row('', '', 0, 100),
  'signal-to-noise': row('', '', 0, 2000),
  'shake-rate': row('ω', 'rad/s', 0.00001, 1, { shown: '°/s' }),
  stabilisation: row('', 'stops', 0, 8),
  sway: row('σ', 'mm', 0.001, 100),
  'sideways-speed': row('v_s', 'mm/s', 0.001, 1000),
  'subject-speed': row('v', 'mm/s', 0.001, 50000),
  'swing-period': row('', 's', 0.0005, 60),
  'swing-amplitude': row('', 'mm', 0.01, 1000),
  'motion-blur': row('', 'mm', 0, 1000, { shown: 'µm' }),
  'keeper-share': row('', '', 0, 1, { name: 'share in focus', writing: 'share', shown: '%' }),
  'keeper-frames': row('', '', 1, 10000, { name: 'frames for one in focus', writing: 'whole' }),
  'subject-tilt': row('τ', 'rad', 0, Math.PI / 2, { shown: '°' }),
  'focus-offset': row('δ', 'mm', -50, 50, { scale: 'log both ways' }),
  'turn-angle': row('β', 'rad', 0, 0.5, { shown: '°' }),
  overlap: row('', '', -2, 0.95, { writing: 'share', shown: '%' }),
  'frame-step': row('Δ', 'mm', 0.00001, 1000),
  'frame-count': row('n', '', 1, 100000, { writing: 'whole' }),
  'stack-travel': row('', 'mm', 0, 1000),
  'scale-change': row('', '', 0, 1, { name: 'change of size', writing: 'share', shown: '%' }),
  'edge-shift': row('', 'px', 0, 1000, { name: 'shift at the side' }),
  'hidden-band': row('', 'mm', 0, 1000, { name: 'half-hidden band' }),
  'settling-time': row('', 's', 0, 60),
  'recycling-time': row('', 's', 0, 60, { name: 'flash recharging time' }),
  'stack-time': row('', 's', 0, 1000000),
  'time-limit': row('', 's', 0.1, 1000000),
  'source-size': row('S_w', 'mm', 1, 5000, { name: 'source width' }),
  'source-angle': row('α', 'rad', 0, Math.PI, { shown: '°' }),
  'light-angle': row('ψ', 'rad', 0, Math.PI / 2, { shown: '°' }),
  'lighting-ratio': row('', '', 0, 1000000),
  penumbra: row('', 'mm', 0, 10000),
  'edge-height': row('y', 'mm', 0.001, 1000),
  'ball-radius': row('r', 'mm', 0.01, 500),
  'catchlight-width': row('', 'mm', 0, 1000),
  'catchlight-width-paraxial': row('', 'mm', 0, 1000, { name: 'catchlight width, paraxial' }),
  'film-thickness': row('d_f', 'mm', 0.000001, 0.01, { shown: 'nm' }),
  'refractive-index': row('n_r', '', 1, 4),
  'incidence-angle': row('θ', 'rad', 0, Math.PI / 2, { shown: '°' }),
  'refraction-angle': row('θ′', 'rad', 0, Math.PI / 2, { shown: '°' }),
  reflectance: row('ρ', '', 0, 1, { writing: 'share', shown: '%' }),
  'film-reflectance': row('ρ_f', '', 0, 1, { writing: 'share', shown: '%' }),
  'interference-order': row('j', '', 1, 50, { writing: 'whole' }),
  'chain-count': row('', '', 0, 4_000_000, { name: 'chains', writing: 'whole' }),
  'chain-rank': row('', '', 1, 10_000, { name: 'place in the list', writing: 'whole', scale: 'linear' }),
  merit: row('', 'stops', -20, 30, { name: 'stops in hand' }),
  price: row('', '', 0, 100_000),
  budget: row('', '', 0, 100_000),
} as const satisfies Record<string, Row>;

/** Id of one quantity, e.g. `focal-length`. */
export type QuantityId = keyof typeof rows;

/** An id, or an id with the part it belongs to where a chain has two: `reversed-lens.focal-length`. */
export type QuantityName = QuantityId | `${string}.${QuantityId}`;

/** All ids, in the order of the vocabulary. */
export const quantityIds = Object.keys(rows) as QuantityId[];

/** The table, a row for each id. */
export const vocabulary = Object.fromEntries(
  quantityIds.map((id) => [id, { name: id.replaceAll('-', ' '), ...rows[id] }]),
) as Readonly<Record<QuantityId, Quantity>>;

/** True when *text* is an id of the vocabulary. */
export function isQuantityId(text: string): text is QuantityId {
  return Object.hasOwn(vocabulary, text);
}

/** The vocabulary's row for a name, with or without a part prefix. */
export function quantityOf(name: QuantityName): Quantity {
  return vocabulary[name.slice(name.lastIndexOf('.') + 1) as QuantityId];
}
