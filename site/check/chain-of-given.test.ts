import { describe, expect, it } from 'vitest';
import { builtChain } from '#site/bench/answers.ts';
import { readState } from '#site/bench/read-state.ts';
import { readOwn } from '#site/chain/own-in-text.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { benchQuery } from './chain-of-given.ts';
import { checkedAnswers, givenIn, readWritten } from './check.ts';
import { grounds } from './engine.ts';

const read = (text: string) => readWritten({ text, meant: {} });
const queryOf = (text: string) => benchQuery(givenIn(read(text)), read(text).setUps);

describe('numbers that mean a chain', () => {
  const all = 'magnification, working distance, effective f-number, field width';
  it.each([
    ['50 mm, 36 mm ring, f/8', all],
    ['50 mm, 36 mm ring, f/8, P 1.2, sensor 23.5 mm', all],
    ['28 mm lens, 12 mm ring, f/5.6', all],
    ['100 mm macro at 1:1, f/11', all],
    ['200 mm lens at infinity with a +4 dpt close-up lens, f/8', all],
    ['50 mm, 36 mm ring, 2x converter, f/8', all],
    ['50 mm, 24 mm ring, 2x converter, converter length 45 mm, f/8, P 1.2', all],
    ['105 mm lens, f/8, 20 mm of rings, focus magnification 0.5', all],
  ])('stand on the bench so that its answers are those of the check: %s', (text, asked) => {
    const { state, notices } = readState(`?${queryOf(text)!}`, readOwn);
    expect(notices).toEqual([]);
    const built = builtChain(state.chain, state.conditions);
    if (built.kind !== 'built') throw new Error(built.why);
    const told = checkedAnswers(read(text), read(asked), grounds);
    const found = told.filter(({ working }) => working);
    expect(found.length).toBeGreaterThan(2);
    for (const { asks, working } of found) {
      expect(built.answers[asks as 'magnification'], asks).toEqual(
        closeTo(working!.value, { relative: 1e-9, because: 'rounding' }),
      );
    }
  });

  it('say nothing of how wide the lens opens, where nobody has', () => {
    const answersOf = (text: string) => {
      const { state, notices } = readState(`?${queryOf(text)!}`, readOwn);
      expect(notices).toEqual([]);
      const built = builtChain(state.chain, state.conditions);
      if (built.kind !== 'built') throw new Error(built.why);
      return built.answers;
    };
    const { 'finder-loss': loss, ...others } = answersOf('50 mm, 36 mm ring, f/8');
    expect(loss).toBeUndefined();
    expect(others['light-loss']).toBeGreaterThan(1);
    expect(answersOf('50 mm, 36 mm ring')['f-number']).toBe(8);
  });

  it('carry the length of a converter, and on which side of it a ring is', () => {
    const chainOf = (text: string) => readState(`?${queryOf(text)!}`, readOwn).state.chain.map(({ thing }) => thing);
    const front = chainOf('50 mm, 24 mm ring, 2x converter, converter length 45 mm, f/8');
    expect(front.map(({ kind }) => kind)).toEqual(['camera', 'converter', 'ring', 'lens']);
    expect(front[1]!.part['converter-length']).toBe(45);
    const rear = chainOf('50 mm lens on 2x converter with 24 mm ring between converter and camera, f/8');
    expect(rear.map(({ kind }) => kind)).toEqual(['camera', 'ring', 'converter', 'lens']);
    const alone = chainOf('100 mm lens, m 1, 2x converter, f/8');
    expect(alone.map(({ kind }) => kind)).toEqual(['camera', 'converter', 'lens']);
    expect(queryOf('50 mm, 36 mm ring, 2x converter, +4 dpt close-up lens, f/8')).toBeUndefined();
  });

  it('leave open where H of a lens turned round stands, so that the bench tells between what its answers lie', () => {
    const lens = (text: string) => readState(`?${queryOf(text)!}`, readOwn).state.chain.at(-1)!;
    expect(lens('28 mm reversed, register 44, ring 4, f/8').thing.part['front-principal-depth']).toBeUndefined();
    expect(lens('28 mm reversed, register 44, ring 4, h 34, f/8').thing.part['front-principal-depth']).toBe(34);
    expect(lens('28 mm reversed, register 44, ring 4, f/8').turned).toBe(true);
  });

  it.each(['f/8', 'm 0.5, f/8', '24 MP', 'bananas', '50 mm', '50 mm, 2x converter'])(
    'are no chain where they do not say one: %s',
    (text) => {
      expect(queryOf(text)).toBeUndefined();
    },
  );
});
