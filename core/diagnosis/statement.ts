import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity, type Reading } from '#core/quantity/read.ts';
import { tidied } from '#core/quantity/typed-number.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { addedToLens } from './added-to-lens.ts';
import { clausesOf, designedFor, pixelUnits, separators, turnedWords, type Clause } from './clauses.ts';
import { longestStatement } from './longest-statement.ts';
import { byWriting, namedBy, speaksOfLight, wholePhrase } from './meanings.ts';
import { inNumbers } from './spelled-out.ts';
import { asPlainNumber, numbersIn, type WrittenNumber } from './written-numbers.ts';

/** One number of a statement, and what it was taken for. */
export interface StatedNumber {
  /** As it was written, its words with it: `36 mm of rings`. */
  readonly written: string;
  /** The number alone, with its unit: `36 mm`. */
  readonly number: string;
  readonly quantity: QuantityName;
  /** Base unit. */
  readonly value: number;
  /** Half of the last figure written, base unit; 0 where the writing is exact, as of 1:2. */
  readonly halfFigure: number;
  /** What else it could be, likeliest first. */
  readonly others: readonly QuantityName[];
  /** Of these, what its own words could mean as well. */
  readonly alsoNamed: readonly QuantityName[];
  /** False where nothing but its unit or its writing says what it is. */
  readonly isSaid: boolean;
  /** A clause for what was taken for granted to get it: the sensor’s size, where pixels are only counted. */
  readonly taken?: string;
}

/** What could not be understood, with a sentence that says what would be. */
export interface Unread {
  readonly written: string;
  readonly because: string;
  /** What it names, where only its number was refused. */
  readonly quantity?: QuantityName;
}

/** What became of a text in which somebody says what he has, wants, or found. */
export interface Statement {
  readonly numbers: readonly StatedNumber[];
  /** Quantities that are named without a number: what is wanted. */
  readonly asked: readonly QuantityName[];
  /** What else the same words may ask, by what is asked. */
  readonly alsoAsked: Readonly<Partial<Record<QuantityName, readonly QuantityName[]>>>;
  /** Set-ups spoken of, such as `reversed lens`. */
  readonly setUps: readonly string[];
  readonly unread: readonly Unread[];
}

/** Set-ups by the words for them. */
const spokenOf: readonly (readonly [words: RegExp, setUp: string])[] = [
  [/\brevers(?:ed|ing|e)\b|\bturned (?:round|around)\b|\bbackwards\b/i, 'reversed lens'],
  [/\bclose[- ]?up (?:lens|filter)|\bdpt\b|\bdiopt(?:re|er)|\bachromat/i, 'close-up lens'],
  [/\bobjective\b/i, 'objective'],
  [/\bhyperfocal\b/i, 'hyperfocal distance'],
  [/\b(?:best|optimum|sharpest|finest)\b/i, 'best f-number'],
  [/\b(?:one|single) (?:frame|exposure|shot|picture)\b/i, 'one frame'],
  [/\bfocus(?:ing)? (?:by the |with the )?ring\b/i, 'focusing by the ring'],
  [/\b(?:by|from|of) (?:the |its )?diagonal\b|\bdiagonal (?:over|rule|divided)\b/i, 'circle by the diagonal'],
  [/\bviewing distance\b|\bby viewing\b|\b(?:viewed|seen|looked at) (?:from|at)\b/i, 'circle by viewing'],
  // “Closest focus 0.3 m” is what stands on a lens, not what no lens of its focal length can pass.
  [
    /\bnearest (?:possible )?focus\b|\b(?:least|shortest|smallest) (?:possible )?(?:focus )?distance\b/i,
    'nearest focus',
  ],
  [/\bfar (?:away|off|subject)\b|\bdistant\b/i, 'far subject'],
  [/\bp[- ]polari[sz]ed\b|\bvibrating in the plane\b/i, 'light vibrating in the plane'],
  [/\btwo beams?\b/i, 'two beams'],
  [
    /\brings? (?:is |are |stands? )?(?:behind|after)\b|\bbetween (?:the )?(?:converter|teleconverter|extender) and (?:the )?(?:camera|body)\b|\bbetween (?:the )?(?:camera|body) and (?:the )?(?:converter|teleconverter|extender)\b/i,
    'ring behind the converter',
  ],
  [/\binverse[- ]square\b/i, 'inverse square'],
  [/\babout (?:the |its )?(?:entrance )?pupil\b/i, 'turning about the pupil'],
];

