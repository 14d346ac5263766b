import { readQuantity } from '#core/quantity/read.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { letters, lexicon } from './words.ts';
import type { WrittenNumber } from './written-numbers.ts';

/** So many words on either side of a number may name it. */
const reach = 7;

/** Phrases for things that are only gear while no number stands with them. */
const gear = new Set(
  'lens, macro lens, prime, aperture, ring, rings, extension ring, extension rings, tube, tubes, extension tube, extension tubes, bellows, spacer, close-up lens, close up lens, closeup lens, close-up filter, close-up, achromat, converter, teleconverter, tele converter, extender, objective, microscope objective, tube lens, sensor, camera, body, frame, format, chip, film, pixel, pixels, flash, subject, object, image, print, glass, water, light, green light, red light, blue light, ball, lamp, softbox, diffuser, source, view, long, wide, near, far, behind, alone, by itself, pictures, exposure, time, speed, moving, wind, order, angle, focus, scale, life size, away, wide open, rim, filter, barrel, sharp, seen, power, stop, thick, deep, background, height, high, flash at, light at, lamp at, set to, focused at, across'.split(
    ', ',
  ),
);

/** Words that say what a size belongs to, not which size it is. */
const faint = new Set(['subject', 'object', 'lens', 'image', 'print', 'flash']);

/** What the words before and after a number name it, the longest phrase first: only what a number so written can be, or could but for its size. */
export function namedBy(number: string, before: string, after: string): readonly QuantityName[] {
  const own = before.replace(ofSomething, '');
  const told = [...phrasesIn(lastWords(own)), ...phrasesIn(firstWords(after)), ...letterBefore(own)];
  const ids = told.sort((one, other) => other.weight - one.weight).flatMap(({ ids }) => ids);
  if (lightBefore.test(own) && awayAfter.test(after)) ids.unshift('flash-distance');
  if (printBefore.test(own) && wideAfter.test(after)) ids.unshift('print-width');
  if (indexBefore.test(own) && anIndex.test(number)) ids.unshift('refractive-index');
  return [...new Set(ids)].filter((id) => readQuantity(id, number).kind !== 'unreadable');
}

/** A light that is so far away: its name stands before the number, and what is said of it behind. */
const lightBefore = /\b(?:flash(?:es)?|lights?|lamps?|diffuser|softbox|soft box)(?: head)?\s*$/i;
const awayAfter = /^\s*(?:away|off|from)\b/i;

/** A light is spoken of, by its strength or by its size. */
export const speaksOfLight = (had: readonly QuantityName[]) =>
  had.includes('guide-number') || had.includes('source-size');

/** What a number may be by its writing and unit alone, likeliest first; what is *had* already is not meant again. *hasLight* where a light is spoken of. */
export function byWriting(
  { text, form, unit, ofPair }: WrittenNumber,
  had: readonly QuantityName[],
  hasLight: boolean,
): readonly QuantityName[] {
  if (ofPair === 1) return ['sensor-width', 'field-width', 'subject-width'];
  if (ofPair === 2) return had.at(-1) === 'field-width' ? ['field-height'] : ['sensor-height'];
  if (form === 'ratio' && engraved.test(text))
    return ['max-aperture', 'f-number', 'magnification'].filter(
      (id) => !had.includes(id as QuantityName),
    ) as QuantityName[];
  const likely = unit === '' || form === 'sum' ? byForm[form] : (byUnit[unit.replace(/\.$/, '')] ?? byForm[form]);
  const flashFirst: readonly QuantityName[] =
    hasLight && (likely === lengths || likely === far) ? ['flash-distance'] : [];
  return [...flashFirst, ...likely].filter((id) => !had.includes(id));
}

/** How the widest opening stands on a lens: 1:2.8, with a decimal from the series of stops. */
const engraved = /^1 ?: ?(?:0\.95|1\.[02478]|2\.[058]|3\.[58]|4\.5|5\.6|6\.3)$/;

const byForm: Readonly<Record<WrittenNumber['form'], readonly QuantityName[]>> = {
  'f-number': ['f-number', 'effective-f-number', 'max-aperture', 'best-f-number'],
  ratio: ['magnification', 'focus-magnification', 'max-aperture'],
  times: ['magnification', 'converter-factor', 'crop-factor', 'objective-magnification', 'focus-magnification'],
  fraction: ['exposure-time', 'magnification', 'flash-power', 'flash-duration', 'sync-speed'],
  // Rings are added up, hardly ever anything else.
  sum: ['extension', 'working-distance', 'subject-distance'],
  plain: [],
  strange: [],
};

const lengths: readonly QuantityName[] = [
  'focal-length',
  'extension',
  'working-distance',
  'focus-distance',
  'field-width',
  'subject-width',
  'subject-depth',
  'depth-of-field',
  'sensor-width',
];
const far: readonly QuantityName[] = [
  'working-distance',
  'focus-distance',
  'flash-distance',
  'background-distance',
  'subject-width',
];
const small: readonly QuantityName[] = [
  'circle-of-confusion',
  'pixel-pitch',
  'airy-diameter',
  'defocus-blur',
  'motion-blur',
  'depth-of-field',
];
const times: readonly QuantityName[] = [
  'exposure-time',
  'flash-duration',
  'recycling-time',
  'settling-time',
  'stack-time',
];
const speeds: readonly QuantityName[] = ['subject-speed', 'sideways-speed'];
const powers: readonly QuantityName[] = ['close-up-power'];

