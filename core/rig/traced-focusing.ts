import type { FocusState, Lens } from './lens.ts';

/** How lenses are focused that are traced surface by surface. */
export interface TracedFocusing {
  /** The largest *m₀* that the lens reaches by itself; 0 where it has no prescription. */
  readonly closest: (lens: Lens) => number;
  /** The lens at *m₀*. Throws FaultyPrescription where it has no prescription, or one that no lens can have; OutOfRange beyond its settings. */
  readonly stateAt: (lens: Lens, focusMagnification: number) => FocusState;
  /** From the last surface to the focal point behind it at *m₀*, mm. Throws as `stateAt`. */
  readonly backFocus: (lens: Lens, focusMagnification: number) => number;
}

let brought: TracedFocusing | undefined;

/** Said by `prescription-in-use.ts`, which traces: whoever makes a lens of surfaces has loaded it, and who has none does without its 4 KB. */
export function bringTracing(tracing: TracedFocusing): void {
  brought = tracing;
}

/** Throws where nothing that traces was loaded. */
export function tracing(): TracedFocusing {
  if (!brought)
    throw new Error('A lens is focused by its prescription: import prescription-in-use.ts, which traces it.');
  return brought;
}
