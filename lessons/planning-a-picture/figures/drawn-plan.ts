import type { SideViewChain, SideViewHandle } from '#site/figures/side-view/side-view.ts';
import { bench, ofLens } from '../bench.svelte.ts';
import { drawnLens, type Drawn } from './drawn-chain.ts';
import { heightOf } from './light-at.ts';
import { plan } from './planned.svelte.ts';
import { isOpen, type Thing } from './questions.ts';

function drawnParts(): Drawn | undefined {
  if (plan.isOneLens) return drawnLens({ ...plan.asked, ...bench.named(...ofLens) }, plan.lensName);
  const { set } = plan;
  return set?.positions && { positions: set.positions, labels: set.labels };
}

/** What stands before the subject, with what of it is settled by now; undefined where nothing can be put together. */
export function drawnPlan(): SideViewChain | undefined {
  const drawn = drawnParts();
  if (!drawn) return undefined;
  const words = (name: 'working-distance' | 'extension' | 'flight-distance') => bench.words(name);
  const isSettled = (thing: Thing) => !isOpen(thing, plan.question);
  const room = bench.number('working-distance', undefined) ?? 0;
  // Where there is none, nothing between two marks is it.
  const hasExtension = !isSettled('chain') || bench.number('extension', undefined) !== undefined;
  const isTooNear = isSettled('room') && room > 0 && !plan.decided.hasRoom;
  const notice = drawn.notice ?? (isTooNear ? 'too near' : undefined);
  return {
    positions: drawn.positions,
    labels: isSettled('chain') ? drawn.labels : [],
    dimensions: [
      ...(room > 0
        ? [{ name: 'working-distance' as const, value: isSettled('room') ? words('working-distance') : '?' }]
        : []),
      ...(hasExtension ? [{ name: 'extension' as const, value: isSettled('chain') ? words('extension') : '?' }] : []),
    ],
    around: {
      name: 'flight-distance',
      radius: bench.inputs['flight-distance'],
      words: isSettled('room') ? [`wanted ${words('flight-distance')}`, words('flight-distance')] : [],
    },
    reachesUp: heightOf({ flashDistance: bench.inputs['flash-distance'], sourceSize: bench.inputs['source-size'] }),
    ...(notice && { notice }),
  };
}

/** What a hand takes hold of in it. */
export const dragged = (): readonly SideViewHandle[] => [
  {
    at: 'around',
    name: 'flight-distance',
    label: 'Circle about the subject: how near anything may come',
    value: bench.inputs['flight-distance'],
    range: bench.range('flight-distance'),
    onmove: (at, taken) => bench.toRung('flight-distance', taken.value + taken.at - at),
    onstep: (to) => bench.set('flight-distance', to),
  },
];
