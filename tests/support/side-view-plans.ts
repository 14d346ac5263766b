import fc from 'fast-check';
import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { rigPositions } from '#core/rig/positions.ts';
import { rigSpans, type AxialSpan } from '#core/rig/spans.ts';
import { aboutSubject } from '#site/figures/side-view/around-subject.ts';
import { farRays, ruledRays } from '#site/figures/side-view/ruled-rays.ts';
import type { SideViewPlan } from '#site/figures/side-view/layout.ts';
import type { SideViewChain } from '#site/figures/side-view/side-view.ts';
import { buildableRigs } from './chains.ts';

/** Any chain, named and dimensioned as far as it can be. */
const drawnChains = buildableRigs.map((rig): SideViewChain => {
  const positions = rigPositions(rig);
  const spans = Object.entries(rigSpans(positions)) as [QuantityName, AxialSpan][];
  const dimensions = spans.map(([name, [from, to]]) => ({ name, value: printQuantity(name, to - from) }));
  return {
    positions,
    dimensions,
    ...(positions.field && { field: `${printQuantity('field-width', positions.field.width)} wide` }),
    labels: positions.parts.map(({ part }) => part.part),
  };
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
  value: 24,
  range: { least: 0, most: 400 },
  onmove: () => undefined,
  onstep: () => undefined,
} as const;

/** Side views of one chain, two or three, with all that there is to be shown, at every size. */
export const sideViewPlans: fc.Arbitrary<SideViewPlan> = fc
  .record({
    box: fc.constantFrom(...boxes),
    chains: fc.oneof(
      { weight: 3, arbitrary: fc.tuple(drawnChains) },
      { weight: 1, arbitrary: fc.tuple(drawnChains, drawnChains) },
      { weight: 1, arbitrary: fc.tuple(drawnChains, drawnChains, drawnChains) },
    ),
    align: fc.constantFrom('sensor' as const, 'subject' as const),
    planes: fc.constantFrom('rig' as const, 'each' as const),
    onPaper: fc.boolean(),
    radius: fc.option(fc.constantFrom(8, 30, 120, 300, 2000), { nil: undefined }),
  })
  .map(({ planes, box, onPaper, radius, chains, ...plan }) => ({
    ...plan,
    chains:
      radius === undefined
        ? chains
        : chains.map((chain) => ({
            ...chain,
            hidesSky: true,
            around: {
              name: 'flight-distance' as const,
              radius,
              words: [`flight distance ${radius} mm`, `${radius} mm`],
            },
          })),
    box: { ...box, onPaper },
    title: 'Rings on a lens, from above',
    shown: { rays: [ruledRays, 'cone', 'chief', farRays], planes, foci: true, pupils: true, about: aboutSubject },
    handles: [
      { ...handle, at: chains[0].positions.parts.length - 1, label: 'Lens: move it' },
      { ...handle, at: 'subject', label: 'Subject: move it' },
      ...(radius === undefined ? [] : [{ ...handle, at: 'around' as const, label: 'Circle: draw it wider' }]),
    ],
  }));
