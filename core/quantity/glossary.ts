import { partIndex, partOf } from './part.ts';
import { quantityOf, type QuantityId, type QuantityName } from './vocabulary.ts';

/** What a page prints of a quantity beside its number. */
export interface GlossaryEntry {
  /** The letter in TeX; '' where the trade has none. */
  readonly tex: string;
  /** One line: what it is. */
  readonly meaning: string;
}

const entry = (tex: string, meaning: string): GlossaryEntry => ({ tex, meaning });

// One row a line, to be read as the table it is.
// prettier-ignore
export const glossary: Readonly<Record<QuantityId, GlossaryEntry>> = {
  'focal-length': entry('f', 'of the lens at the focus setting in use'),
  'f-number': entry('N', 'as marked on the lens'),
  'effective-f-number': entry('N_w', 'of the cone of light that reaches the sensor'),
  'max-aperture': entry('N_0', 'smallest marked f-number of the lens'),
  'balanced-f-number': entry('', 'marked: ends of the depth blurred as widely as the Airy disc'),
  'stopped-down': entry('', 'from the maximum aperture to the one set'),
  'finder-loss': entry('', 'of an optical finder, against wide open at infinity'),
  'entrance-pupil': entry('D', 'diameter of the aperture as the subject sees it'),
  'exit-pupil': entry("D'", 'diameter of the aperture as the sensor sees it'),
  'entrance-pupil-distance': entry('u', 'from the entrance pupil to the subject'),
  'inverse-entrance-pupil-distance': entry(String.raw`\tfrac{1}{u}`, 'one over the distance from entrance pupil to subject'),
  'pupil-magnification': entry('P', 'back image of the aperture over front image'),
  magnification: entry('m', 'image size over subject size (reproduction ratio)'),
  'focus-magnification': entry('m_0', 'by the lens’s own focusing, before anything is added'),
  extension: entry('e', 'added between lens and camera'),
  'focus-travel': entry('q', 'how far the lens stands out from its infinity setting'),
  'subject-distance': entry('s', 'from the front principal plane H to the subject'),
  'image-distance': entry("s'", 'from the rear principal plane H′ to the sensor'),
  'focus-distance': entry('L', 'from the sensor to the subject'),
  'working-distance': entry('w', 'from the frontmost part of the gear to the subject'),
  'flight-distance': entry('', 'nearest that an animal lets anything come'),
  'air-gap': entry('', 'from the front rim to the wall of a tank'),
  'pane-thickness': entry('', 'of the wall of a tank'),
  'immersion-depth': entry('', 'of a subject behind the wall of a tank'),
  'register-distance': entry('R', 'from the camera’s lens mount to the sensor'),
  'principal-separation': entry(String.raw`\overline{HH'}`, 'from H to H′, negative if H′ is in front of H'),
  'front-principal-depth': entry('h', 'from the front rim to H'),
  'rim-diameter': entry('\\varnothing', 'outside of a lens’s rim, from side to side'),
  'barrel-length': entry('', 'from the flange to the front rim'),
  'rear-protrusion': entry('', 'what stands out behind the flange of a lens'),
  'close-up-power': entry(String.raw`\Phi`, 'one over its focal length in metres'),
  'close-up-gap': entry('g', 'from the close-up lens to H of the main lens'),
  'abbe-number': entry('V', 'how little a glass spreads colours: large is good'),
  'colour-spread': entry('', 'along the axis, from where blue is sharp to where red is'),
  'colour-blur': entry('', 'of blue on the sensor where red is sharp'),
  'converter-factor': entry('k', 'how many times a converter enlarges the image'),
  'converter-length': entry(String.raw`\ell`, 'from its front mount to its rear mount'),
  'numerical-aperture': entry(String.raw`\mathrm{NA}`, 'sine of the half angle of an objective’s cone'),
  'objective-magnification': entry('', 'as engraved on a microscope objective'),
  'tube-focal-length': entry('', 'of the tube lens the objective was designed for'),
  'sensor-width': entry('W_x', 'long side of the sensor'),
  'sensor-height': entry('W_y', 'short side of the sensor'),
  'angle-of-view': entry('', 'from side to side of the picture, seen from the entrance pupil'),
  'crop-factor': entry('', '43.27 mm over the diagonal of the sensor'),
  'pixel-pitch': entry('p', 'centre to centre of neighbouring pixels'),
  'field-width': entry('', 'of the subject plane that fills the long side of the sensor'),
  'field-height': entry('', 'of the subject plane that fills the short side of the sensor'),
  'subject-width': entry('', 'of the thing photographed'),
  'frame-fill': entry('', 'of the picture’s long side, what the subject takes'),
  'subject-depth': entry('Z', 'from the nearest to the farthest part that should be sharp'),
  'image-width': entry('', 'of the subject’s image on the sensor'),
  'pixels-per-millimetre': entry('', 'sensor pixels along one millimetre of subject'),
  'print-width': entry('', 'of the picture as looked at'),
  'viewing-distance': entry('', 'from the eye to print or screen'),
  'circle-of-confusion': entry('c', 'largest blur on the sensor still called sharp'),
  'depth-of-field': entry('T', 'near limit plus far limit'),
  'depth-of-field-in-medium': entry('', 'of a subject in water or another clear medium'),
  'depth-of-field-close-up': entry(String.raw`T_{\mathrm{c}}`, 'short form of T, without focal length'),
  'near-limit': entry('', 'from the sharp plane towards the lens'),
  'far-limit': entry('', 'from the sharp plane away from the lens'),
  'wave-depth': entry('', 'the least that the waves of light allow'),
  'hyperfocal-distance': entry('', 'from H; focused there, the horizon is just sharp'),
  'background-distance': entry('B', 'from the subject to what stands behind it'),
  'background-blur': entry('', 'diameter on the sensor of a far point behind the subject'),
  'background-width': entry('', 'of the background that the picture shows'),
  wavelength: entry(String.raw`\lambda`, 'of the light'),
  'airy-diameter': entry('', 'diameter on the sensor, to the first dark ring'),
  'image-radius': entry('', 'on the sensor, from the middle of the image of a point'),
  'defocus-blur': entry('b', 'on the sensor, of a point out of focus'),
  'defocus-aberration': entry('W_{020}', 'defocus, in wavelengths at the rim of the aperture'),
  'spherical-aberration': entry('W_{040}', 'in wavelengths at the rim of the aperture'),
  contrast: entry('', 'share of a fine pattern’s contrast that is left'),
  'spatial-frequency': entry(String.raw`\nu`, 'line pairs in one millimetre of the sensor'),
  'cutoff-frequency': entry(String.raw`\nu_{\mathrm{c}}`, 'from here on a perfect lens shows only grey'),
  'best-f-number': entry('', 'marked, for a subject depth'),
  'nyquist-frequency': entry('', 'finest pattern the pixels can record'),
  'light-loss': entry('', 'against the marked f-number'),
  'lens-shadow': entry('', 'of an even sky’s light on a subject, hidden by the rim'),
  'exposure-time': entry('t', 'how long the shutter is open'),
  iso: entry('S', 'exposure index'),
  illuminance: entry('E', 'light falling on the subject'),
  luminance: entry('L_v', 'how bright the subject looks from the lens'),
  'reflected-light-constant': entry('K', 'how a meter pointed at the subject is calibrated'),
  'incident-light-constant': entry('C', 'how a meter held at the subject is calibrated'),
  'lighting-difference': entry('', 'by how many stops one light is brighter than another'),
  'exposure-value': entry(String.raw`\mathrm{EV}`, 'settings counted in stops'),
  'light-value': entry(String.raw`\mathrm{LV}`, 'light counted in stops, at ISO 100'),
  'guide-number': entry(String.raw`\mathrm{GN}`, 'of a flash at ISO 100: f-number times distance in metres'),
  'flash-power': entry('', 'share of full power'),
  'flash-distance': entry('d', 'from flash head or diffuser to the subject'),
  'flash-duration': entry('', 'how long the flash shines'),
  'sync-speed': entry('', 'shortest exposure time at which the shutter is fully open'),
  'ambient-share': entry('', 'share of the exposure that daylight or room light gives'),
  'ambient-share-of-full-exposure': entry('', 'what daylight or room light alone gives of it'),
  'ambient-underexposure': entry('', 'stops by which daylight or room light alone falls short'),
  'flash-underexposure': entry('', 'stops by which the flash alone falls short'),
  'background-underexposure': entry('', 'stops by which a flash lights the background less than the subject'),
  'quantum-efficiency': entry(String.raw`\eta`, 'share of the photons that a pixel turns into electrons'),
  electrons: entry('', 'that light sets free in one pixel'),
  'full-well': entry('', 'electrons that one pixel can hold'),
  'read-noise': entry('', 'of the circuit that counts the electrons, in electrons'),
  'signal-to-noise': entry('', 'electrons counted over their random error'),
  'shake-rate': entry(String.raw`\omega`, 'how fast the camera turns in the hands'),
  stabilisation: entry('', 'by how many stops the exposure may be longer'),
  sway: entry(String.raw`\sigma`, 'typical movement of the camera towards and from the subject'),
  'sideways-speed': entry('v_s', 'of the camera across the axis'),
  'subject-speed': entry('v', 'of the subject across the axis'),
  'swing-period': entry('', 'once to and fro, of what swings or beats'),
  'swing-amplitude': entry('', 'from the middle of a swing to one end'),
  'motion-blur': entry('', 'length on the sensor of the streak that movement leaves'),
  'keeper-share': entry('', 'of all frames taken'),
  'keeper-frames': entry('', 'to take for a 95 % chance'),
  'subject-tilt': entry(String.raw`\tau`, 'between a flat subject and the sensor plane'),
  'focus-offset': entry(String.raw`\delta`, 'from the sharp plane to the place that should be sharp'),
  'turn-angle': entry(String.raw`\beta`, 'by which the camera turns between focusing and exposing'),
  overlap: entry('', 'share of the depth of field that neighbouring frames share'),
  'frame-step': entry(String.raw`\Delta`, 'from one sharp plane to the next'),
  'frame-count': entry('n', 'frames in a stack'),
  'stack-travel': entry('', 'from the first focus position to the last'),
  'scale-change': entry('', 'of the picture from one frame to the next'),
  'edge-shift': entry('', 'of a detail at the side of the picture, frame to frame'),
  'hidden-band': entry('', 'width of background that a near edge half hides'),
  'settling-time': entry('', 'until the rail has stopped trembling'),
  'recycling-time': entry('', 'for the flash to recharge'),
  'stack-time': entry('', 'for the whole stack'),
  'time-limit': entry('', 'until the subject melts, opens or walks away'),
  'source-size': entry('S_w', 'of the light'),
  'source-angle': entry(String.raw`\alpha`, 'width of the light as the subject sees it'),
  penumbra: entry('', 'width of a shadow’s soft edge'),
  'edge-height': entry('y', 'of an edge above the surface behind it'),
  'ball-radius': entry('r', 'of a round shiny subject, such as an eye'),
  'catchlight-width': entry('', 'of the light’s reflection in a ball'),
  'catchlight-width-paraxial': entry('', 'short form, for a light that is small or far away'),
  'film-thickness': entry('d_f', 'of a soap film'),
  'refractive-index': entry('n_r', 'speed of light outside over inside'),
  'incidence-angle': entry(String.raw`\theta`, 'between ray and surface normal'),
  'refraction-angle': entry(String.raw`\theta'`, 'between ray and surface normal, inside the film'),
  reflectance: entry(String.raw`\rho`, 'share of the light that one surface sends back'),
  'film-reflectance': entry(String.raw`\rho_{\mathrm{f}}`, 'share of the light that a whole film sends back'),
  'interference-order': entry('j', 'counts the bright bands of a film: 1, 2, 3'),
};

/** The quantity's line in the glossary, with or without a part prefix. */
export function glossaryEntry(name: QuantityName): GlossaryEntry {
  return glossary[name.slice(name.lastIndexOf('.') + 1) as QuantityId];
}

/**
 * The quantity in a formula: its letter in TeX, or its name in upright type where the trade has no letter. Where a chain has two of it
 * the part stands at its foot, or at its head where an index stands at its foot already.
 */
export function texOf(name: QuantityName): string {
  const { tex } = glossaryEntry(name);
  const index = partIndex(name);
  if (tex === '') return `\\text{${[partOf(name), quantityOf(name).name].filter(Boolean).join(' ')}}`;
  if (index === '') return tex;
  return `{${tex}}${tex.includes('_') ? '^' : '_'}{\\text{${index}}}`;
}