const nothingElse = { halfFigure: 0, others: [], alsoNamed: [], isSaid: true } as const;

/** Sizes that go by a name. The names of smaller sensors mean different sizes from different makers: their millimetres are asked for. */
const namedSizes = /\bfull[- ]frame\b|\b35[- ]?mm (?:film|format|camera|sensor)\b/i;
const fullFrame: readonly StatedNumber[] = [
  { ...nothingElse, written: 'full frame', number: '36 mm', quantity: 'sensor-width', value: 36 },
  { ...nothingElse, written: 'full frame', number: '24 mm', quantity: 'sensor-height', value: 24 },
];
const unclearSizes =
  /\baps-?[ch]\b|\bmicro four thirds\b|\bfour thirds\b|\bmft\b|\bm43\b|\bcrop (?:camera|body|sensor)\b|\bone[- ]inch(?: sensor)?\b|\b1[- ]inch sensor\b/i;

/** 18-55 mm, 70-200/2.8, f/8 to f/11: what a lens or bellows can be set to, not what it is set to. */
const ranges =
  /(?<![\d.,:/\p{L}])\d{1,3}(?:[.,]\d)? ?[-–−] ?\d{1,3}(?:[.,]\d)?(?![\d.,]*\d)(?: ?mm\b)?(?:\/\d+(?:[.,]\d+)?(?:[-–−]\d+(?:[.,]\d+)?)?)?|(?<![\d\p{L}])[fF] ?\/ ?\d+(?:[.,]\d+)? ?(?:to|[-–−]) ?[fF] ?\/ ?\d+(?:[.,]\d+)?/gu;

/** 160/0.17: the tube length and the cover glass that an objective is made for, as its barrel has them (ISO 8578, from memory). */
const madeFor =
  /(?<![\d.,/:\p{L}])(?:1[67]0|2[01]0|∞|infinity) ?\/ ?(?:0[.,]17|0(?![\d.,])|[-–−](?! ?\d))|(?<![\d.,])1[67]0 ?mm tube length\b/giu;

/**
 * Reads what somebody says of his gear or of his answers: `50 mm, 36 mm ring, f/8`, or `m = 0.72; room 119 mm`, or a whole sentence.
 *
 * Numbers in any order, with units and the trade's writings (1:2, 2x, f/8, +3 dpt, 36 × 24 mm, 24 MP), named before or after by the vocabulary's
 * names and letters or by what people say. A number that nothing names is taken by its unit and marked as not said. What is understood and what
 * is not comes back; no text makes this throw.
 *
 * @param text at most 2000 characters are read
 * @param beside what else is spoken of, in another text: answers about a flash are about its distance
 */
