import { describe, expect, it } from 'vitest';
import { powerInWords } from './in-words.ts';
import { extensionInWords } from './extension-in-words.ts';
import { decisionsOf, nothingSharp, type Planned } from './decisions.ts';
import { planRows, type PlanWords } from './plan.ts';

const spider: Planned = {
  workingDistance: 72.7,
  flightDistance: 30,
  subjectDepth: 3,
  magnification: 3,
  effectiveFNumber: 25.4,
  circleOfConfusion: 0.02,
  wavelength: 0.00055,
  frameCount: 38,
  inTimeFrameCount: 16,
  ambientExposureTime: 1 / 6,
  slowestExposureTime: 1 / 900,
  neededFlashPower: 1 / 30,
  flashDistance: 100,
  sourceSize: 60,
};
const held = { ...spider, inTimeFrameCount: 38 };
const words: PlanWords = { chain: 'bellows', checks: 'eyes first', gives: 'asked', iso: 200 };
const changesOf = (plan: Planned, more = words) =>
  planRows(decisionsOf(plan), (name) => name, more).flatMap(({ title, change }) =>
    change === undefined ? [] : [`${title}: ${change}`],
  );

describe('a plan', () => {
  it('has eight answers', () => {
    expect(planRows(decisionsOf(spider), (name) => name, words).map(({ title }) => title[0])).toEqual([...'12345678']);
  });

  it('says in words how many frames there are, and how many of them there is no time for', () => {
    const printed = {
      'frame-count': '38',
      'frame-step': '0.0789 mm',
      'in-time.frame-count': '16 of 38',
      'time-limit': '8 s',
    } as Readonly<Record<string, string>>;
    const frames = (plan: Planned) =>
      planRows(decisionsOf(plan), (name) => printed[name] ?? name, words).find(({ title }) => title === '5 Frames');
    expect(frames(spider)).toEqual({
      title: '5 Frames',
      answer: '38 frames, 0.0789 mm apart; only 16 of 38 done in 8 s',
      change: 'take it smaller (question 1)',
    });
    expect(frames({ ...spider, inTimeFrameCount: 38 })).toMatchObject({ answer: '38 frames, 0.0789 mm apart' });
  });

  it('names the earlier answer to change, and nothing where all hold', () => {
    expect(changesOf(spider)).toEqual(['5 Frames: take it smaller (question 1)']);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 })).toEqual([]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38, flightDistance: 80 })).toEqual([
      '3 Room: a longer lens (question 2)',
    ]);
    expect(changesOf({ ...spider, effectiveFNumber: 36 })).toEqual(['4 f-number: open up']);
    expect(changesOf({ ...spider, subjectDepth: 0.08, effectiveFNumber: 18, frameCount: 2 })).toEqual([
      '4 f-number: close further',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38, neededFlashPower: 2 })).toEqual([
      '6 Light: another ISO, or f-number (question 4)',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 }, { ...words, gives: 'more' })).toEqual([
      '2 Chain: take it larger (question 1)',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 }, { ...words, gives: 'less' })).toEqual([
      '2 Chain: take it smaller (question 1)',
    ]);
    expect(changesOf(held, { ...words, gives: 'beyond' })).toEqual(['2 Chain: another chain (question 2)']);
  });

  it('has one advice at a time: that of the first answer that fails', () => {
    const failing = { ...spider, flightDistance: 80, effectiveFNumber: 36, neededFlashPower: 2 };
    expect(changesOf(failing, { ...words, gives: 'more' })).toEqual(['2 Chain: take it larger (question 1)']);
    expect(changesOf(failing)).toEqual(['3 Room: a longer lens (question 2)']);
    expect(changesOf({ ...failing, flightDistance: 30 })).toEqual(['4 f-number: open up']);
  });

  it('fails at a flash that gives too much light even at its weakest', () => {
    const bright = { ...held, neededFlashPower: 1 / 200 };
    expect(changesOf(bright)).toEqual(['6 Light: ISO 100, farther off, or daylight on a tripod']);
    expect(changesOf(bright, { ...words, iso: 100 })).toEqual(['6 Light: farther off, or daylight on a tripod']);
    expect(changesOf({ ...held, neededFlashPower: 1 / 128 })).toEqual([]);
    expect(powerInWords(bright.neededFlashPower)).toBe('under 1/128: overexposed');
    expect(changesOf({ ...bright, ambientExposureTime: 1 / 1000 })).toEqual([]);
  });

  it('fails at a light that stands too near to the subject, or in the way of the lens', () => {
    expect(changesOf({ ...held, flashDistance: 25 })).toEqual([
      '7 Softness: farther off, or more room (question 3 or 7)',
    ]);
    expect(changesOf({ ...held, flashDistance: 30, sourceSize: 300 })).toEqual([
      '7 Softness: a smaller light, or farther off (question 7)',
    ]);
    // At 60 degrees its lower end meets the axis where it is 2 tan 60° as wide as it is far.
    const just = 30 * 2 * Math.sqrt(3);
    expect(changesOf({ ...held, flashDistance: 30, sourceSize: 0.999 * just })).toEqual([]);
    expect(changesOf({ ...held, flashDistance: 30, sourceSize: 1.001 * just })).toHaveLength(1);
    expect(changesOf({ ...held, flashDistance: 30, sourceSize: 1.001 * just, hasHole: true })).toEqual([]);
    expect(changesOf({ ...held, flashDistance: 25, ambientExposureTime: 1 / 1000 })).toEqual([]);
  });

  it('has no answer yet to what is asked later', () => {
    const rows = planRows(decisionsOf({ ...spider, neededFlashPower: 2 }), (name) => name, words, 4);
    expect(rows.filter(({ isOpen }) => isOpen).map(({ title, answer }) => `${title}: ${answer}`)).toEqual(
      ['5 Frames', '6 Light', '7 Softness', '8 Check'].map((title) => `${title}: not yet answered`),
    );
    expect(rows.flatMap(({ change }) => change ?? [])).toEqual([]);
  });

  it('has no answers without a chain, which alone is to be changed', () => {
    const changes = (more: PlanWords) =>
      planRows(nothingSharp, (name) => name, more).flatMap(({ title, change }) =>
        change ? [`${title}: ${change}`] : [],
      );
    expect(changes(words)).toEqual(['2 Chain: another size or chain (question 1 or 2)']);
    expect(changes({ ...words, noChain: 'impossible' })).toEqual(['2 Chain: another chain (question 2)']);
    expect(changes({ ...words, noChain: 'coming' })).toEqual([]);
    const answers = (more: PlanWords) => planRows(nothingSharp, (name) => name, more).map(({ answer }) => answer);
    expect(answers(words).slice(2, 7)).toEqual(Array(5).fill('nothing is sharp'));
    expect(answers({ ...words, noChain: 'impossible' }).slice(2, 7)).toEqual(Array(5).fill('not without a chain'));
  });
});

describe('what makes an extension', () => {
  it.each([
    [0, [], 'lens alone'],
    [45.3, [], 'lens + 48 mm of rings'],
    [145, [], 'lens + bellows'],
    [900, [], 'longer than the bellows: another lens'],
    [15, [20], 'lens + 20 mm of your rings'],
    [27, [13, 21, 31], 'lens + 31 mm of your rings'],
    [45.3, [20], 'longer than your rings: bellows, or another lens'],
  ] as const)('%s mm, of rings %j', (extension, own, words) => {
    expect(extensionInWords(extension, own)).toBe(words);
  });
});
