/**
 * The one vocabulary: every quantity the workbook speaks of, as data.
 *
 * An id names the same thing everywhere: formula, slider, query parameter, `<output>`, table column, glossary entry.
 */

/** Units in which the core computes. `m` is kept for guide numbers alone; `''` is a pure number. */
export type BaseUnit =
  '' | 'mm' | 's' | 'm' | '1/mm' | 'dpt' | 'lx' | 'cd/m²' | 'rad' | 'rad/s' | 'mm/s' | 'stops' | 'px';

/** Units in which a quantity is shown and may be typed; see `units.ts` for what each is worth. */
export type ShownUnit = BaseUnit | 'µm' | 'nm' | 'cm' | 'in' | 'ms' | '°' | '°/s' | 'lp/mm' | 'min' | 'm/s' | '%';

/** How the trade writes a quantity: a plain number, `f/8`, `1/200 s`, `1:2`, `+3 dpt`, whole numbers, or a share in per cent. */
export type Writing = 'plain' | 'f-number' | 'shutter-time' | 'ratio' | 'signed' | 'whole' | 'share' | 'power-fraction';

export interface Quantity {
  /** Name in running text, lower case. */
  readonly name: string;
  /** Letter in plain text, or '' where the trade has none. */
  readonly symbol: string;
  /** Letter in TeX; the name in upright type where there is no letter. */
  readonly tex: string;
  readonly base: BaseUnit;
  /** Preferred unit on screens; lengths step up or down from it when a number gets unwieldy. */
  readonly shown: ShownUnit;
  readonly writing: Writing;
  /** Sensible range, base unit: what sliders span and fields accept. */
  readonly least: number;
  readonly most: number;
  /** Sliders are logarithmic where the trade thinks in ratios. */
  readonly scale: 'log' | 'linear';
  /** One line for the glossary. */
  readonly meaning: string;
}

type Options = Partial<Pick<Quantity, 'shown' | 'writing' | 'scale'>>;

function row(
  name: string,
  symbol: string,
  tex: string,
  base: BaseUnit,
  range: readonly [number, number],
  meaning: string,
  { shown = base, writing = 'plain', scale = range[0] > 0 ? 'log' : 'linear' }: Options = {},
): Quantity {
  const [least, most] = range;
  return { name, symbol, tex: tex === '' ? `\\text{${name}}` : tex, base, shown, writing, least, most, scale, meaning };
}

const fNumber: Options = { writing: 'f-number' };
const inMicrometres: Options = { shown: 'µm' };
const inNanometres: Options = { shown: 'nm' };
const inDegrees: Options = { shown: '°' };
const share: Options = { shown: '%', writing: 'share' };
const time: Options = { writing: 'shutter-time' };
const whole: Options = { writing: 'whole' };