export function readStatement(text: string, beside: readonly QuantityName[] = []): Statement {
  const all = inNumbers(tidied(text.slice(0, longestStatement).replace(/[\r\n\u2028\u2029]+/g, '; ')));
  const tidy = all.replace(namedSizes, ';').replace(madeFor, ' ').replace(ranges, ' ');
  const written = numbersIn(tidy);
  const isReversed = spokenOf[0]![0].test(tidy);
  const isOnLens = spokenOf[1]![0].test(tidy);
  const clauses = clausesOf(tidy, written);
  const openings = isReversed ? clauses.filter(({ beside }) => beside !== undefined) : [];
  const unread: Unread[] = [];
  const numbers: StatedNumber[] = namedSizes.test(all) ? [...fullFrame] : [];
  const pixels: Clause[] = [];
  for (const clause of clauses) {
    if (countsPixels(clause)) pixels.push(clause);
    else if (openings.length > 1 && openings.includes(clause)) continue;
    else addStated(clause, numbers, unread, isReversed, isOnLens, beside);
  }
  if (openings.length > 1) {
    for (const clause of openings) {
      const opening = openingOf(clause, numbers);
      if (opening) numbers.push(opening);
      else addStated(clause, numbers, unread, isReversed, isOnLens, beside);
    }
  }
  behindObjective(tidy, numbers);
  ownMagnification(tidy, written, numbers);
  for (const mark of all.match(madeFor) ?? []) {
    const because = `“${mark}” tells for which tube and cover glass an objective is made. Neither is used here.`;
    unread.push({ written: mark, because });
  }
  for (const range of all.replace(madeFor, ' ').match(ranges) ?? []) {
    unread.push({ written: range, because: `“${range}” is a range. Write the one number that counts.` });
  }
  const unclear = unclearSizes.exec(tidy)?.[0];
  if (unclear && !numbers.some(({ quantity }) => quantity === 'sensor-width' || quantity === 'crop-factor')) {
    unread.push({
      written: unclear,
      because: `“${unclear}” is not one size: makers differ. Write the sensor’s width and height, such as 23.5 × 15.6 mm.`,
      quantity: 'sensor-width',
    });
  }
  const pitches = pitchOf(pixels, numbers, unread);
  const questions = askedIn(tidy, written);
  for (const { value, written } of pitches.filter(({ value }) => !isPitch(value))) {
    const pitch = printQuantity('pixel-pitch', value);
    unread.push({ written, because: `“${written}” would be pixels ${pitch} wide: sensors have some of 0.5 to 30 µm.` });
  }
  return {
    numbers: [...numbers, ...pitches.filter(({ value }) => isPitch(value))],
    alsoAsked: Object.fromEntries(
      questions.filter(([, ...also]) => also.length > 0).map(([id, ...also]) => [id, also]),
    ),
    asked: [...new Set(questions.flatMap(([id]) => id ?? []))].filter(
      (id) =>
        ![...numbers, ...unread].some(({ quantity }) => quantity === id) &&
        // “Closest focus 0.15×” says how large it shows things there, and asks nothing.
        !(id === 'focus-distance' && numbers.some(({ quantity }) => quantity === 'focus-magnification')),
    ),
    setUps: spokenOf.filter(([words]) => words.test(tidy)).map(([, setUp]) => setUp),
    unread,
  };
}

/** The f-number of one of two lenses, where it stands beside that lens. */
function openingOf({ number, beside }: Clause, numbers: readonly StatedNumber[]): StatedNumber | undefined {
  const lens = numbers.find(({ quantity, number: text }) => lensOf.test(quantity) && text === beside?.text.trim());
  const quantity = lens && (lens.quantity.replace('focal-length', 'f-number') as QuantityName);
  const reading = readQuantity('f-number', number.text);
  if (!quantity || reading.kind !== 'value' || numbers.some((one) => one.quantity === quantity)) return undefined;
  const text = number.text.trim();
  const halfFigure = reading.value * number.rounding;
  return { ...nothingElse, written: text, number: text, quantity, value: reading.value, halfFigure };
}

const lensOf = /^(?:main|reversed)-lens\.focal-length$/;

