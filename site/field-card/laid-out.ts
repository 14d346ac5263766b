import { circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { numberIn } from '#site/kit/part.ts';
import { blocksOf, isBlock, type Block, type BlockOrWhy } from './card.ts';
import { layoutOf, placeOn, type Layout, type Place } from './size.ts';
import type { CardState } from './state.ts';
import { assumedInWords, conditionsInWords, headingOf, lines, misfitsInWords, ruleInWords } from './words.ts';

/** What stands on a card, and where. */
export interface LaidOut {
  readonly all: readonly BlockOrWhy[];
  readonly blocks: readonly Block[];
  /** What is assumed of a lens; empty where nothing is. */
  readonly assumed: string;
  /** What is missing to hold a chain together; empty where nothing is. */
  readonly misfits: string;
  readonly circles: readonly number[];
  /** The card's heading, and what explains it. */
  readonly notes: readonly string[];
  readonly layout: Layout;
  readonly place: Place;
  /** The blocks of each card; none where they find no room. */
  readonly cards: readonly (readonly Block[])[];
}

/** A card as it is set, laid out for its size. */
export function laidOut({ size, paper, apart, unit, lines: shown, conditions, ...plan }: CardState): LaidOut {
  const ofChains = plan.chains.map((chain) => blocksOf({ ...plan, chains: [chain], conditions }));
  const all = ofChains.flat();
  const blocks = all.filter(isBlock);
  const place = placeOn(size, paper);
  const cameras = plan.chains.map(([camera]) => camera!.thing);
  const circles = cameras.map(
    ({ part }) =>
      conditions['circle-of-confusion'] ?? circleOfConfusionByWidth({ sensorWidth: numberIn(part, 'sensor-width')! }),
  );
  const title = [...new Set(cameras.map(({ name }) => name))].join(' · ');
  const terms = shown.map((name) => `${lines[name].short}: ${lines[name].full}`).join('. ');
  const assumed = assumedInWords(plan.chains);
  const misfits = misfitsInWords(blocks.map(({ chain }) => chain));
  const said = conditionsInWords(conditions, [...new Set(circles)]);
  const notes = [title, misfits, terms, said, ruleInWords, assumed].filter((note) => note !== '');
  const layout = layoutOf(place.card, {
    headings: blocks.map((block) => headingOf(block, unit).map(({ length }) => length)),
    rows: shown.length + 1,
    columns: Math.max(1, ...blocks.map(({ columns }) => columns.length)),
    notes: notes.map(({ length }) => length),
    ...(apart && { apart: ofChains.flatMap((found, chain) => found.filter(isBlock).map(() => chain)) }),
  });
  const cards = layout.kind === 'cards' ? layout.cards.map((places) => places.map((place) => blocks[place]!)) : [];
  return { all, blocks, assumed, misfits, circles: [...new Set(circles)], notes, layout, cards, place };
}
