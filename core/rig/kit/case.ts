import type { KitCamera, KitLens, KitSubject } from './kit.ts';
import type { Walk } from './walk.ts';

/** Rounding: what misses a limit by less meets it. */
export const rounding = 1e-9;

/** How a chain would be set for the subject, and what that is worth; overwritten by the next. */
export interface Judgement {
  verdict: number;
  /** *m₀* of the main lens. */
  focusMagnification: number;
  /** *N* of the main lens. */
  fNumber: number;
  /** *N_w* with that. */
  effectiveFNumber: number;
  /** *m* there; 0 where nothing is sharp. */
  magnification: number;
  /** Stops of exposure in hand, less the stops lost by not filling the frame; below 0 where there is too little light. 0 where something else stands against it. */
  merit: number;
  /** *w*, mm; 0 or below where the sharp plane is inside, 0 where nothing is sharp. */
  room: number;
}

/** A chain and what it is judged for: one for all chains that share camera and front; the numbers of its walk are overwritten. */
export interface Case {
  readonly walk: Walk;
  readonly camera: KitCamera;
  readonly lens: KitLens;
  /** Whether the iris of the main lens can be reached through the back in use. */
  stopsDown: boolean;
  readonly subject: KitSubject;
  /** The magnification that fills the frame. */
  readonly filling: number;
}
