import { quantityIds, vocabulary, type QuantityName } from '#core/quantity/vocabulary.ts';

/**
 * What people write for a quantity besides its name and its letter, in lower case. Where a phrase stands for several, the first whose unit fits
 * is meant. Phrases of the trade, common practice.
 */
// prettier-ignore
const phrases: Readonly<Record<string, string>> = {
  'focal-length': 'lens, macro lens, prime, focal, fl',
  'f-number': 'aperture, stop, f-stop, fstop, marked f-number, set to, stopped down to, opening, diaphragm',
  'effective-f-number': 'working f-number, effective aperture, working aperture, effective f-stop, nw, ne, n eff, neff, effective',
  'max-aperture': 'wide open, maximum aperture, max aperture, largest aperture, n0',
  'entrance-pupil': 'pupil, aperture diameter, hole',
  'entrance-pupil-distance': 'distance from the pupil, pupil distance',
  'pupil-magnification': 'pupil ratio, pupil factor, pupils',
  'frame-fill': 'frame fill, share of the frame, share of the picture, of the frame, of the picture, fills',
  magnification: 'reproduction ratio, mag, image scale, scale, enlargement, life size, lifesize, life-size',
  'focus-magnification': 'own magnification, by itself, on its own, alone, lens alone, alone gives, native magnification, lens gives, closest focus gives, m0',
  extension: 'ring, rings, extension ring, extension rings, tube, tubes, extension tube, extension tubes, bellows, spacer, ext',
  'focus-travel': 'travel, racked out, rack',
  'subject-distance': 'object distance, from h, in front of h',
  'image-distance': 'image side',
  'focus-distance': 'focusing distance, focus, focused at, sensor to subject, from the sensor, from the film, minimum focus, closest focus, nearest focus, nearest possible focus, shortest focus distance, least focus distance, mfd, film to subject',
  'working-distance': 'room, clearance, free working distance, gap to the subject, in front of the lens, in front of the rim, lens to subject, rim to subject, from the lens, away, from the subject, from my subject, working dist, wd',
  'register-distance': 'register, flange distance, flange focal distance, mount to sensor',
  'principal-separation': "hh', hh, principal planes apart, hiatus",
  'front-principal-depth': 'h behind the rim, depth of h, rim to h, principal plane behind the rim, behind the rim',
  'rim-diameter': 'filter thread, filter, rim, thread, front diameter',
  'barrel-length': 'barrel, long barrel',
  'close-up-power': 'close-up lens, close-up lenses, close up lens, closeup lens, close-up filter, dioptre lens, close-up, dioptres, diopter, dioptre, achromat',
  'close-up-gap': 'gap',
  'abbe-number': 'abbe, v-number',
  'converter-factor': 'converter, teleconverter, tele converter, tele-converter, extender, tc',
  'converter-length': 'long converter',
  'numerical-aperture': 'na',
  'objective-magnification': 'objective, microscope objective',
  'tube-focal-length': 'tube lens',
  'sensor-width': 'sensor, camera, body, frame, format, chip, wide sensor, sensor wide, film',
  'sensor-height': 'sensor high, high sensor, height, high',
  'angle-of-view': 'view, aov',
  'crop-factor': 'crop, format factor',
  'pixel-pitch': 'pixel, pixels, pixel size, pitch',
  'field-width': 'field, field of view, fov, covers, coverage, picture width, seen',
  'field-height': 'high field, height, high',
  'subject-width': 'subject, subject wide, wide subject, wide, across, long, object',
  'subject-depth': 'deep, deep subject, thick, front to back, subject deep, depth of the subject',
  'image-width': 'image, on the sensor, image on the sensor',
  'print-width': 'print, wide print',
  'viewing-distance': 'viewed from, seen from, viewing',
  'circle-of-confusion': 'circle, coc, blur circle, permissible blur, confusion, blur allowed, allowed blur',
  'depth-of-field': 'depth, dof, zone of sharpness, sharp depth, sharp zone, sharp',
  'depth-of-field-close-up': 'close-up form',
  'near-limit': 'near, near side',
  'far-limit': 'far, far side',
  'hyperfocal-distance': 'hyperfocal',
  'background-distance': 'background, behind the subject, backdrop',
  'background-blur': 'background blur',
  wavelength: 'light of, green light, red light, blue light, light',
  'airy-diameter': 'airy, airy disk, diffraction blur, diffraction disc, diffraction, diffraction disk, spot',
  'defocus-blur': 'blur, blur disc',
  contrast: 'mtf, modulation',
  'spatial-frequency': 'frequency, detail of, detail',
  'cutoff-frequency': 'cutoff, cut-off, cut off',
  'nyquist-frequency': 'nyquist, nyquist limit',
  'best-f-number': 'best aperture, optimum aperture, optimum f-number, sharpest aperture, best stop',
  'balanced-f-number': 'balance',
  'light-loss': 'lost, light lost, stops lost, loss, exposure loss, darker, exposure factor',
  'exposure-time': 'shutter, shutter speed, exposure, shutter time, time, speed',
  iso: 'asa, sensitivity',
  illuminance: 'lux',
  'exposure-value': 'ev',
  'light-value': 'lv',
  'guide-number': 'gn, guide no, flash',
  'flash-power': 'power, flash',
  'flash-distance': 'flash at, flash distance, flash away, from the flash, light at, lamp at, away from the light',
  'flash-duration': 'flash lasts, burst, flash of',
  'sync-speed': 'sync, x-sync',
  'stabilisation': 'stabilised, stabilization, stabilizer, stabiliser',
  'shake-rate': 'shake, tremor, turning',
  sway: 'swaying, rocking',
  'subject-speed': 'subject moves, moving at, moving, wind, walks, crawls, moves',
  'motion-blur': 'smear, streak, movement blur, blur',
  'subject-tilt': 'tilt, tilted, leaning, leans, slope',
  overlap: 'overlapping',
  'frame-step': 'step, steps, step size, step width, increment',
  'frame-count': 'frames, shots, pictures, exposures, frame',
  'keeper-frames': 'frames, shots, pictures, exposures',
  'keeper-share': 'keepers, in focus, sharp ones, hits',
  'stack-travel': 'rail travel, rail moved, rail moves, stack length',
  'settling-time': 'settle, settling',
  'recycling-time': 'recycle, recharge, recharging, recycling',
  'stack-time': 'stack takes, whole stack',
  'source-size': 'softbox, soft box, diffuser, lamp, light source, panel, wide light, source',
  'source-angle': 'seen under',
  'ball-radius': 'ball, sphere, radius, bead',
  'catchlight-width': 'catchlight, highlight, reflection',
  'film-thickness': 'film, thickness, thick film, soap film',
  'refractive-index': 'index, refraction, n_r, water, glass',
  'incidence-angle': 'incidence, angle, angle of incidence',
  'interference-order': 'order',
};

