/** Sizes of a card, mm. */
export const sizes = {
  a6: { label: 'A6', width: 105, height: 148 },
  a5: { label: 'A5', width: 148, height: 210 },
  a4: { label: 'A4', width: 210, height: 297 },
  letter: { label: 'Letter', width: 215.9, height: 279.4 },
} as const;

export type Size = keyof typeof sizes;

/** What it is printed on: paper of its own size, a larger sheet with marks to cut by, or all of a sheet, cut into quarters or halves. */
export const papers = {
  a4: { label: 'A4, with a margin' },
  letter: { label: 'Letter, with a margin' },
  'a4-full': { label: 'A4, all of it' },
  'letter-full': { label: 'Letter, all of it' },
  same: { label: 'paper of its own size' },
} as const;

export type Paper = keyof typeof papers;

/** Width and height, mm. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** How a card stands on its sheet. */
export interface Place {
  /** Of the card: on all of a Letter sheet its quarter, or half, which is nearly as large as the size that was asked for. */
  readonly card: Extent;
  readonly columns: number;
  readonly rows: number;
  /** The sheet is full, and empty places are filled with the same cards once more. */
  readonly isFull: boolean;
  /** There are marks to cut by. */
  readonly isCut: boolean;
}

/** How cards of a size stand on a paper. */
export function placeOn(size: Size, paper: Paper): Place {
  const card = sizes[size];
  const alone = { card, columns: 1, rows: 1, isFull: false, isCut: false };
  if ((size !== 'a6' && size !== 'a5') || paper === 'same') return alone;
  const isSmall = size === 'a6';
  if (paper === 'a4' || paper === 'letter') return { ...alone, columns: isSmall ? 2 : 1, isCut: true };
  const full = { columns: 2, rows: isSmall ? 2 : 1, isFull: true, isCut: true };
  if (paper === 'a4-full') return { card, ...full };
  const { width, height } = sizes.letter;
  return { card: isSmall ? { width: width / 2, height: height / 2 } : { width: height / 2, height: width }, ...full };
}

/** Millimetres of a point. */
const point = 25.4 / 72;

/** Type is never smaller: what an arm's length away is still read at dusk. Common practice for printed cards, pt. */
export const smallestType = 7;
const largestType = 13;
const typeStep = 0.25;

/** Edge that stays white, mm. */
export const padding = 4.5;

/** In em of the type. */
export const em = {
  /** From one line to the next. */
  line: 1.22,
  /** Of a row of numbers, with the rule above it. */
  row: 1.3,
  /** Between two blocks. */
  gap: 0.5,
  /** What stands before the columns. */
  label: 6,
  /** A column: six figures, such as 1/1600. */
  column: 3.75,
  /** A character of running text, on average: measured on this workbook's face, with a margin. */
  character: 0.5,
} as const;

/** What has to find room. */
export interface Content {
  /** Length of each block's two lines of heading, in characters. */
  readonly headings: readonly (readonly number[])[];
  /** Lines below the heading of each block: the row of f-numbers, and one for each thing said. */
  readonly rows: number;
  /** F-numbers of the widest block. */
  readonly columns: number;
  /** Length of the card's own heading and of what explains it, in characters. */
  readonly notes: readonly number[];
  /** Of each block what it belongs to, where each of those is to have a card of its own. */
  readonly apart?: readonly number[];
}

/** How a card is laid out: its type, and which blocks stand on which card; or why it cannot be. */
export type Layout =
  | { readonly kind: 'cards'; readonly type: number; readonly cards: readonly (readonly number[])[] }
  | { readonly kind: 'too wide'; readonly columns: number };

/**
 * The largest type with which all blocks find room on as few cards as there have to be; no smaller than {@link smallestType}.
 *
 * @returns places of blocks by card; *too wide* with how many columns the size has room for
 */
export function layoutOf(card: Extent, content: Content): Layout {
  const { width } = card;
  const room = (type: number) => (width - 2 * padding) / (type * point);
  const most = Math.floor((room(smallestType) - em.label) / em.column);
  if (content.columns > most) return { kind: 'too wide', columns: most };
  const fewest = cardsAt(smallestType, card, content).length;
  let type = smallestType;
  while (type + typeStep <= largestType) {
    const larger = type + typeStep;
    if (room(larger) < em.label + content.columns * em.column) break;
    if (cardsAt(larger, card, content).length > fewest) break;
    type = larger;
  }
  return { kind: 'cards', type, cards: cardsAt(type, card, content) };
}

/** Fills card after card. A block that is taller than a card by itself stands on one of its own. */
function cardsAt(
  type: number,
  { width, height }: Extent,
  { headings, rows, notes, apart }: Content,
): readonly (readonly number[])[] {
  const inEm = (length: number) => (length - 2 * padding) / (type * point);
  const lines = (characters: number) => Math.max(1, Math.ceil((characters * em.character) / inEm(width)));
  const sum = (lengths: readonly number[]) => lengths.reduce((total, one) => total + lines(one), 0);
  const room = inEm(height) - sum(notes) * em.line - em.gap;
  const cards: number[][] = [];
  let left = -1;
  headings.forEach((heading, at) => {
    const block = sum(heading) * em.line + rows * em.row + em.gap;
    if (left < block || (apart && at > 0 && apart[at] !== apart[at - 1])) {
      cards.push([]);
      left = room;
    }
    cards.at(-1)!.push(at);
    left -= block;
  });
  return cards;
}

/** What stands on each sheet: card after card; where sheets are full, the same cards once more in the places that are left. */
export function sheetsOf<Card>(cards: readonly Card[], { columns, rows, isFull }: Place): readonly (readonly Card[])[] {
  const each = columns * rows;
  return Array.from({ length: Math.ceil(cards.length / each) }, (_, sheet) => {
    const here = cards.slice(sheet * each, (sheet + 1) * each);
    return isFull ? Array.from({ length: each }, (_, at) => here[at % here.length]!) : here;
  });
}
