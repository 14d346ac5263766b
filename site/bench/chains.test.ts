import fc from 'fast-check';
import { render } from 'svelte/server';
import { beforeAll, describe, expect, it } from 'vitest';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { everyEquation } from '#site/build/equations.ts';
import { meet, isWithin } from '#site/figures/sheet/boxes.ts';
import { sideViewLayout } from '#site/figures/side-view/layout.ts';
import { readChain } from '#site/chain/chain-text.ts';
import { readOwn } from '#site/chain/own-in-text.ts';
import { closeTo } from '#tests/support/close-to.ts';
import {
  benchChains,
  chainsOfKind,
  kindsOfChains,
  type BothWays,
  type KindOfChain,
} from '#tests/support/bench-chains.ts';
import AnswersView from './Answers.svelte';
import { builtChain, groups, type AnsweredName, type BuiltChain } from './answers.ts';
import { usualConditions } from './conditions.ts';
import { drawnChain, shownOf } from './drawn.ts';
import { benchGlass, glassOf } from './glass.ts';
import { readState as readCard } from '#site/field-card/state.ts';
import { readState } from './read-state.ts';
import { placedChain } from './placed.ts';
import { queryForCard, writeState } from './state-in-address.ts';
import { workingOf } from './working.ts';

const names = Object.values(groups).flat() as readonly AnsweredName[];

function built({ chain }: BothWays): BuiltChain {
  const found = builtChain(chain, usualConditions);
  if (found.kind === 'impossible') throw new Error(found.why);
  return found;
}

/** What the core says of the chain, computed straight from the engine's parts, and what the page says of it. */
function expectAlike(both: BothWays): BuiltChain {
  const solved = solveRig(assembleRig(both.parts));
  const found = built(both);
  const { answers, circle } = found;
  expect(found.positions.solved).toEqual(solved);
  if (solved.sharpPlane === 'nowhere') {
    expect(answers).toEqual({});
    return found;
  }
  expect(answers['effective-f-number']).toBe(solved.effectiveFNumber);
  const { wavelength } = usualConditions;
  // No cone in air is wider than f/0.5: what waves make of one is not said.
  expect(answers['airy-diameter']).toBe(
    solved.effectiveFNumber < 0.5 ? undefined : airyDiameter({ wavelength, effectiveFNumber: solved.effectiveFNumber }),
  );
  if (solved.sharpPlane === 'at infinity') {
    expect(answers.magnification).toBeUndefined();
    return found;
  }
  expect(answers.magnification).toBe(solved.magnification);
  expect(answers['working-distance']).toBe(solved.workingDistance);
  expect(answers['focus-distance']).toBe(solved.focusDistance);
  expect(answers['field-width']).toBe(solved.fieldWidth);
  expect(answers['depth-of-field']).toBe(depthOfFieldOfCone({ ...solved, circleOfConfusion: circle }));
  // Two ways to one number.
  expect(answers['subject-distance']).toEqual(
    closeTo(answers['focal-length']! * (1 + (solved.upright ? -1 : 1) / solved.magnification), {
      relative: 1e-6,
      because: 'a subject distance may be what is left of much larger numbers',
    }),
  );
  return found;
}

/** The page's sheet on a desk, in the hand, on the wall. */
const boxes = [
  { width: 740, height: 640, text: 14.5, small: 12.3 },
  { width: 354, height: 318, text: 12.5, small: 10.6 },
  { width: 1229, height: 510, text: 28.8, small: 28.8 },
];

describe('a thousand chains by chance', () => {
  it('have the answers that the core has, and no number that is none', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(benchChains, (both) => {
        const { answers, positions } = expectAlike(both);
        kinds.add(positions.solved.sharpPlane);
        for (const value of Object.values(answers)) expect(value).not.toBeNaN();
      }),
      { seed: 11, numRuns: 1000 },
    );
    expect([...kinds].sort()).toEqual(['at infinity', 'in front', 'inside', 'nowhere']);
  });

  it('are drawn with no word on another, nor beside the sheet', () => {
    fc.assert(
      fc.property(fc.constantFrom(...boxes), fc.array(benchChains, { minLength: 1, maxLength: 2 }), (box, all) => {
        const chains = all.map((both) => drawnChain({ chain: both.chain, placed: built(both) }));
        const shown = shownOf(['rays', 'planes', 'foci', 'pupils']);
        const layout = sideViewLayout({ box, title: 'The chain, from the side', chains, shown, handles: [] });
        const sheet = { left: 0, top: 0, right: box.width, bottom: box.height };
        for (const [index, one] of layout.boxes.entries()) {
          if (!isWithin(one.box, sheet)) expect.fail(`${one.what} leaves the sheet`);
          for (const other of layout.boxes.slice(index + 1)) {
            if (meet(one.box, other.box)) expect.fail(`${one.what} on ${other.what}`);
          }
        }
        expect(JSON.stringify(layout)).not.toMatch(/NaN|undefined/);
      }),
      { seed: 12, numRuns: 1000 },
    );
  });
});

