/** Numbers of things, in words. One is left out: “one frame” is a set-up, and one of anything needs no number. */
const counts = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const count = counts.join('|');
/** What a word of them counts; undefined of any other. */
function countIn(word: string): number | undefined {
  const at = counts.indexOf(word.toLowerCase());
  return at < 0 ? undefined : at + 2;
}
const amount = String.raw`\d+(?:[.,]\d+)?`;
const power = String.raw`\+?${amount} ?-?(?:dpt|d|dioptres?|diopters?)`;
const rings = '(?:extension )?(?:rings|tubes)';
const closeUp = 'close[- ]?up (?:lenses|filters)';
/** No part of a larger number, as 5 is in 1.5 or f/5. */
const alone = String.raw`(?<![\d.,:/\p{L}])`;

/** Several of one thing, by how many and by what each is; and each as it is written so that they add up. */
const several: readonly (readonly [words: RegExp, each: string])[] = [
  [String.raw`(?<many>${count}|2) (?<each>${power})(?![\p{L}\d])`, 'close-up lens'],
  [
    String.raw`(?<many>\d) ?[x×] ?(?<each>(?!\+)${power}(?![\p{L}\d])|${power}(?= (?:close[- ]?up )?(?:lenses|filters)))`,
    'close-up lens',
  ],
  [String.raw`(?<many>${count}|\d ?[x×]|2) ?(?<each>\+${amount})(?= ${closeUp})`, 'close-up lens'],
  [
    String.raw`(?<many>${count}|\d) ${rings} (?:of|with|at) (?<each>${amount} ?mm)(?![\p{L}\d]| (?:and|\+) \d+ ?mm(?! lens))(?: each)?`,
    'of rings',
  ],
  [String.raw`(?<many>${count}|\d ?[x×]) ?(?<each>${amount} ?-?mm)(?= ${rings}\b)`, 'of rings'],
].map(([words, each]) => [new RegExp(alone + words!, 'giu'), each!] as const);

/** Shares of the picture in words: what fills it so is so wide. */
const frame = String.raw`(?:of )?(?:the )?(?:frame|picture|image|sensor)(?:['’]s)?(?: width)?\b`;
const filled: readonly (readonly [words: RegExp, size: string])[] = [
  ['(?:all|the whole)? ?', '100'],
  ['(?:an? |one )?half ', '50'],
  ['(?:an? |one )?third ', '33.333'],
  ['(?:an? |one )?quarter ', '25'],
  ['two[- ]thirds ', '66.667'],
  ['three[- ]quarters ', '75'],
  [String.raw`(${amount}) ?(?:%|per ?cent) `, '$1'],
].map(([share, percent]) => [
  new RegExp(String.raw`\b(?:fills?|filling|takes? up|taking up) ${share}${frame}`, 'gi'),
  `wide ; frame fill ${percent} % ;`,
]);

/** Magnifications and the like in words, and how sure a number is, which is not asked: common practice. */
const sizesInWords: readonly (readonly [words: RegExp, size: string])[] = [
  [/\btwo[- ]thirds (?:of )?life[- ]size\b/gi, 'magnification 2/3'],
  [/\b(?:an? |one )?third[- ](?:of )?life[- ]size\b/gi, 'magnification 1/3'],
  [/\bthree[- ]quarters (?:of )?life[- ]size\b/gi, 'magnification 3/4'],
  [/\b(?:an? |one )?tenth[- ](?:of )?life[- ]size\b/gi, 'magnification 1/10'],
  [
    /(?<=\d ?[mc]m )(?:ant|bee|beetle|blossom|bug|butterfly|coin|crystal|flower|fly|insect|leaf|moth|mushroom|seed|snail|spider|stamp)\b/gi,
    'wide subject',
  ],
  [/\bhalf[- ]life[- ]size\b/gi, 'magnification 1:2'],
  [/\bquarter[- ]life[- ]size\b/gi, 'magnification 1:4'],
  [/\b(?:twice|double)[- ]life[- ]size\b/gi, 'magnification 2:1'],
  [/\bthree times life[- ]size\b/gi, 'magnification 3:1'],
  [/(?<!times )(?<![\d:×x] ?)\blife[- ]size\b(?! ?[=:]? ?\d)/gi, 'magnification 1:1'],
  [
    /\b(?:(?:(?:set|focuse?d?|focussed) )?(?:to|at|on) )?infinity\b(?![- ](?:objective|lens|optics|corrected))/gi,
    '; own magnification 0 ;',
  ],
  [/\b(?:gives?|giving|makes|making) (?:an? )?(?=(?:effective|working) (?!dist))/gi, '; '],
  [/(?<=\d )steps (?:of|at) (?=\d)/gi, 'steps; step of '],
  [
    /(?<=\d )(frames|pictures|shots|exposures) (?:at|every|of) (?=(?:0?[.,]\d+ ?mm|\d+(?:[.,]\d+)? ?(?:[µμ]m|um|microns?))(?!\p{L}))/giu,
    '$1; step of ',
  ],
  [/\bwide open(?: at| is)? (?:f ?\/? ?)?(\d+(?:[.,]\d+)?)(?![\d.,]*\d| ?mm)/gi, '; wide open f/$1 ;'],
  [
    /\b(?:works? (?:at|as|like)|acts? (?:as|like)|amounts to|becomes|counts as) (?:an? )?(?=[fƒ] ?\/? ?\d)/gi,
    'effective ',
  ],
  [/\b(?:coupled|(?:front|face) to (?:front|face)) (?:to|with|on(?:to)?)\b/gi, 'reversed on'],
  [/\b3[- ]?d[- ]?print(?:ed)?\b/gi, ' '],
  [/(?:±|\+ ?\/? ?[-−]) ?\d+(?:[.,]\d+)?(?: ?(?:mm|cm|µm|um|m|%|°|x|×)(?!\p{L}))?/giu, ' '],
  ...filled,
  [/\bfull[- ]power\b/gi, '; flash power 1/1 ;'],
  [/\bhalf[- ]power\b/gi, '; flash power 1/2 ;'],
  [/\bquarter[- ]power\b/gi, '; flash power 1/4 ;'],
];

