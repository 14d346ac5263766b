/** What a lesson page may cost. One KB is 1000 bytes. */
export const limits = {
  /**
   * Gzip bytes of the JavaScript that a lesson's page loads by itself. Svelte and what all lessons share are 46 KB of them; a chain of
   * parts, with lenses as they focus, rays, and a camera drawn from the side, is 20 KB more. A little above the heaviest of each kind: what
   * makes one heavier shall say why: the heaviest, reversed, has a lens that is turned by hand. In two files, for the pages beside the lessons
   * load only the first, it is 1.4 KB more than in one.
   */
  js: { plain: 68_800, chain: 87_900 },
  /** Of what it can come to load besides: problems where there is one, the projected view, and the renderer of pictures. */
  laterJs: { plain: 14_700, picture: 49_100 },
  /** Of the reader's own kit besides, fetched where one is kept: what checks it, and lenses as they focus where the page has none. */
  kitJs: 17_900,
  /** Of the bench: a page with a chain in it, and every answer of the core besides; texts of formulas come when they are asked for. */
  benchJs: 96_000,
  /** Of the page that measures photographs, before one is opened. */
  rulerJs: 60_000,
  /** Of all styles that a page names: those of its own figures, and of no other lesson's. */
  css: 22_500,
  /** Bytes over the wire of a first visit, fonts and headers included. */
  firstVisit: 170_000,
  /** How many times the work on a movement of the same page with its scripts deaf a page may take, as a rule, slowed down. */
  work: 2,
  /** Milliseconds from a movement to its frame at full speed, 95 times in 100: where it is more, a frame was missed. */
  toFrame: 33,
  /** Milliseconds a page with a picture may be busy with one thing at full speed, where the picture comes in. */
  blocked: 16,
  /** Milliseconds from a movement to its sketch. */
  sketch: 50,
} as const;

export const verdict = (holds: boolean) => (holds ? 'holds' : '**exceeded**');
