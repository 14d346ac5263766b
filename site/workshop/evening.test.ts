import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phoneAddress, readHall, spoken } from '#site/state/phones.ts';
import type { Catalogue, ListedStep } from './catalogue.ts';
import { clockAt } from './clock.ts';
import {
  askedBy,
  at,
  believed,
  handsFor,
  isEvening,
  noEvening,
  pagesFor,
  placeAfter,
  placeIn,
  placesOf,
  placeText,
  readPlace,
  withHand,
  withHands,
  withoutLastHand,
} from './evening.ts';
import { moved, planOf, without, type NewItem } from './plan.ts';
import { runCommand } from './run-keys.ts';

const step = (id: string, question: string): ListedStep => ({
  id,
  question,
  options: ['Yes', 'No', 'Neither'],
  holds: 1,
  caption: '',
  answer: '',
  asked: `?stage=${id}`,
  answered: `?stage=${id}&answered=`,
  withheld: [],
});
const catalogue: Catalogue = {
  extension: {
    slug: 'extension',
    place: 4,
    question: 'What does each ring give?',
    summary: '',
    path: 'lessons/extension/',
    minutesOfStep: 4,
    steps: [step('one', 'One?'), step('two', 'Two?')],
    formulas: [],
    bring: ['a ring'],
    caution: '',
    opening: '',
    roomAsks: [],
  },
};
const items: readonly NewItem[] = [
  { kind: 'pause', title: 'Welcome', minutes: 5 },
  { kind: 'step', lesson: 'extension', step: 'one', minutes: 4 },
  { kind: 'question', question: 'Own?', options: ['a', 'b'], minutes: 3 },
  { kind: 'step', lesson: 'extension', step: 'two', minutes: 4 },
];
const plan = planOf('An evening', items);

describe('an evening', () => {
  it('asks and answers each step, asks a question without an answer once, pauses once, and closes', () => {
    expect(placesOf(plan).map(placeText)).toEqual(['1', '2', '2a', '3', '4', '4a', '5']);
    expect(placesOf(plan, 2).map(placeText).slice(-2)).toEqual(['5', '6']);
  });

  it('goes through all places on and back again, one press each, and stays at its ends', () => {
    const places = placesOf(plan);
    let place = places[0]!;
    for (const next of [...places.slice(1), places.at(-1)!]) {
      place = placeAfter(plan, place, 1);
      expect(place).toEqual(next);
    }
    for (const next of [...places].reverse().slice(1)) {
      place = placeAfter(plan, place, -1);
      expect(place).toEqual(next);
    }
    expect(placeAfter(plan, place, -1)).toEqual(places[0]);
    expect(placeAfter(plan, place, Infinity)).toEqual(places.at(-1));
  });

  it('writes every place into an address and finds it there again', () => {
    for (const place of placesOf(plan)) expect(readPlace(placeText(place), plan)).toEqual(place);
    for (const text of ['', '0', '6', 'x', '2b', '1e1', '-1']) expect(readPlace(text, plan)).toBeUndefined();
    // A pause has no answer.
    expect(readPlace('1a', plan)).toEqual({ index: 0, answered: false });
  });

  it('stays at its item wherever that is moved to, and near it where it is removed', () => {
    const evening = at(noEvening, plan, { index: 3, answered: true });
    expect(placeIn(moved(plan, 'step-2', 0), evening)).toEqual({ index: 0, answered: true });
    expect(placeIn(without(plan, 'step-2'), evening)).toEqual({ index: 3, answered: false });
    expect(placeIn(planOf('x', items.slice(0, 1)), evening)).toEqual({ index: 1, answered: false });
  });

  it('is kept and read again as it was, and nothing else is taken for one', () => {
    const evening = withHands(
      at(noEvening, plan, { index: 1, answered: false }),
      askedBy(plan.items[1], catalogue)!,
      2,
      5,
    );
    expect(isEvening(JSON.parse(JSON.stringify(evening)))).toBe(true);
    for (const other of [
      null,
      7,
      {},
      { ...evening, version: 2 },
      { ...evening, index: -1 },
      { ...evening, hands: { a: ['x'] } },
      { ...evening, more: 1 },
    ])
      expect(isEvening(other)).toBe(false);
  });
});

