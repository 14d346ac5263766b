/** What a lesson page may cost. One KB is 1000 bytes. */
export const limits = {
  /**
   * Gzip bytes of the JavaScript that a lesson's page loads by itself. Svelte and what all lessons share are 45 KB of them; a chain of
   * parts, with lenses as they focus, rays, and a camera drawn from the side, is 20 KB more. A little above the heaviest of each kind: what
   * makes one heavier shall say why: reversed has a lens that is turned by hand; the heaviest, a plan, says of each answer why it does not
   * hold. In three files, for the pages beside the lessons load only the first or two, it is 2.2 KB more than in one; formulas
   * that few share are in each lesson's own, 1 to 4 KB less than as files by themselves.
   */
  js: { plain: 67_200, chain: 83_450 },
  /**
   * Of what it can come to load besides: what keeps formulas in step once numbers move, 2.2 KB; what keeps the course on the device; problems where there is one, with three slips and more to each kind;
   * the projected view, with steps by name and keys that press what a figure has, and 0.15 KB so that no answer is passed over
   * while it is computed; and the renderer of pictures, which marks soft stripes and says until when there is nothing to see.
   */
  laterJs: { plain: 19_800, picture: 54_800 },
  /** Of what terms and letters mean besides, fetched when one is asked: it stood in every lesson's page, 2 to 3 KB each time. */
  meaningsJs: 9_000,
  /**
   * Of the reader's own kit besides, fetched where one is kept: what checks it, a converter's planes against its factor 0.4 KB of it, what chooses
   * the parts that the page's address named before they were here 0.2 KB, what tells parts of one name apart 0.8 KB, what a refusal
   * says with its unit and what is assumed behind a mount 0.15 KB, and lenses as they focus where the page has none.
   */
  kitJs: 20_250,
  /**
   * Of lessons that plan or list chains of parts besides, fetched when one is asked for: what reads chains from addresses and writes them, goes through
   * a kit and sets what it finds, 18 KB; and in the plan its later sheets, which no other page has apart from its first,
   * with a card that says which answer to change, and what limits a chain's light beside its iris; of a lens turned round, between what the part
   * behind its mount may lie.
   */
  chainsJs: 30_000,
  /** Of the bench: its figure. Lists, buttons and numbers, what hands do, what writes its address and what sets a second chain come once that stands. */
  benchJs: 60_000,
  /**
   * Of the other pages beside the lessons, by the name of each; the field card has chains, which plans share with it, and says what a lens of another
   * register needs, 0.9 KB; in kit and workshop what was said goes after some seconds, 0.1 KB.
   */
  pagesJs: { kit: 55_300, 'field-card': 86_150, check: 34_800, practice: 59_900, workshop: 49_000 },
  /** Of the page that measures photographs, before one is opened. */
  rulerJs: 60_000,
  /** Of all styles that a page names: those of its own figures, and of no other lesson's. The heaviest, a plan, has a chain from the side, pictures and a card. */
  css: 15_700,
  /** Of the page itself: the heaviest has a plot of every chain of a kit. */
  html: 38_200,
  /** Of all fonts, as they are: characters that nothing is set in are left out of each. */
  fonts: 28_800,
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