function addStated(
  { number, before, after, isCarrier, isPrinted, isSet, hasOpening, beside, isUnderPixels, isDesign }: Clause,
  numbers: StatedNumber[],
  unread: Unread[],
  isReversed: boolean,
  isOnLens: boolean,
  alsoHad: readonly QuantityName[],
) {
  const written = [before.trim(), number.text.trim(), after.trim()].filter((part) => part !== '').join(' ');
  if (number.unit === '' && number.form === 'plain' && /^ ?steps\b/i.test(after)) {
    unread.push({ written, because: `“${written}” lead to one frame more. Write how many frames there are.` });
    return;
  }
  const named = number.names ? [number.names] : namedBy(number.text, before, after);
  const names =
    number.ofPair === 2
      ? named.flatMap((id) => otherSide[id] ?? [])
      : [...named, ...goneOn(before, after, isCarrier, numbers, isReversed)].filter(
          // No ring is “50 mm f/2”.
          (id) => !hasOpening || id !== 'extension',
        );
  // “100 mm away” is the light's distance where a light is spoken of.
  const had = numbers.map(({ quantity }) => quantity);
  const hasLight = speaksOfLight([...had, ...alsoHad]);
  if (/^\s*(?:away|off|from)\b/i.test(after) && (hasLight || had.includes('flash-power')))
    names.unshift('flash-distance');
  if (isUnderPixels && number.unit !== '' && number.ofPair !== 2) names.unshift('sensor-width');
  if (isDesign && had.includes('objective-magnification')) names.unshift('tube-focal-length');
  // A converter that is “40 mm long”, said right after it.
  if (/^\s*long\b/i.test(after) && numbers.at(-1)?.quantity === 'converter-factor') names.unshift('converter-length');
  // “Frames for 5 mm”, “steps of 0.1 mm for 5 mm”: so deep is the subject.
  const isThrough = /\b(?:for|through|over)\s*$/i.test(before);
  if (isThrough && (had.at(-1) === 'frame-step' || /\bframes \w+\s*$/i.test(before))) names.unshift('subject-depth');
  // A power is written with its sign: +2 and +4 on a lens. Two with their unit add up as well.
  const isPower = isOnLens && number.unit === '' && /^\+/.test(number.text.trim());
  if (isPower || (dioptres.test(number.unit) && number.ofPair === 0)) names.unshift('close-up-power');
  // “With 50 mm reversed”: what is turned round is a lens.
  const isSecond = number.unit === '' || numbers.some(({ quantity }) => quantity === 'focal-length');
  if (isReversed && isSecond && turnedWords.test(`${before} ${after}`)) names.push('focal-length');
  if (hasOpening && had.includes('focal-length')) names.push('focal-length');
  if (isPrinted && !names.includes('effective-f-number')) names.unshift('max-aperture');
  const marked = numbers.find(({ quantity }) => quantity === 'f-number');
  if (marked && number.form === 'f-number' && names.length === 0) {
    // No cone at the sensor is wider than what is set: “100 mm f/2.8” behind f/8 is what that lens has at most.
    const isWider = asPlainNumber({ text: number.text.slice(2) }) < marked.value;
    if (isWider && beside) names.push('max-aperture');
    else if (isWider || isSet) {
      unread.push(secondOfItsKind(written));
      return;
    }
  }
  const meant = [...names, ...byWriting(number, had, hasLight)];
  const readings = [...new Set(meant)].map((quantity) => ({ quantity, reading: readInWords(quantity, number) }));
  const fitting = readings.flatMap(({ quantity, reading }) =>
    reading.kind === 'value' ? [{ quantity, ...reading }] : [],
  );
  // A film may be a sensor or a soap film: what it cannot be is refused only where it can be nothing else that it is called.
  const refused = fitting.some(({ quantity }) => names.includes(quantity))
    ? undefined
    : readings.find(({ quantity, reading }) => names[0] === quantity && reading.kind === 'out-of-range')?.reading;
  const [first, ...rest] = refused ? [] : fitting;
  if (!first) {
    if (number.ofPair === 2) return;
    const because =
      refused && 'message' in refused
        ? refused.message
        : number.form === 'strange'
          ? `“${number.text}” ends in no unit that is known here. Lengths take mm, cm or m, and a number needs no more than its figures.`
          : `Of what is it? Write its name or its letter with it, such as m 0.72 or ring 36 mm.`;
    unread.push({ written, because, ...(refused && { quantity: names[0]! }) });
    return;
  }
  const isNamed = names.includes(first.quantity);
  const isSaid = isNamed || number.form === 'f-number' || rest.length === 0;
  const others = rest.map(({ quantity }) => quantity);
  const stated = {
    written,
    number: number.text.trim(),
    value: first.value,
    halfFigure: Math.abs(first.value) * number.rounding,
    others,
    alsoNamed: others.filter((id) => names.includes(id)),
    isSaid,
  };
  const same = numbers.findIndex(({ quantity }) => quantity === first.quantity);
  if (same < 0) {
    numbers.push({ ...stated, quantity: first.quantity });
  } else if (first.quantity === 'extension' || first.quantity === 'close-up-power') {
    const one = numbers[same]!;
    const value = one.value + first.value;
    const sum = printQuantity(first.quantity, value);
    numbers[same] = { ...one, written: `${one.written} + ${written}`, number: sum, value };
  } else if (first.quantity === 'focal-length' && isReversed) {
    const onLens = (part: string) => `${part}.focal-length` as QuantityName;
    const isThisTurned = turnedWords.test(`${before} ${after}`);
    numbers[same] = { ...numbers[same]!, quantity: onLens(isThisTurned ? 'main-lens' : 'reversed-lens') };
    numbers.push({ ...stated, quantity: onLens(isThisTurned ? 'reversed-lens' : 'main-lens') });
  } else if (first.quantity === 'f-number' && isNamed && numbers[same]!.value < first.value) {
    numbers[same] = { ...numbers[same]!, quantity: 'max-aperture' };
    numbers.push({ ...stated, quantity: first.quantity });
  } else {
    unread.push(secondOfItsKind(written));
  }
}