describe('hands', () => {
  const asked = askedBy(plan.items[1], catalogue)!;

  it('are counted option by option, never below none', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ option: fc.nat(2), more: fc.constantFrom(1, -1) })), (presses) => {
        const evening = presses.reduce((now, { option, more }) => withHands(now, asked, option, more), noEvening);
        const expected = [0, 1, 2].map((place) =>
          presses.filter(({ option }) => option === place).reduce((count, { more }) => Math.max(0, count + more), 0),
        );
        expect(handsFor(evening, asked)).toEqual(expected);
      }),
    );
  });

  it('are taken back one by one, the last first, also from an evening that was kept and read again', () => {
    const counted = [1, 1, 0].reduce((now, option) => withHand(now, asked, option), noEvening);
    const again: unknown = JSON.parse(JSON.stringify(counted));
    if (!isEvening(again)) throw new Error('It is kept as it is.');
    const back = withoutLastHand(again, asked);
    expect(handsFor(back, asked)).toEqual([0, 2, 0]);
    const none = [1, 2, 3].reduce((now) => withoutLastHand(now, asked), back);
    expect(handsFor(none, asked)).toEqual([0, 0, 0]);
    // A hand for another question stays.
    const own = askedBy(plan.items[2], catalogue)!;
    expect(handsFor(withoutLastHand(counted, own), asked)).toEqual([1, 2, 0]);
  });

  it('remember no more than they need, however many are counted', () => {
    const many = Array.from({ length: 300 }, () => 0).reduce((now, option) => withHand(now, asked, option), noEvening);
    expect(handsFor(many, asked)[0]).toBe(300);
    expect(isEvening(many)).toBe(true);
  });

  it('are those of the question, not of its place: another plan that asks it has them, too', () => {
    const evening = withHands(noEvening, asked, 1, 7);
    const other = planOf('Other', [items[1]!]);
    expect(believed(other, evening, catalogue)).toMatchObject([{ hands: [0, 7, 0], all: 7 }]);
  });

  it('are shown at the end in the order of the plan, each question once, those without hands left out', () => {
    const own = askedBy(plan.items[2], catalogue)!;
    const evening = withHands(withHands(noEvening, own, 0, 2), asked, 1, 3);
    const all = believed({ ...plan, items: [...plan.items, { ...plan.items[1]!, id: 'again' }] }, evening, catalogue);
    expect(all.map(({ asked: { question } }) => question)).toEqual(['One?', 'Own?']);
    expect(all[0]!.asked.holds).toBe(1);
    expect(all[1]!.asked.holds).toBeUndefined();
  });

  it('counted for other options are nobody’s', () => {
    const evening = { ...noEvening, hands: { [asked.key]: [1, 2] } };
    expect(handsFor(evening, asked)).toEqual([0, 0, 0]);
  });

  it('take as many pages at the end as a wall needs, and one where there are none', () => {
    const one = { asked, hands: [1, 0, 0], all: 1 };
    expect([0, 1, 4, 5, 9].map((count) => pagesFor(Array(count).fill(one)))).toEqual([1, 1, 1, 2, 3]);
  });
});

describe('the keys of an evening', () => {
  const press = (key: string, options: number, isJumping = false) =>
    runCommand(
      { key, ctrlKey: false, altKey: false, metaKey: false, target: null } as KeyboardEvent,
      options,
      isJumping,
    );

  it('count hands for the options that there are while a question is open', () => {
    expect(press('1', 3)).toEqual({ kind: 'hand', option: 0 });
    expect(press('3', 3)).toEqual({ kind: 'hand', option: 2 });
    expect(press('4', 3)).toBeUndefined();
    expect(press('0', 3)).toBeUndefined();
  });

  it('write the number of a step behind J, and where nothing is counted', () => {
    expect(press('j', 3)).toEqual({ kind: 'jump' });
    expect(press('1', 3, true)).toEqual({ kind: 'digit', digit: '1' });
    expect(press('9', 0)).toEqual({ kind: 'digit', digit: '9' });
  });

  it('are else those of the projected view, capitals as well, none with a modifier', () => {
    expect(press('PageDown', 3)).toEqual({ kind: 'go', by: 1 });
    expect(press('.', 3)).toEqual({ kind: 'blank' });
    expect(press('N', 0)).toEqual({ kind: 'notes' });
    expect(press('P', 0)).toEqual({ kind: 'phones' });
    expect(press('Backspace', 2)).toEqual({ kind: 'hand-back' });
    expect(
      runCommand({ key: 'n', ctrlKey: true, altKey: false, metaKey: false, target: null } as KeyboardEvent, 0, false),
    ).toBeUndefined();
  });
});

