import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileOf, hashOf, readFile, readHash } from './carry.ts';
import {
  beginnings,
  emptyPlan,
  lessonsIn,
  minutesOf,
  moved,
  planOf,
  withChanged,
  withItem,
  without,
  type NewItem,
  type Plan,
} from './plan.ts';
import { readPlan } from './schema.ts';

const ids = ['one', 'two', 'three', 'four', 'five', 'six'];
const steps = { extension: { ids }, stacking: { ids } };

const line = (most: number) =>
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: most })
    .map((text) => text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '·').slice(0, most));
const minutes = fc.integer({ min: 0, max: 240 });
const item: fc.Arbitrary<NewItem> = fc.oneof(
  fc.record({
    kind: fc.constant('step' as const),
    lesson: fc.constantFrom('extension', 'stacking'),
    step: fc.constantFrom(...ids),
    minutes,
  }),
  fc
    .record({
      kind: fc.constant('question' as const),
      question: line(60),
      options: fc.uniqueArray(line(20), { maxLength: 6, selector: (text) => text.replace(/\s+/g, ' ').trim() }),
      minutes,
    })
    .chain((question) =>
      question.options.length === 0
        ? fc.constant(question)
        : fc.integer({ min: 0, max: question.options.length - 1 }).map((holds) => ({ ...question, holds })),
    ),
  fc.record({ kind: fc.constant('pause' as const), title: line(40), minutes, note: line(40) }),
);
const plan = fc.array(item, { maxLength: 30 }).map((items) => planOf('An evening', items));
const planAndPlace = fc
  .array(item, { minLength: 1, maxLength: 20 })
  .map((items) => planOf('An evening', items))
  .chain((one) =>
    fc.record({ one: fc.constant(one), from: fc.nat(one.items.length - 1), to: fc.nat(one.items.length - 1) }),
  );

const idsOf = ({ items }: Plan) => items.map(({ id }) => id);

describe('a plan', () => {
  it('has every item once, each with an id of its own, in the order in which they were put in', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 30 }), (items) => {
        const made = planOf('An evening', items);
        expect(made.items.map(({ id: _, ...rest }) => rest)).toEqual(items);
        expect(new Set(idsOf(made)).size).toBe(items.length);
      }),
    );
  });

  it('keeps all items and their order but for the one that is moved, which stands where it was moved to', () => {
    fc.assert(
      fc.property(planAndPlace, ({ one, from, to }) => {
        const id = one.items[from]!.id;
        const after = moved(one, id, to);
        expect(after.items[to]!.id).toBe(id);
        expect(idsOf(without(after, id))).toEqual(idsOf(without(one, id)));
        expect(moved(after, id, from)).toEqual(one);
      }),
    );
  });

  it('moves an item no farther than its ends, and none that it has not', () => {
    const one = planOf(
      'Three',
      [1, 2, 3].map((minutes) => ({ kind: 'pause', title: 'A break', minutes })),
    );
    expect(idsOf(moved(one, 'pause-1', 99))).toEqual(['pause-2', 'pause-3', 'pause-1']);
    expect(idsOf(moved(one, 'pause-3', -5))).toEqual(['pause-3', 'pause-1', 'pause-2']);
    expect(moved(one, 'pause-9', 0)).toBe(one);
  });

  it('takes as long as its items together, whatever their order, and each begins when those before it are over', () => {
    fc.assert(
      fc.property(planAndPlace, ({ one, from, to }) => {
        const sum = one.items.reduce((all, { minutes }) => all + minutes, 0);
        expect(minutesOf(one.items)).toBe(sum);
        expect(minutesOf(moved(one, one.items[from]!.id, to).items)).toBe(sum);
        const begins = beginnings(one.items);
        expect(begins[0]).toBe(0);
        one.items.forEach(({ minutes }, index) => {
          expect(begins[index]! + minutes).toBe(begins[index + 1] ?? sum);
        });
      }),
    );
  });

  it('names each of its lessons once, in the order in which they come', () => {
    const step = (lesson: string): NewItem => ({ kind: 'step', lesson, step: 'one', minutes: 3 });
    expect(lessonsIn(planOf('x', ['stacking', 'extension', 'stacking'].map(step)))).toEqual(['stacking', 'extension']);
    expect(lessonsIn(emptyPlan)).toEqual([]);
  });

  it('gives an id free again to the next of its kind, and leaves the others as they are', () => {
    const two = planOf(
      'x',
      [1, 2].map((minutes) => ({ kind: 'pause', title: 'A break', minutes })),
    );
    const again = withItem(without(two, 'pause-1'), { kind: 'pause', title: 'New', minutes: 1 });
    expect(idsOf(again)).toEqual(['pause-2', 'pause-1']);
  });

  it('changes the item of an id and no other; where another tab has removed it, nothing', () => {
    const two = planOf(
      'x',
      [1, 2].map((minutes) => ({ kind: 'pause', title: 'A break', minutes })),
    );
    const changed = withChanged(two, { ...two.items[1]!, minutes: 9 });
    expect(changed.items.map(({ minutes }) => minutes)).toEqual([1, 9]);
    expect(withChanged(without(two, 'pause-2'), { ...two.items[1]!, minutes: 9 }).items).toHaveLength(1);
  });
});

