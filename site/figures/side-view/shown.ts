import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain } from './side-view.ts';

/** What is drawn besides bodies, sensor, sharp plane and axis. */
export interface SideViewShown {
  readonly rays?: readonly SideViewRays[];
  /** H and H' of the rig as one lens, or of everything in it that bends light. */
  readonly planes?: 'rig' | 'each';
  /** F and F' of the same. */
  readonly foci?: boolean;
  /** The limiting stop as subject and sensor see it. */
  readonly pupils?: boolean;
  /** What draws circles about subjects and what a lens hides from them, `around-subject.ts`; and glass, `glass-on-sheet.ts`: from figures that have such, so that no other loads it. */
  readonly about?: AboutSubject;
  readonly glass?: GlassOnSheet;
}

export type SideViewRays =
  /** the marginal rays, and the cone between them */
  | 'cone'
  /** through the middle of the stop to the end of the picture */
  | 'chief'
  /** what `ruled-rays.ts` and the like draw, which other figures do not load */
  | DrawnRays;

/** Draws rays of a chain. */
export type DrawnRays = (chain: SideViewChain, shown: SideViewShown, place: SheetPlace) => readonly Stroke[];

/** What `around-subject.ts` draws. */
export interface AboutSubject {
  /** The circle about a chain's subject. */
  readonly circleAround: (
    chain: SideViewChain,
    place: SheetPlace,
  ) => { readonly strokes: readonly Stroke[]; readonly lettered: readonly Lettered[] };
  /** Where a hand may take hold of it, the best place first. */
  readonly spotsAround: (
    chain: SideViewChain,
    place: SheetPlace,
    reach: number,
  ) => readonly { readonly x: number; readonly y: number }[];
  /** What the lens hides from the subject. */
  readonly hiddenSky: (chain: SideViewChain, place: SheetPlace) => readonly Stroke[];
}

/** What `glass-on-sheet.ts` draws. */
export interface GlassOnSheet {
  readonly surfaces: (chain: SideViewChain, place: SheetPlace) => readonly Stroke[];
  readonly rays: (chain: SideViewChain, place: SheetPlace) => readonly Stroke[];
}
