/**
 * The colours of the workbook, as data: a drawing office's film and ink by day, its blueprint by night.
 *
 * The quantities have six hues, not more: `tests/support/palette-search.ts` keeps six apart by 0.115 in OKLab for every kind of eye,
 * but seven by 0.097 and eight by 0.088, at best of twelve seeds. Line styles and letters do the rest. Its seed 2 gave the hues of the
 * day; those of the night come from an earlier search, because they also hold when the simulation is read more harshly.
 *
 * `palette.css` is what {@link paletteCss} writes; `palette.test.ts` holds the two together and the colours to their promises.
 */

/** One theme: surfaces, what is drawn on them, and the hues of the quantities. */
export interface Palette {
  /** The page. */
  readonly ground: string;
  /** The sheet a figure is drawn on; also form fields. */
  readonly paper: string;
  /** Text and visible outlines. */
  readonly ink: string;
  /** Secondary text: captions, units, ticks. */
  readonly quiet: string;
  /** Lines that carry meaning or mark a control: axes, field borders. 3:1. */
  readonly line: string;
  /** Hairlines that only order the page, grid lines; nothing is lost without them, so no contrast is promised. */
  readonly faint: string;
  /** The one accent: what can be pressed or dragged, focus, the current step. */
  readonly accent: string;
  /** Text on the accent. */
  readonly onAccent: string;
  /** Hatching of a zone: the sharp slab, the region of practical use. 3:1. */
  readonly hatch: string;
  /** Wash behind the symbol or dimension that is pointed at. */
  readonly lit: string;
  readonly caution: string;
  readonly good: string;
  /** Hues of the quantities, see marks.ts: blue, violet, plum, rust, ochre, green. */
  readonly marks: readonly [string, string, string, string, string, string];
}

/** By day: blue-grey drafting film, blue-black ink, a checker's red pencil. */
export const light: Palette = {
  ground: '#eef2f3',
  paper: '#fafcfb',
  ink: '#16242d',
  quiet: '#4a5a65',
  line: '#6a7983',
  faint: '#ccd6da',
  accent: '#c30f4c',
  onAccent: '#ffffff',
  hatch: '#72838d',
  lit: '#fdf0bd',
  caution: '#8a4a00',
  good: '#00664b',
  marks: ['#32329e', '#8654c1', '#63335c', '#8d1d05', '#a35b0d', '#027b71'],
};

/** By night or projected in a dim hall: Prussian blue, pale ink that does not glare. */
export const dark: Palette = {
  ground: '#101a21',
  paper: '#17242d',
  ink: '#e8eef0',
  quiet: '#a9b8c1',
  line: '#748791',
  faint: '#2c3d48',
  accent: '#ec84b7',
  onAccent: '#101a21',
  hatch: '#6f848f',
  lit: '#2e1f0b',
  caution: '#ffc069',
  good: '#5ddab0',
  marks: ['#5994f7', '#c4b6ff', '#b376a9', '#e37034', '#fab329', '#29d7a2'],
};

/** On paper from a printer: black on white; letters and line styles alone tell quantities apart. */
export const print: Palette = {
  ground: '#ffffff',
  paper: '#ffffff',
  ink: '#000000',
  quiet: '#333333',
  line: '#000000',
  faint: '#aaaaaa',
  accent: '#000000',
  onAccent: '#ffffff',
  hatch: '#555555',
  lit: '#ffffff',
  caution: '#000000',
  good: '#000000',
  marks: ['#000000', '#000000', '#000000', '#000000', '#000000', '#000000'],
};

/** Where readers have set colours of their own, drawings use those: system colours, quantities told apart as in print. */
const forced: Palette = {
  ground: 'Canvas',
  paper: 'Canvas',
  ink: 'CanvasText',
  quiet: 'CanvasText',
  line: 'CanvasText',
  faint: 'GrayText',
  accent: 'Highlight',
  onAccent: 'HighlightText',
  hatch: 'CanvasText',
  lit: 'Canvas',
  caution: 'CanvasText',
  good: 'CanvasText',
  marks: ['CanvasText', 'CanvasText', 'CanvasText', 'CanvasText', 'CanvasText', 'CanvasText'],
};

/** The custom properties of a palette: `--ink`, `--on-accent`, `--mark-1` to `--mark-6`. */
function declarations({ marks, ...named }: Palette, indent: string): string {
  const properties = [
    ...Object.entries(named).map(([key, hex]) => [key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), hex]),
    ...marks.map((hex, index) => [`mark-${index + 1}`, hex]),
  ];
  return properties.map(([name, hex]) => `${indent}--${name}: ${hex};\n`).join('');
}

/** The text of `palette.css`: the system's theme, unless `data-theme` on any element says otherwise; the reader's own colours and print win. */
export function paletteCss(): string {
  return `/* Written by palette.ts; \`npx vitest run site/styles -u\` rewrites it. */
:root,
[data-theme='light'] {
  color-scheme: light;
${declarations(light, '  ')}}

@media (prefers-color-scheme: dark) {
  :root:not([data-theme]) {
    color-scheme: dark;
${declarations(dark, '    ')}  }
}

[data-theme='dark'] {
  color-scheme: dark;
${declarations(dark, '  ')}}

@media (forced-colors: active) {
  :root:root,
  [data-theme][data-theme] {
${declarations(forced, '    ')}  }
}

@media print {
  :root:root,
  [data-theme][data-theme] {
    color-scheme: light;
${declarations(print, '    ')}  }
}
`;
}