describe('the clock', () => {
  const began = Date.UTC(2026, 10, 29, 19, 0);
  const after = (minutes: number, index: number) => clockAt(plan, index, began, began + minutes * 60_000);

  it('says how long it has been, in hours and minutes', () => {
    expect(after(0, 0).gone).toBe('0:00');
    expect(after(65.9, 0).gone).toBe('1:05');
    // A clock that was set back meanwhile.
    expect(after(-3, 0).gone).toBe('0:00');
  });

  it('is on time while an item has its own minutes, then behind, and ahead where an item comes early', () => {
    expect([after(3, 0), after(5, 0), after(8, 1)].map(({ against }) => against)).toEqual(Array(3).fill('on time'));
    expect(after(12, 1)).toMatchObject({ against: '3 min behind', isLate: true });
    expect(after(2, 1)).toMatchObject({ against: '3 min ahead', isLate: false });
  });

  it('ends when the plan does while it is on time, and as much later as it is behind', () => {
    const ends = (minutes: number) =>
      new Date(began + minutes * 60_000).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    expect(after(3, 0).ends).toBe(ends(16));
    expect(after(12, 1).ends).toBe(ends(19));
    expect(after(2, 1).ends).toBe(ends(13));
  });
});

describe('the address for phones', () => {
  const path = 'lessons/extension/?extension=12';

  it('is the page’s own, and says so where only this computer reaches it', () => {
    expect(phoneAddress(path, 'https://club.example/optics/', '')).toEqual({
      address: 'https://club.example/optics/lessons/extension/?extension=12',
      isHereOnly: false,
    });
    for (const here of ['http://localhost:4321/', 'http://127.0.0.1:4321/', 'http://[::1]:4321/'])
      expect(phoneAddress(path, here, '').isHereOnly).toBe(true);
  });

  it('is that of the hall where the instructor has said it', () => {
    expect(phoneAddress(path, 'http://localhost:4321/', '192.168.1.20:4321')).toEqual({
      address: 'http://192.168.1.20:4321/lessons/extension/?extension=12',
      isHereOnly: false,
    });
    expect(phoneAddress(path, 'http://localhost:4321/optics/', '192.168.1.20:4321').address).toBe(
      'http://192.168.1.20:4321/optics/lessons/extension/?extension=12',
    );
    expect(readHall(' 192.168.1.20:4321/optics ')).toBe('http://192.168.1.20:4321/optics/');
    expect(readHall('https://club.example')).toBe('https://club.example/');
  });

  it.each(['', 'two words', 'http://', 'javascript:alert(1)', '<b>', 'http://a b'])(
    'takes no “%s” for one',
    (typed) => {
      expect(readHall(typed)).toBeUndefined();
    },
  );

  it('has the page’s own port where none is written, and none is added to a secure one', () => {
    for (const [typed, read] of [
      ['192.168.1.20', 'http://192.168.1.20:4479/'],
      ['http://192.168.1.20/optics', 'http://192.168.1.20:4479/optics/'],
      ['[fe80::1]', 'http://[fe80::1]:4479/'],
      ['192.168.1.20:80', 'http://192.168.1.20/'],
      ['[fe80::1]:4321', 'http://[fe80::1]:4321/'],
      ['https://club.example', 'https://club.example/'],
    ] as const)
      expect(readHall(typed, '4479')).toBe(read);
    // What was read once stays as it is.
    expect(phoneAddress(path, 'http://localhost:4479/', readHall('club.example:80', '4479')!).address).toBe(
      `http://club.example/${path}`,
    );
  });

  it('is read out without what every browser puts before it', () => {
    expect(spoken('http://192.168.1.20:4321/x')).toBe('192.168.1.20:4321/x');
    expect(spoken('https://club.example/')).toBe('https://club.example/');
  });
});
