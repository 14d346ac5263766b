import { getContext, type Component } from 'svelte';
import type { OwnSheet, SheetPlan } from './workbench.ts';

/** What draws a lesson's figure where it is not in the lesson's own page: in a demonstration of several lessons, on a handout. */
export interface Host {
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- one for the benches of all lessons, as each figure's props are its own
  readonly Bench: Component<any>;
  /** Told of the figure when it is there: as whatever {@link Bench} makes of it. */
  readonly took: (figure: never) => void;
}

/** What a figure brings to its host. */
export interface HostedFigure {
  readonly bench: unknown;
  readonly sheets: readonly (SheetPlan | OwnSheet)[];
}

const key = 'drawn-by';

/** The context in which a figure is mounted for *host*. */
export const drawnBy = (host: Host): Map<string, Host> => new Map([[key, host]]);

/** The host that the figure is mounted for; undefined in a lesson's own page. */
export const hostOfFigure = (): Host | undefined => getContext<Host | undefined>(key);