// One row a line, to be read as the table it is.
// prettier-ignore
export const vocabulary = {
  'focal-length': row('focal length', 'f', 'f', 'mm', [4, 800], 'of the lens at the focus setting in use'),
  'f-number': row('f-number', 'N', 'N', '', [0.95, 64], 'as marked on the lens', fNumber),
  'effective-f-number': row('effective f-number', 'N_w', 'N_w', '', [0.5, 1000], 'of the cone of light that reaches the sensor', fNumber),
  'max-aperture': row('maximum aperture', 'N_0', 'N_0', '', [0.95, 22], 'smallest marked f-number of the lens', fNumber),
  'entrance-pupil': row('entrance pupil', 'D', 'D', 'mm', [0.05, 400], 'diameter of the aperture as the subject sees it'),
  'entrance-pupil-distance': row('entrance pupil distance', 'u', 'u', 'mm', [1, 50000], 'entrance pupil to subject'),
  'pupil-magnification': row('pupil magnification', 'P', 'P', '', [0.2, 5], 'exit pupil over entrance pupil diameter, the lens the right way round'),
  magnification: row('magnification', 'm', 'm', '', [0.02, 20], 'image size over subject size (reproduction ratio)', { writing: 'ratio' }),
  'focus-magnification': row('focus magnification', 'm_0', 'm_0', '', [0, 5], 'what the lens gives by its own focusing, before anything is added', { writing: 'ratio' }),
  extension: row('extension', 'e', 'e', 'mm', [0, 400], 'added between lens and camera'),
  'subject-distance': row('subject distance', 's', 's', 'mm', [1, 50000], 'front principal plane H to subject'),
  'image-distance': row('image distance', 's′', "s'", 'mm', [1, 20000], 'rear principal plane H′ to sensor'),
  'focus-distance': row('focus distance', 'L', 'L', 'mm', [1, 50000], 'sensor to subject'),
  'working-distance': row('working distance', 'w', 'w', 'mm', [-500, 50000], 'whatever stands foremost to subject', { scale: 'linear' }),
  'register-distance': row('register distance', 'R', 'R', 'mm', [5, 120], 'mount flange to sensor'),
  'principal-separation': row('principal plane separation', 'HH′', "\\overline{HH'}", 'mm', [-100, 200], 'from H to H′; negative where they cross over'),
  'front-principal-depth': row('front principal depth', 'h', 'h', 'mm', [-200, 300], 'front rim to H'),
  'close-up-power': row('close-up power', 'Φ', '\\Phi', 'dpt', [0.1, 50], 'of a close-up lens, one over its focal length in metres', { writing: 'signed' }),
  'close-up-gap': row('close-up gap', 'g', 'g', 'mm', [0, 200], 'close-up lens to H of the lens behind it'),
  'abbe-number': row('Abbe number', 'V', 'V', '', [15, 100], 'how little a glass spreads colours: large is good'),
  'converter-factor': row('converter factor', 'k', 'k', '', [1, 4], 'how many times a converter enlarges the image'),
  'converter-length': row('converter length', 'ℓ', '\\ell', 'mm', [1, 150], 'flange to flange'),
  'numerical-aperture': row('numerical aperture', 'NA', '\\mathrm{NA}', '', [0.001, 0.99], 'engraved on an objective: the sine of the half angle of its cone'),
  'objective-magnification': row('objective magnification', '', '', '', [1, 100], 'as engraved on a microscope objective'),
  'tube-focal-length': row('tube lens focal length', '', '', 'mm', [50, 500], 'of the tube lens the objective was designed for'),
  'sensor-width': row('sensor width', 'W_x', 'W_x', 'mm', [1, 70], 'long side of the sensor'),
  'sensor-height': row('sensor height', 'W_y', 'W_y', 'mm', [1, 60], 'short side of the sensor'),
  'crop-factor': row('crop factor', '', '', '', [0.5, 30], '43.27 mm over the diagonal of the sensor'),
  'pixel-pitch': row('pixel pitch', 'p', 'p', 'mm', [0.0005, 0.03], 'centre to centre of neighbouring pixels', inMicrometres),
  'field-width': row('field width', '', '', 'mm', [0.05, 3500], 'of the subject plane that fills the long side of the sensor'),
  'field-height': row('field height', '', '', 'mm', [0.05, 3000], 'of the subject plane that fills the short side of the sensor'),
  'subject-width': row('subject width', '', '', 'mm', [0.05, 2000], 'of the thing photographed'),
  'subject-depth': row('subject depth', 'Z', 'Z', 'mm', [0.001, 1000], 'nearest to farthest part that should be sharp'),
  'image-width': row('image width', '', '', 'mm', [0.001, 4000], 'of the subject’s image on the sensor'),
  'pixels-per-millimetre': row('pixels per millimetre', '', '', '1/mm', [0.1, 40000], 'sensor pixels along one millimetre of subject'),
  'print-width': row('print width', '', '', 'mm', [50, 3000], 'of the picture as looked at'),
  'viewing-distance': row('viewing distance', '', '', 'mm', [100, 10000], 'eye to print or screen'),
  'circle-of-confusion': row('circle of confusion', 'c', 'c', 'mm', [0.001, 0.2], 'largest blur on the sensor still called sharp', inMicrometres),
  'depth-of-field': row('depth of field', 'T', 'T', 'mm', [1e-5, 1e6], 'near limit plus far limit'),
  'depth-of-field-close-up': row('depth of field, close-up form', 'T_c', 'T_{\\mathrm{c}}', 'mm', [1e-5, 1e6], 'the close-up form of T, which needs no focal length'),
  'near-limit': row('near limit', '', '', 'mm', [1e-5, 1e6], 'from the sharp plane towards the lens'),
  'far-limit': row('far limit', '', '', 'mm', [1e-5, 1e6], 'from the sharp plane away from the lens'),
  'wave-depth': row('wave depth', '', '', 'mm', [1e-5, 1000], 'depth that diffraction alone allows'),
  'hyperfocal-distance': row('hyperfocal distance', '', '', 'mm', [1, 1e7], 'from H; focused there, everything farther is sharp'),
  'background-distance': row('background distance', 'B', 'B', 'mm', [0, 1e5], 'from the subject to what stands behind it'),
  'background-blur': row('background blur', '', '', 'mm', [0, 1000], 'diameter on the sensor of a far point behind the subject'),
  'background-width': row('background width', '', '', 'mm', [0, 1e6], 'of the background that the picture shows'),
  wavelength: row('wavelength', 'λ', '\\lambda', 'mm', [0.00038, 0.00078], 'of the light', { shown: 'nm', scale: 'linear' }),
  'airy-diameter': row('Airy disc diameter', '', '', 'mm', [0.0005, 2], 'on the sensor, to the first dark ring', inMicrometres),
  'image-radius': row('image radius', '', '', 'mm', [0, 2], 'on the sensor, from the middle of the image of a point', inMicrometres),
  'defocus-blur': row('defocus blur', 'b', 'b', 'mm', [0, 100], 'diameter on the sensor of the blur of a point out of focus', inMicrometres),
  'defocus-aberration': row('defocus in waves', 'W₀₂₀', 'W_{020}', '', [-200, 200], 'how far defocus alone puts the light of the aperture’s rim out of step, in wavelengths'),
  'spherical-aberration': row('spherical aberration', 'W₀₄₀', 'W_{040}', '', [-20, 20], 'how far primary spherical aberration alone puts the light of the aperture’s rim out of step, in wavelengths'),
  contrast: row('contrast', '', '', '', [0, 1], 'what is left of a fine pattern’s contrast (MTF) at the spatial frequency', share),
  'spatial-frequency': row('spatial frequency', 'ν', '\\nu', '1/mm', [1, 2000], 'line pairs in one millimetre of the sensor', { shown: 'lp/mm' }),
  'cutoff-frequency': row('cutoff frequency', 'ν_c', '\\nu_{\\mathrm{c}}', '1/mm', [1, 5000], 'beyond it a perfect lens passes nothing', { shown: 'lp/mm' }),
  'best-f-number': row('best f-number', '', '', '', [0.95, 64], 'marked, for a subject depth', fNumber),
  'nyquist-frequency': row('Nyquist frequency', '', '', '1/mm', [10, 1000], 'finest pattern the pixels can sample: one line pair on two pixels', { shown: 'lp/mm' }),
  'light-loss': row('light loss', '', '', 'stops', [0, 20], 'stops of light lost against the marked f-number'),
  'exposure-time': row('exposure time', 't', 't', 's', [1e-6, 3600], 'how long the shutter is open', time),
  iso: row('ISO', 'S', 'S', '', [25, 409600], 'exposure index', whole),
  illuminance: row('illuminance', 'E', 'E', 'lx', [0.001, 2e5], 'light falling on the subject'),
  luminance: row('luminance', 'L_v', 'L_v', 'cd/m²', [0.0001, 1e6], 'light coming from the subject towards the lens'),
  'exposure-value': row('exposure value', 'EV', '\\mathrm{EV}', '', [-10, 25], 'log2 of N squared over t'),
  'guide-number': row('guide number', 'GN', '\\mathrm{GN}', 'm', [0.5, 100], 'of a flash at ISO 100: f-number times distance in metres'),
  'flash-power': row('flash power', '', '', '', [1 / 512, 1], 'share of full power', { writing: 'power-fraction' }),
  'flash-distance': row('flash distance', 'd', 'd', 'mm', [1, 20000], 'flash head or diffuser to subject'),
  'flash-duration': row('flash duration', '', '', 's', [1e-6, 0.1], 'how long the flash shines', time),
  'sync-speed': row('sync speed', '', '', 's', [1 / 8000, 1], 'shortest exposure time at which the shutter is fully open', time),
  'ambient-share': row('ambient share', '', '', '', [0, 1], 'of the exposure that comes from the light already there', share),
  'shake-rate': row('shake rate', 'ω', '\\omega', 'rad/s', [1e-5, 1], 'how fast the camera turns in the hands', { shown: '°/s' }),
  stabilisation: row('stabilisation', '', '', 'stops', [0, 8], 'how many stops slower than without it'),
  sway: row('sway', 'σ', '\\sigma', 'mm', [0.001, 100], 'standard deviation of the movement along the axis'),
  'sideways-speed': row('sideways speed', 'v_s', 'v_s', 'mm/s', [0.001, 1000], 'of the camera across the axis'),
  'subject-speed': row('subject speed', 'v', 'v', 'mm/s', [0.001, 50000], 'of the subject across the axis'),
  'motion-blur': row('motion blur', '', '', 'mm', [0, 1000], 'length on the sensor of the streak that movement leaves', inMicrometres),
  'keeper-share': row('keeper share', '', '', '', [0, 1], 'share of frames in focus', share),
  'keeper-frames': row('keeper frames', '', '', '', [1, 10000], 'frames to take for one keeper', whole),
  'subject-tilt': row('subject tilt', 'τ', '\\tau', 'rad', [0, Math.PI / 2], 'between a flat subject and the sensor plane', inDegrees),
  overlap: row('overlap', '', '', '', [-2, 0.95], 'share of the depth of field shared by neighbouring frames', share),
  'frame-step': row('frame step', 'Δ', '\\Delta', 'mm', [1e-5, 1000], 'between focus positions'),
  'frame-count': row('frame count', 'n', 'n', '', [1, 100000], 'frames in a stack', whole),
  'scale-change': row('scale change', '', '', '', [0, 1], 'of the picture from one frame to the next', share),
  'edge-shift': row('edge shift', '', '', 'px', [0, 1000], 'at the frame edge (half the width) from one frame to the next'),
  'settling-time': row('settling time', '', '', 's', [0, 60], 'wait for vibration to die before a frame'),
  'recycling-time': row('recycling time', '', '', 's', [0, 60], 'wait for the flash to charge'),
  'stack-time': row('stack time', '', '', 's', [0, 1e6], 'for the whole stack'),
  'time-limit': row('time limit', '', '', 's', [0, 1e6], 'until the subject melts, opens or walks away'),
  'source-size': row('source width', 'S_w', 'S_w', 'mm', [1, 5000], 'of the light'),
  'source-angle': row('source angle', 'α', '\\alpha', 'rad', [0, Math.PI], 'width of the light as the subject sees it', inDegrees),
  penumbra: row('penumbra', '', '', 'mm', [0, 10000], 'width of a shadow’s soft edge'),
  'edge-height': row('edge height', 'y', 'y', 'mm', [0.001, 1000], 'of a shadow-casting edge above the surface'),
  'ball-radius': row('ball radius', 'r', 'r', 'mm', [0.01, 500], 'of a round shiny subject, such as an eye'),
  'catchlight-width': row('catchlight width', '', '', 'mm', [0, 1000], 'of the light’s reflection in a ball'),
  'film-thickness': row('film thickness', 'd_f', 'd_f', 'mm', [1e-6, 0.01], 'of a soap film', inNanometres),
  'refractive-index': row('refractive index', 'n_r', 'n_r', '', [1, 4], 'speed of light outside over inside'),
  'incidence-angle': row('incidence angle', 'θ', '\\theta', 'rad', [0, Math.PI / 2], 'between ray and surface normal', inDegrees),
  reflectance: row('reflectance', 'ρ', '\\rho', '', [0, 1], 'share of the light sent back', share),
} as const satisfies Record<string, Quantity>;

/** Id of one quantity, e.g. `focal-length`. */
export type QuantityId = keyof typeof vocabulary;

/** An id, or an id with the part it belongs to where a chain has two: `reversed-lens.focal-length`. */
export type QuantityName = QuantityId | `${string}.${QuantityId}`;

/** All ids, in the order of the vocabulary. */
export const quantityIds = Object.keys(vocabulary) as QuantityId[];

/** True when *text* is an id of the vocabulary. */
export function isQuantityId(text: string): text is QuantityId {
  return Object.hasOwn(vocabulary, text);
}

/** The vocabulary's row for a name, with or without a part prefix. */
export function quantityOf(name: QuantityName): Quantity {
  return vocabulary[name.slice(name.lastIndexOf('.') + 1) as QuantityId];
}