/** A phrase and what it may stand for, likeliest first. */
export type Lexicon = ReadonlyMap<string, readonly QuantityName[]>;

/** All phrases for quantities, in lower case: names, ids, and what else people write. */
export const lexicon: Lexicon = phrasesFor();

/** Letters as they are printed, capitals told apart; `N_w` may be written Nw, and a prime as an apostrophe. */
export const letters: Lexicon = lettersFor();

function phrasesFor(): Lexicon {
  const all = new Map<string, QuantityName[]>();
  const add = (phrase: string, id: QuantityName) => all.set(phrase, [...(all.get(phrase) ?? []), id]);
  for (const id of quantityIds) {
    const names = [vocabulary[id].name.toLowerCase(), id.replaceAll('-', ' '), id, ...(phrases[id] ?? '').split(', ')];
    for (const phrase of new Set(names)) if (phrase !== '') add(phrase, id);
  }
  return all;
}

function lettersFor(): Lexicon {
  const all = new Map<string, QuantityName[]>();
  for (const id of quantityIds) {
    const { symbol } = vocabulary[id];
    if (symbol === '' || symbol === '1/u') continue;
    const plain = symbol.replace('′', "'");
    for (const one of new Set([symbol, plain, symbol.replace('_', ''), plain.replace('_', '')])) {
      all.set(one, [...(all.get(one) ?? []), id]);
    }
  }
  return all;
}