const secondOfItsKind = (written: string): Unread => ({
  written,
  because: `“${written}” is the second of its kind: only one can be used.`,
});

/** A lens at 1:2, and more on it: 1:2 is what the lens gives by itself. So is what stands with its closest focus. */
function ownMagnification(text: string, written: readonly WrittenNumber[], numbers: StatedNumber[]): void {
  const at = numbers.findIndex(({ quantity, isSaid }) => quantity === 'magnification' && !isSaid);
  const one = numbers[at];
  if (!one || numbers.some(({ quantity }) => quantity === 'focus-magnification')) return;
  const place = written.find((number) => number.text.trim() === one.number);
  const before = text.slice(0, place?.start ?? 0);
  const isOfLens =
    /\b(?:closest|nearest|minimum) focus(?:ing)?(?: at| of| to)?\s*$/i.test(before) ||
    (/(?:\b(?:lens|macro|prime)(?: (?:at|to|giving))?|(?:\d ?mm|\bfocuss?ed|\bset) (?:at|to))\s*$/i.test(before) &&
      numbers.some(({ quantity }) => addedToLens.includes(quantity)));
  if (isOfLens) numbers[at] = { ...one, quantity: 'focus-magnification', others: ['magnification'] };
}

/** The tube lens that stands behind an objective is a lens like another, unless it is the one that the objective is made for. */
function behindObjective(text: string, numbers: StatedNumber[]): void {
  const has = (id: QuantityName) => numbers.some(({ quantity }) => quantity === id);
  if (!has('objective-magnification') || has('focal-length') || isMadeFor.test(text)) return;
  const at = numbers.findIndex(({ quantity }) => quantity === 'tube-focal-length');
  const one = numbers[at];
  if (one) numbers[at] = { ...one, quantity: 'focal-length', others: ['tube-focal-length'] };
}

const isMadeFor = new RegExp(String.raw`${designedFor}\b|\bdesign\b`, 'i');

/** Reads a number for a quantity; a bare one that is too small for the unit on screens is in the unit of books: c 0.03 is 0.03 mm. */
function readInWords(quantity: QuantityName, { text, unit }: WrittenNumber): Reading {
  const reading = readQuantity(quantity, text);
  const isBareLength = unit === '' && quantityOf(quantity).base === 'mm' && reading.kind === 'out-of-range';
  const inBase = isBareLength ? readQuantity(quantity, `${text} mm`) : reading;
  return inBase.kind === 'value' ? inBase : reading;
}

