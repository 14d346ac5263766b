import { describe, expect, it } from 'vitest';
import { checkedAnswers, givenIn, readWritten, type Meant } from './check.ts';
import { grounds } from './engine.ts';

const read = (text: string, meant: Record<number, Meant> = {}) => readWritten({ text, meant });
const check = (have: string, found: string) => checkedAnswers(read(have), read(found), grounds);

describe('answers', () => {
  it('are told one by one, in the order in which they were written, what is only asked for after them', () => {
    const told = check('50 mm, 36 mm ring, f/8', 'm 1.39, room 119 mm, N_w 19.1, depth 1.2 mm, field width');
    expect(told.map(({ asks, verdict }) => [asks, verdict])).toEqual([
      ['magnification', 'slip'],
      ['working-distance', 'right'],
      ['effective-f-number', 'right'],
      ['depth-of-field', 'off'],
      ['field-width', 'worked-out'],
    ]);
    expect(told[0]).toMatchObject({ title: 'A known slip', slipLesson: 'extension' });
    expect(told[2]?.title).toBe('Rightly worked on');
    expect(told[3]?.words).toContain('too large');
    expect(told[4]?.title).toBe('50\u202fmm');
  });

  it('come with a working whose equations hold, ending in the right number', () => {
    const [depth] = check('50 mm, 36 mm ring, f/8', 'depth 1.06 mm');
    const steps = depth?.working?.steps ?? [];
    expect(steps.at(-1)).toMatchObject({ gives: 'depth-of-field', formula: 'depth-of-field' });
    expect(steps.length).toBeGreaterThan(3);
    for (const { line, says } of steps) {
      expect(line).toHaveProperty('texts');
      expect(says).not.toBe('');
    }
  });

  it('are worked out for far subjects where it is an exposure and nothing says how near', () => {
    const [value] = check('f/8, 1/125 s', 'exposure value');
    expect(value).toMatchObject({ verdict: 'worked-out', title: expect.stringMatching(/^13/) as string });
    expect(value?.working?.steps[0]?.says).toContain('Far away');
  });

  it('say to within what they are right', () => {
    expect(check('50 mm, 36 mm ring', 'm 0.72')[0]?.words).toBe('As exactly as you wrote it.');
    expect(check('50 mm, 36 mm ring', 'm 0.713')[0]?.words).toMatch(/^To within 0\.97.%; exactly it is 0\.72×\.$/);
  });

  it('are sent to the lesson that knows the slip', () => {
    expect(check('50 mm, m 1', 'ring 100 mm')[0]).toMatchObject({ verdict: 'slip', slipLesson: 'extension' });
  });

  it.each([
    ['keeper share 10 %', 'frames 29', 'keeper-frames', 'right'],
    ['subject 3 mm deep, step 0.2 mm', 'frames 16', 'frame-count', 'right'],
    ['subject 3 mm deep, step 0.2 mm', 'frames 15', 'frame-count', 'slip'],
    ['10x/0.25 objective', 'effective f-number 20', 'effective-f-number', 'right'],
    ['10x objective, 36 mm sensor', 'field 3.6 mm', 'field-width', 'right'],
    ['diffuser 60 mm wide, 100 mm away', 'source angle 33.4°', 'source-angle', 'right'],
    ['100 mm macro at 1:1', 'light lost 2 stops', 'light-loss', 'right'],
    ['100 mm with 50 mm reversed', 'm 2', 'magnification', 'right'],
    ['100 mm with 50 mm reversed', 'm 0.5', 'magnification', 'slip'],
    ['50/1.8 reversed on 100/8', 'effective f-number 8', 'effective-f-number', 'right'],
    ['50 mm f/1.8 at f/8, m 1', 'effective f-number 16', 'effective-f-number', 'right'],
    ['200 mm lens, two 1.25 dioptre lenses', 'm 0.5', 'magnification', 'right'],
    ['50mm+25mm', 'm 0.5', 'magnification', 'right'],
    ['GN 32, 1 m, ISO 100', 'f/32', 'f-number', 'right'],
    ['36 x 24 mm, circle of confusion by the diagonal', 'c 0.0288 mm', 'circle-of-confusion', 'right'],
    ['24 megapixels full frame', 'pixel pitch 6 µm', 'pixel-pitch', 'right'],
    ['50 mm lens, 24 mm ring, f/8, subject 3 mm deep', 'step 1.9 mm', 'frame-step', 'cannot'],
    ['100 mm, f/4, 1:1', 'hole 25 mm', 'entrance-pupil', 'right'],
    ['near limit 0.5 mm, far limit 0.6 mm', 'depth 1.1 mm', 'depth-of-field', 'right'],
    ['50 mm lens at 0.15x, 24 mm ring', 'm 0.63', 'magnification', 'right'],
    ['50 mm lens at 0.15x, 24 mm ring', 'm 0.48', 'magnification', 'slip'],
    ['100 mm lens at 1:1, +2 dpt close-up lens', 'm 1.4', 'magnification', 'right'],
    ['50 mm, 36 mm ring, 2x converter, f/8', 'effective f-number 27.5', 'effective-f-number', 'right'],
    ['m 1, 2x converter', 'light lost 3.17 stops', 'light-loss', 'right'],
    ['2x converter, lens at 1:1', 'm 2', 'magnification', 'right'],
    ['50 mm lens on 2x converter with 24 mm ring between lens and converter', 'm 0.96', 'magnification', 'right'],
    ['50 mm lens on 2x converter with 24 mm ring between lens and converter', 'm 0.24', 'magnification', 'slip'],
    ['50 mm lens on 2x converter with 24 mm ring between converter and camera', 'm 0.24', 'magnification', 'right'],
    ['100 mm lens at infinity, two 2 dpt close-up lenses', 'm 0.4', 'magnification', 'right'],
    ['50 mm lens focused at 0.45 m, 24 mm ring', 'm 0.6', 'magnification', 'cannot'],
    ['50 mm, 36 mm ring, +4 dpt close-up lens', 'm 1', 'magnification', 'cannot'],
    ['APS-C, m 1', 'field width 23.5 mm', 'field-width', 'cannot'],
    ['APS-C, f/8, m 1', 'depth 0.43 mm', 'depth-of-field', 'cannot'],
    ['APS-C 1.6x crop, m 1', 'field 22.5 mm', 'field-width', 'right'],
    ['guide number 40, f/8, ISO 100', 'flash distance 5 m', 'flash-distance', 'right'],
    ['250 nm film, n 1.33, light 550 nm, two beams', 'film reflectance 3.0 %', 'film-reflectance', 'right'],
  ])('of a few words only: %s → %s', (have, found, asks, verdict) => {
    expect(check(have, found)).toMatchObject([{ asks, verdict }]);
  });

  it('cannot be told without what they need', () => {
    const [told] = check('f/8', 'room 100 mm');
    expect(told).toMatchObject({ verdict: 'cannot', title: 'Cannot be told' });
    expect(told?.words).toMatch(/must be known too\.$/);
    expect(check('', 'magnification')[0]?.verdict).toBe('cannot');
    expect(check('50 mm, 36 mm ring', '')).toEqual([]);
  });
});

describe('a correction', () => {
  it('makes a number another quantity', () => {
    const corrected = read('50 mm, 36 mm', { 1: 'working-distance' });
    expect(givenIn(corrected)).toEqual({ 'focal-length': 50, 'working-distance': 36 });
    expect(corrected.numbers[1]?.isSaid).toBe(true);
    expect(corrected.numbers[1]?.others).toContain('extension');
  });

  it('leaves a number out', () => {
    expect(givenIn(read('50 mm, 36 mm', { 1: 'left-out' }))).toEqual({ 'focal-length': 50 });
  });

  it('that does not fit is refused in words, and the number is not used', () => {
    const [number] = read('36 mm', { 0: 'depth-of-field' }).numbers;
    expect(number?.refusal).toBeUndefined();
    const [refused] = read('3000 mm', { 0: 'sensor-width' }).numbers;
    expect(refused).toMatchObject({
      isLeftOut: true,
      refusal: expect.stringContaining('Sensor width takes') as string,
    });
  });
});
