import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rigPositions } from '#core/rig/positions.ts';
import { rigSpans } from '#core/rig/spans.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { buildableRigs } from '#tests/support/chains.ts';
import { isWithin, meet } from '../sheet/boxes.ts';
import { sideViewLayout, type SideViewPlan } from './layout.ts';
import type { SideViewChain } from './side-view.ts';

const names = {
  camera: 'camera',
  ring: 'ring',
  bellows: 'bellows',
  converter: 'converter',
  'converter by points': 'converter',
  lens: 'lens',
  'close-up lens': 'close-up lens',
  'tube lens': 'tube lens',
  objective: 'objective',
};

const chains = buildableRigs.map((rig): SideViewChain => {
  const positions = rigPositions(rig);
  const dimensions = Object.entries(rigSpans(positions)).map(([name, [from, to]]) => ({
    name: name as QuantityName,
    value: printQuantity(name as QuantityName, to - from),
  }));
  const field = positions.field ? `${printQuantity('field-width', positions.field.width)} wide` : 'far';
  return { positions, dimensions, field, labels: positions.parts.map(({ part }) => names[part.part]) };
});

/** A page's sheet on a wide and a narrow screen, in the hand, on the wall. */
const boxes = [
  { width: 695, height: 450, text: 14.5, small: 12.3 },
  { width: 603, height: 360, text: 14.5, small: 12.3 },
  { width: 390, height: 382, text: 12.5, small: 10.6 },
  { width: 844, height: 179, text: 14.5, small: 12.3 },
  { width: 1229, height: 557, text: 28.8, small: 28.8 },
  { width: 374, height: 631, text: 16, small: 16 },
  { width: 810, height: 296, text: 15.6, small: 15.6 },
];

const handle = {
  name: 'extension',
  label: 'x',
  value: 1,
  range: { least: 0, most: 400 },
  onmove() {},
  onstep() {},
} as const;

const plans = fc
  .record({
    box: fc.constantFrom(...boxes),
    chains: fc.oneof({ weight: 3, arbitrary: fc.tuple(chains) }, { weight: 1, arbitrary: fc.tuple(chains, chains) }),
    align: fc.constantFrom('sensor' as const, 'subject' as const),
    planes: fc.constantFrom('rig' as const, 'each' as const),
  })
  .map(({ box, chains: drawn, align, planes }): SideViewPlan => ({
    box,
    title: 'Rings on a lens, from above',
    chains: drawn,
    shown: { rays: ['construction', 'cone', 'chief', 'edge'], planes, foci: true, pupils: true },
    handles: [
      { ...handle, at: drawn[0]!.positions.parts.length - 1 },
      { ...handle, at: 'subject' },
    ],
    align,
  }));

describe('the layout of a side view', () => {
  it('never has words or marks on each other, nor outside the sheet', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { boxes: found } = sideViewLayout(plan);
        const sheet = { left: 0, top: 0, right: plan.box.width, bottom: plan.box.height };
        for (const [index, one] of found.entries()) {
          expect(Object.values(one.box).every(Number.isFinite), one.what).toBe(true);
          if (!isWithin(one.box, sheet)) expect.fail(`${one.what} leaves the sheet: ${JSON.stringify(one.box)}`);
          for (const other of found.slice(index + 1)) {
            const areGrips = one.what.startsWith('grip') && other.what.startsWith('grip');
            if (!areGrips && meet(one.box, other.box)) {
              expect.fail(`${one.what} on ${other.what}: ${JSON.stringify([one.box, other.box])}`);
            }
          }
        }
      }),
      { seed: 8, numRuns: 1000 },
    );
  });
});