// prettier-ignore
const byUnit: Readonly<Record<string, readonly QuantityName[]>> = {
  mm: lengths, cm: far, m: far, in: far, inch: far, inches: far, ft: far, feet: far,
  millimetres: lengths, millimeters: lengths, centimetres: far, centimeters: far, metres: far, meters: far, metre: far,
  µm: small, μm: small, um: small, micron: small, microns: small, micrometres: small,
  nm: ['wavelength', 'film-thickness'], nanometres: ['wavelength', 'film-thickness'],
  s: times, sec: times, second: times, seconds: times, ms: times, min: times,
  dpt: powers, d: powers, dioptre: powers, dioptres: powers, diopter: powers, diopters: powers,
  lx: ['illuminance'], lux: ['illuminance'], 'cd/m²': ['luminance'], 'cd/m2': ['luminance'],
  '°': ['subject-tilt', 'angle-of-view', 'incidence-angle'], deg: ['subject-tilt'], degrees: ['subject-tilt'],
  'mm/s': speeds, 'cm/s': speeds, 'm/s': speeds, '°/s': ['shake-rate'],
  stops: ['light-loss', 'stabilisation'], stop: ['light-loss', 'stabilisation'], ev: ['light-loss', 'exposure-value'],
  'lp/mm': ['spatial-frequency', 'cutoff-frequency'], 'px/mm': ['pixels-per-millimetre'],
  frames: ['frame-count'], frame: ['frame-count'], px: ['edge-shift'], '%': ['overlap', 'contrast', 'scale-change'],
};

/** What beginners ask without its name. */
const questions: readonly (readonly [words: RegExp, asks: QuantityName])[] = [
  [/\bhow (?:close|near|far)\b/i, 'working-distance'],
  [/\bhow (?:large|big)\b/i, 'magnification'],
  [/\bhow much (?:is|will be|comes out) sharp\b/i, 'depth-of-field'],
  [/\bhow (?:much light|many stops)\b/i, 'light-loss'],
  [/\bhow many frames\b/i, 'frame-count'],
];

/** What a text may ask for that consists of nothing but a name or a letter, and of words around it that say nothing, likeliest first. */
export function wholePhrase(text: string): readonly QuantityName[] {
  const bare = text.replace(/[?!.:=]/g, ' ').trim();
  const letter = letters.get(bare);
  if (letter) return letter;
  const asked = questions.find(([words]) => words.test(bare));
  if (asked) return [asked[1]];
  const isQuestion = /\b(?:which|what|how)\b/i.test(bare);
  const whole = bare.toLowerCase();
  // “Angle of view of the lens”: all of it, or what stands before the last such word, or before the one before that.
  const ends = [...whole.matchAll(/ (?:for|of|to|from|between)\b/g)].map(({ index }) => index).reverse();
  const phrase = [whole.length, ...ends]
    .map((end) => withoutFillers(whole.slice(0, end)))
    .find((one) => lexicon.has(one));
  return phrase === undefined || (gear.has(phrase) && !isQuestion) ? [] : lexicon.get(phrase)!;
}

const fillers =
  /\b(?:what(?:['’]s)?|which|how|much|many|large|is|are|the|a|an|my|its|and|will|be|do|i|get|find|compute|work out|wanted|asked|there)\b/g;
const withoutFillers = (text: string) => text.replace(fillers, ' ').replace(/ +/g, ' ').trim();

/** “Nearest focus of a 50 mm lens”: what stands before is asked of the thing that the number is of. */
const ofSomething = /^.*\bof (?:an?|my|our|the)\s*$/i;

/** A print that is so wide, in two places as well. */
const printBefore = /\bprint(?:ed)?\s*$/i;
const wideAfter = /^\s*(?:wide|across)\b/i;

/** Books of optics write n for the index of glass; no count of frames has a decimal. */
const indexBefore = /\bn\s*[=:]?\s*$/;
const anIndex = /^[12][.,]\d/;

interface Told {
  readonly ids: readonly QuantityName[];
  readonly weight: number;
}

/** Every phrase in a few words: the longer, the more it says. */
function phrasesIn(words: readonly string[]): Told[] {
  const told: Told[] = [];
  for (let from = 0; from < words.length; from++) {
    for (let to = Math.min(words.length, from + 5); to > from; to--) {
      const phrase = words.slice(from, to).join(' ');
      const ids = lexicon.get(phrase);
      // “Wide open” says nothing of a width.
      if (ids && !(phrase === 'wide' && words[to] === 'open'))
        told.push({ ids, weight: faint.has(phrase) ? 2 : phrase.length });
    }
  }
  return told;
}

/** The letter that stands last before a number, with or without a sign of equality. A letter of one stroke says as much as a short word. */
function letterBefore(before: string): Told[] {
  const last =
    before
      .replace(/[=:≈~]\s*$/, '')
      .trim()
      .split(' ')
      .at(-1) ?? '';
  const ids = letters.get(last) ?? (last.length > 1 ? undefined : letters.get(last.toLowerCase()));
  return ids ? [{ ids, weight: 6 }] : [];
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\d\-'_/ ]/gu, ' ')
    .trim()
    .split(/ +/)
    .filter((word) => word !== '');
}

function lastWords(text: string): readonly string[] {
  return wordsOf(text).slice(-reach);
}

function firstWords(text: string): readonly string[] {
  return wordsOf(text).slice(0, reach);
}