describe('a plan that is carried', () => {
  it('comes back from its file as it was', () => {
    fc.assert(
      fc.property(plan, (one) => {
        expect(readFile(fileOf(one), steps)).toEqual({ kind: 'plan', plan: one });
      }),
    );
  });

  it('comes back from its link as it was, in letters that an address leaves alone', async () => {
    await fc.assert(
      fc.asyncProperty(plan, async (one) => {
        const hash = await hashOf(one);
        expect(hash).toMatch(/^#plan=[\w-]*$/);
        expect(await readHash(hash, steps)).toEqual({ kind: 'plan', plan: one });
      }),
    );
  });

  it('is refused in a sentence where its link is cut short or is none, and other links are left alone', async () => {
    const hash = await hashOf(planOf('x', [{ kind: 'pause', title: 'A break', minutes: 5 }]));
    for (const broken of [hash.slice(0, -4), '#plan=', '#plan=%%%', '#plan=AAAA'])
      expect(await readHash(broken, steps)).toMatchObject({
        kind: 'refused',
        message: expect.stringMatching(/^This .*\.$/),
      });
    expect(await readHash('#kit=abc', steps)).toBeUndefined();
  });

  it('never makes reading throw, whatever JSON it is', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(readFile(text, steps).kind).toBe('refused');
      }),
    );
  });

  it.each([
    ['no JSON', '{', /not JSON/],
    ['a kit', '{"kit":"ring-and-ruler","version":1,"parts":[]}', /no plan/],
    ['a later edition', '{"workshop":"ring-and-ruler","version":3,"title":"x","items":[]}', /later edition/],
    ['no version', '{"workshop":"ring-and-ruler","title":"x","items":[]}', /which version/],
    ['no list', '{"workshop":"ring-and-ruler","version":1,"title":"x"}', /no list/],
    ['a stray field', '{"workshop":"ring-and-ruler","version":1,"title":"x","items":[],"by":"me"}', /“by”/],
  ])('says what is wrong with %s', (_, text, words) => {
    expect(readFile(text, steps)).toEqual({ kind: 'refused', message: expect.stringMatching(words) });
  });

  it.each([
    [{ kind: 'step', lesson: 'nothing', step: 'one' }, /Item 1: there is no lesson “nothing”/],
    [{ kind: 'step', lesson: 'toString', step: 'one' }, /Item 1: there is no lesson/],
    [{ kind: 'step', lesson: 'extension', step: 'seven' }, /“extension” has no step “seven” in this edition/],
    [{ kind: 'step', lesson: 'extension', step: 1 }, /Item 1: its step is not named/],
    [{ kind: 'step', lesson: 'extension', step: 'one', minutes: 2.5 }, /minutes are a whole number/],
    [{ kind: 'pause', title: 'A\nbreak' }, /title takes/],
    [{ kind: 'question', question: 'Which?', options: ['a'], holds: 1 }, /is none of its own/],
    [{ kind: 'question', question: 'Which?', options: Array(7).fill('a') }, /up to 6 options/],
    [
      { kind: 'question', question: 'Which?', options: ['A ring', 'Both', 'A  ring'] },
      /“A {2}ring” stands there twice/,
    ],
    [{ kind: 'dance', title: 'x' }, /its kind is none of/],
    [{ kind: 'pause', title: 'x', music: 'loud' }, /it says “music”/],
  ])('says which item is wrong, and how: %o', (wrong, words) => {
    const items = [{ id: 'a-1', minutes: 3, ...wrong }];
    const reading = readPlan({ workshop: 'ring-and-ruler', version: 2, title: 'x', items }, steps);
    expect(reading).toEqual({ kind: 'refused', message: expect.stringMatching(words) });
  });

  it('is read where it counts places, as the first version did, by what stood there then', () => {
    const old = (lesson: string, step: unknown) =>
      readPlan(
        {
          workshop: 'ring-and-ruler',
          version: 1,
          title: 'x',
          items: [{ id: 'step-1', kind: 'step', lesson, step, minutes: 3 }],
        },
        { extension: { ids, first: ['six', 'gone', 'one'] }, stacking: { ids } },
      );
    const named = (reading: ReturnType<typeof readPlan>) => reading.kind === 'plan' && reading.plan.items[0];
    expect(named(old('extension', 1))).toMatchObject({ step: 'six' });
    expect(named(old('stacking', 6))).toMatchObject({ step: 'six' });
    expect(old('extension', 2)).toMatchObject({ message: expect.stringContaining('has no step “gone” in this') });
    for (const [lesson, step] of [
      ['extension', 4],
      ['stacking', 7],
      ['stacking', 0],
      ['stacking', 1.5],
    ] as const)
      expect(old(lesson, step)).toMatchObject({ message: expect.stringContaining(`has no step “${step}” in this`) });
    expect(old('nothing', 1)).toMatchObject({ message: expect.stringContaining('no lesson “nothing”') });
  });

  it('refuses two items of one id: hands would be counted for both', () => {
    const one = { id: 'pause-1', kind: 'pause', title: 'x', minutes: 1 };
    const reading = readPlan({ workshop: 'ring-and-ruler', version: 2, title: 'x', items: [one, one] }, steps);
    expect(reading).toEqual({ kind: 'refused', message: expect.stringMatching(/Item 2: .* already/) });
  });
});