/** +1 + 2 dpt: powers that are added up. */
const powersAdded = new RegExp(
  String.raw`${alone}\+?(?<sum>${amount}(?: ?\+ ?${amount})+) ?-?(?<unit>dpt|dioptres?|diopters?)(?!\p{L})`,
  'giu',
);

/** Numbers of what is counted or measured: “twelve frames”, “two stops”. */
const counted = new RegExp(
  String.raw`\b(one(?= and a half)|${count})( and a half)?[- ](?=(?:frames|shots|pictures|exposures|stops|times|mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?|inch(?:es)?|seconds?)\b)`,
  'gi',
);

/** Units that are written out, behind a number. */
const unitsInWords: readonly (readonly [words: RegExp, unit: string])[] = [
  [/(?<=\d ?)(?:px|pixels?) ?(?:per|a|\/) ?(?:mm|millimet(?:re|er)s?)\b/gi, ' px/mm'],
  [/(?<=\d ?)(?:lp|line[- ]pairs?) ?(?:per|a|\/) ?(?:mm|millimet(?:re|er)s?)\b/gi, ' lp/mm'],
];

/** “50 mm + 36 mm rings”: a lens, and what is put on it. */
const lensAndRings =
  /(?<![\d.,:/\p{L}] ?)(?<first>\d+(?:[.,]\d+)?)(?<unit> ?mm)? ?\+ ?(?=(?<second>\d+(?:[.,]\d+)?)(?<rest>(?: ?mm)?(?: ?\+ ?\d+(?:[.,]\d+)?(?: ?mm)?)*(?: \p{L}+(?: \p{L}+)?)?))/u;
/** mm; the longest ring of the sets that are sold, common practice. */
const longestRing = 36;
const ringWords = /\brings?\b|\btubes?\b|\bextension\b|\bbellows\b/i;
/** A lens that is spoken of elsewhere: what is added up is put on it. */
const namesLens = /\blens\b|\bfocal\b|\bf ?=|\bon(?:to)? (?:an? |my |the )?\d/i;

/** Sizes that are said in words, as numbers; things that are counted, one by one; what is a lens in a sum, apart from it. */
export function inNumbers(text: string): string {
  const apart = text.replace(/\b(iso|gn|na|ev|lv)(?=\d)/gi, '$1 ');
  const singly = several.reduce(
    (all, [words, each]) =>
      all.replace(words, (...found) => {
        const { many, each: one } = found.at(-1) as Record<'many' | 'each', string>;
        const times = countIn(many) ?? Number.parseInt(many, 10);
        return Array<string>(times)
          .fill(`${one.replace('-', ' ')} ${each}`)
          .join(' and ');
      }),
    apart,
  );
  const powers = singly.replace(powersAdded, (_, sum: string, unit: string) =>
    sum
      .split('+')
      .map((one) => `${one.trim()} ${unit}`)
      .join(' and '),
  );
  const inUnits = unitsInWords.reduce((all, [words, unit]) => all.replace(words, unit), powers);
  const asDigits = inUnits.replace(counted, (_, word: string, half?: string) => {
    // The one word that is no count is “one”, of one and a half.
    return `${(countIn(word) ?? 1) + (half ? 0.5 : 0)} `;
  });
  return sizesInWords
    .reduce((all, [words, size]) => all.replace(words, ` ${size} `), withLensApart(asDigits))
    .replace(/ +/g, ' ')
    .trim();
}

/** A sum that starts with a lens, with that lens before it: it is longer than any ring, or it is not shorter than what follows and nothing says that it is one. */
function withLensApart(text: string): string {
  const match = lensAndRings.exec(text);
  if (!match || namesLens.test(text)) return text;
  const { first = '', unit, second = '', rest = '' } = match.groups!;
  if (/\p{L}[^,;]*$/u.test(text.slice(0, match.index))) return text;
  const [one, next] = [first, second].map((number) => Number(number.replace(',', '.')));
  const isRings = ringWords.test(rest);
  const isLens = isRings ? unit !== undefined && one! > longestRing : one! > longestRing || one! >= next!;
  const end = match.index + match[0].length;
  return isLens ? `${text.slice(0, match.index)}${first}${unit ?? ' mm'} with ${text.slice(end)}` : text;
}
