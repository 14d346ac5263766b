import { asOnPaper } from './as-on-paper.ts';

/** Sizes of text on paper, points: the largest with which all finds room is taken. */
const sizes = [10.5, 10, 9.6, 9.2, 8.8, 8.4, 8, 7.6, 7.2];

/** Lines that cannot be broken, and tables: what is wider than its column is set smaller. */
const unbreakable = '.formula-lines, .katex-display, .scroll';

function narrowWhatIsWide(root: HTMLElement): void {
  const lines = [...root.querySelectorAll<HTMLElement>(unbreakable)];
  const shares = lines.map(({ clientWidth, scrollWidth }) => clientWidth / scrollWidth);
  for (const [index, element] of lines.entries())
    if (shares[index]! < 1) element.style.zoom = String(Math.floor(shares[index]! * 100) / 100);
}

/** Chooses the text's size so that what is printed of the page takes at most so many pages of A4 or Letter. */
export function fitOn(pages: number): void {
  const root = document.documentElement;
  const main = document.querySelector('main')!;
  asOnPaper(() => {
    // Laid out in columns as large as a page; see paper.css.
    root.dataset['measuring'] = '';
    const set = (size: number) => root.style.setProperty('--paper-text', `${size}pt`);
    // Smaller text takes no more room: the largest that fits is found by halving.
    let [fitting, tooLarge] = [sizes.length - 1, -1];
    while (fitting - tooLarge > 1) {
      const middle = (fitting + tooLarge) >> 1;
      set(sizes[middle]!);
      if (Math.round(main.scrollWidth / main.clientWidth) <= pages) fitting = middle;
      else tooLarge = middle;
    }
    set(sizes[fitting]!);
    // What is narrowed becomes lower, too: it still fits.
    narrowWhatIsWide(main);
    delete root.dataset['measuring'];
  });
}

/** Puts the page back as it is on a screen. */
export function unfit(): void {
  document.documentElement.style.removeProperty('--paper-text');
  for (const element of document.querySelectorAll<HTMLElement>(unbreakable)) element.style.zoom = '';
}