describe('the length of rings', () => {
  const dimensioned = (text: string) => {
    const { chain } = readChain(text);
    const placed = placedChain(chain);
    if (placed.kind !== 'built') throw new Error(placed.why);
    return drawnChain({ chain, placed }).dimensions?.find(({ name }) => name === 'extension')?.value;
  };

  it.each([
    ['body-36,ring-12,ring-24,lens-50', /^36/],
    ['body-36,ring-24,lens-50,close-up-4', /^24/],
    ['body-36,ring-24,lens-100,coupling-ring,lens-50:turned', /^24/],
    ['body-36,converter-2,ring-24,lens-50', /^24/],
  ])('is drawn where it is all that is added: %s', (text, value) => {
    expect(dimensioned(text)).toMatch(value);
  });

  it.each(['body-36,lens-50,close-up-4', 'body-36,ring-12,converter-2,ring-24,lens-50'])(
    'is not drawn where it is none, or a part of them: %s',
    (text) => {
      expect(dimensioned(text)).toBeUndefined();
    },
  );
});

describe('a chain with glass', () => {
  const texts = [
    'body-36,ring-24,reversing-ring,lens-28:turned',
    'body-36,bellows:e120,reversing-ring,lens-28:turned',
    'body-36,lens-100,coupling-ring,lens-50:turned',
    'body-36,lens-100,close-up-4',
    'body-36,ring-36,lens-28',
    'body-36,ring-12,lens-60:m0.4',
  ];
  it.each(texts)('has no word on it, nor on the subject: %s', (text) => {
    const { chain } = readChain(text);
    const placed = built({ chain, parts: [] });
    for (const box of boxes) {
      const layout = sideViewLayout({
        box,
        title: 'The chain, from the side',
        chains: [{ ...drawnChain({ chain, placed }), ...glassOf(chain, placed) }],
        shown: { ...shownOf(['rays', 'planes', 'foci', 'pupils']), glass: benchGlass.drawn },
        handles: [],
      });
      const { labels, strokes, sharp, place } = layout.chains[0]!;
      const glass = strokes.flatMap((stroke) => stroke.box ?? []);
      expect(glass.length).toBeGreaterThan(2);
      const { x, half } = sharp!;
      const subject = { left: x, right: x, top: place.axisY - half, bottom: place.axisY + half };
      const on = labels.filter((label) => [...glass, subject].some((other) => meet(label.box, other)));
      expect(on.map((label) => label.text)).toEqual([]);
      expect(labels.length).toBeGreaterThan(3);
    }
  });
});

describe('130 chains of all kinds, through the page', () => {
  const perKind = Math.ceil(130 / Object.keys(kindsOfChains).length);
  let equations: Readonly<Record<string, readonly [letters: string, numbers: string]>>;
  beforeAll(async () => {
    equations = await everyEquation();
  });

  it.each(Object.keys(kindsOfChains) as KindOfChain[])('%s', (kind) => {
    for (const both of fc.sample(chainsOfKind(kind), { seed: 13, numRuns: perKind })) {
      const { chain } = both;
      const found = expectAlike(both);
      // Its address brings it back.
      const { state, notices } = readState(writeState({ ...readState('').state, chain }), readOwn);
      expect(notices).toEqual([]);
      expect(built({ chain: state.chain, parts: [] }).answers).toEqual(found.answers);
      // The field card takes it over as it is.
      const card = readCard(queryForCard(state));
      expect(card.notices).toEqual([]);
      expect(card.state.chains).toEqual([state.chain]);

      const { body } = render(AnswersView, {
        props: {
          chain,
          built: found,
          ranges: { spans: {}, because: [] },
          conditions: usualConditions,
          lessons: { bySlug: {}, taughtIn: {} },
          oncondition: () => undefined,
        },
      });
      expect(body).not.toMatch(/NaN|undefined|\[object/);
      const shown = [...body.matchAll(/<output name="([^"]+)" data-value="([^"]+)"/g)];
      expect(Object.fromEntries(shown.map(([, name, value]) => [name, Number(value)]))).toEqual(found.answers);

      for (const name of names.filter((one) => found.answers[one] !== undefined)) {
        const { steps, words } = workingOf(name, chain, found, usualConditions);
        expect(words).not.toBe('');
        for (const { formula } of steps) expect(equations[formula], formula).toBeDefined();
        if (steps.length > 0) {
          expect(steps.at(-1)!.gives).toBe(name);
          const value = found.answers[name]!;
          if (Number.isFinite(value)) {
            const off = Math.abs(steps.at(-1)!.value - value);
            if (off > 1e-6 * Math.abs(value) + 1e-9) expect.fail(`${name}: off by ${off} of ${value}`);
          } else expect(steps.at(-1)!.value).toBe(value);
        }
      }
    }
  });

  it('say why N is not what is marked, where it is not', () => {
    const wordsOf = (text: string) => {
      const { chain } = readChain(text);
      return workingOf('effective-f-number', chain, built({ chain, parts: [] }), usualConditions).words;
    };
    expect(wordsOf('body-36,lens-60:f8')).toMatch(/N here is f\/6\.19, though 60 mm .* is marked f\/8: /);
    expect(wordsOf('body-36,lens-60:far:f8')).not.toContain('marked');
    expect(wordsOf('body-36,ring-24,lens-50:f8')).not.toContain('marked');
  });

  it('are worked from the numbers of their parts where a lesson has a formula for them', () => {
    for (const kind of ['lens', 'turned', 'close-up', 'converter', 'coupled', 'objective'] as const) {
      const froms = fc.sample(chainsOfKind(kind), { seed: 14, numRuns: 40 }).flatMap((both) => {
        const found = built(both);
        return found.answers.magnification === undefined
          ? []
          : [workingOf('magnification', both.chain, found, usualConditions).from];
      });
      expect(froms, kind).toContain('parts');
    }
  });
});