/** What a number with no words of its own goes on with: one ring more, or the lens that the reversed one stands on. */
function goneOn(
  before: string,
  after: string,
  isCarrier: boolean,
  numbers: readonly StatedNumber[],
  isReversed: boolean,
): readonly QuantityName[] {
  const last = numbers.at(-1);
  const isOnReversed = isReversed && last?.quantity === 'focal-length' && turnedWords.test(last.written);
  if (isOnReversed && isCarrier) return ['focal-length'];
  if (!last || `${before}${after}`.replace(/\b(?:a|an|the|of|lens)\b/g, '').trim() !== '') return [];
  if (!isCarrier && last.quantity === 'extension' && last.isSaid) return ['extension'];
  if (!isCarrier && last.quantity === 'close-up-power') return ['close-up-power'];
  return isOnReversed ? ['focal-length'] : [];
}

const dioptres = /^(?:dpt|d|diopt)/i;

/** Of a pair of sides: what the second is where the first is a width. */
const otherSide: Readonly<Partial<Record<QuantityName, readonly QuantityName[]>>> = {
  'sensor-width': ['sensor-height'],
  'field-width': ['field-height'],
};

/** Megapixels, or pixels side by side: not a quantity of the vocabulary, but the pixel pitch follows from it. */
function countsPixels({ number, before, after }: Clause): boolean {
  if (namedBy(number.text, before, after).some((id) => quantityOf(id).base === 'px')) return false;
  if (/^ ?(?:per|\/) ?mm/i.test(after)) return false;
  return pixelUnits.test(number.unit) && (number.unit.startsWith('m') || asPlainNumber(number) >= 500);
}

/** mm; what lies beyond is a slip of the pen, or no sensor. */
const isPitch = (value: number): boolean => value >= 0.0005 && value <= 0.03;

/** Pixels alone have no size: where nothing is said of the sensor, what is taken is said; one that was named without its size has none. */
function pitchOf(
  clauses: readonly Clause[],
  numbers: readonly StatedNumber[],
  unread: readonly Unread[],
): readonly StatedNumber[] {
  const [first] = clauses;
  if (!first || numbers.some(({ quantity }) => quantity === 'pixel-pitch')) return [];
  const said = (id: QuantityName) => numbers.find(({ quantity }) => quantity === id)?.value;
  const crop = said('crop-factor');
  const saidWidth = said('sensor-width') ?? (crop === undefined ? undefined : usualWidth / crop);
  if (saidWidth === undefined && unread.some(({ quantity }) => quantity === 'sensor-width')) return [];
  const width = saidWidth ?? usualWidth;
  const height = said('sensor-height') ?? (2 / 3) * width;
  const count = asPlainNumber(first.number);
  const isTotal = first.number.unit.startsWith('m');
  const value = isTotal ? Math.sqrt((width * height) / (count * 1e6)) : width / count;
  const taken =
    saidWidth === undefined
      ? `the sensor is ${usualWidth} mm wide`
      : isTotal && said('sensor-height') === undefined
        ? 'the sensor is as three to two'
        : undefined;
  const { text } = first.number;
  const pitch = { ...nothingElse, written: text, number: text, quantity: 'pixel-pitch', value } as const;
  return [{ ...pitch, ...(taken !== undefined && { taken }) }];
}

/** mm, of the camera of the workbook’s examples. */
const usualWidth = 36;

const asking = new RegExp(`${separators.source}|[:.]`, 'giu');

/** What is named and stands alone, without a number: all that each phrase may mean, likeliest first. */
function askedIn(text: string, numbers: readonly WrittenNumber[]): readonly (readonly QuantityName[])[] {
  let left = text;
  for (const { start, end } of numbers) {
    // An n before a number is its letter, whichever quantity it turned out to be.
    const before = left.slice(0, start).replace(/\bn\s*[=:]?\s*$/, (letter) => ','.repeat(letter.length));
    left = before + ','.repeat(end - start) + left.slice(end);
  }
  return left.split(asking).map((part) => wholePhrase(part));
}
