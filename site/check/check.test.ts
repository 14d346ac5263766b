import { describe, expect, it } from 'vitest';
import { checkedAnswers, givenIn, readBoth, readWritten, type Meant } from './check.ts';
import { grounds } from './engine.ts';

const read = (text: string, meant: Record<number, Meant> = {}) => readWritten({ text, meant });
const check = (have: string, found: string) => {
  const read = readBoth({ text: have, meant: {} }, { text: found, meant: {} });
  return checkedAnswers(read.have, read.found, grounds);
};

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
    // 6960/(2 × 22.3); 22.3/6960; 8256/(2 × 35.9).
    ['6960 pixels on 22.3 mm', 'Nyquist 156', 'nyquist-frequency', 'right'],
    ['6960 px across 22.3 mm', 'pixel pitch 3.2 µm', 'pixel-pitch', 'right'],
    ['8256 px across 35.9 mm', 'Nyquist 115 lp/mm', 'nyquist-frequency', 'right'],
    ['24 MP', 'Nyquist 83.3', 'nyquist-frequency', 'right'],
    ['24 MP', 'Nyquist 128', 'nyquist-frequency', 'cannot'],
    ['24 MP', 'pixel pitch 3.9 µm', 'pixel-pitch', 'cannot'],
    ['24 MP APS-C', 'pixel pitch 3.9 µm', 'pixel-pitch', 'cannot'],
    ['24 MP, crop factor 1.5', 'pixel pitch 4 µm', 'pixel-pitch', 'right'],
    ['24 MP, sensor 17.3 mm wide', 'pixel pitch 3.06 µm', 'pixel-pitch', 'cannot'],
    // 1.4 × 1; 3.5 (1.4 + 1.4).
    ['1.4x converter, 100 mm macro 1:1', 'm 1.4', 'magnification', 'right'],
    ['2x converter, 100 mm macro 1:1', 'm 2', 'magnification', 'right'],
    ['2x converter, 100 mm, 1:1', 'm 2', 'magnification', 'right'],
    ['2x converter, 100 mm, 1:1', 'm 1.5', 'magnification', 'cannot'],
    ['2x converter, 100 mm, 1:1, f/4', 'effective f-number 16', 'effective-f-number', 'right'],
    ['2x converter, 100 mm, 1:1, f/4', 'effective f-number 12', 'effective-f-number', 'right'],
    ['2x converter, 100 mm macro at 1:1, f/4', 'effective f/16', 'effective-f-number', 'right'],
    ['1.4x converter, 180 mm macro at 1:1, f/3.5', 'effective f/9.8', 'effective-f-number', 'right'],
    ['1.4x converter, 180 mm macro at 1:1, f/3.5', 'effective f/7', 'effective-f-number', 'slip'],
    ['1.4x converter, 180 mm macro at 1:1', 'm 1', 'magnification', 'slip'],
    ['100 mm, 1:1, f/8, 12 mm ring', 'm 1.12', 'magnification', 'right'],
    // 10 × 105/200; 10 × 180/200; 10/0.56.
    ['10x objective on 105 mm lens', 'm 5.25', 'magnification', 'right'],
    ['10x objective designed for 200 mm on a 105 mm lens', 'm 5.25', 'magnification', 'right'],
    ['10x objective on a 105 mm lens', 'm 10', 'magnification', 'slip'],
    ['10x objective on a 180 mm lens', 'm 10', 'magnification', 'cannot'],
    ['10x/0.25 objective, tube lens 180 mm', 'effective f/18', 'effective-f-number', 'right'],
    ['10x/0.28 objective on a 200 mm lens at f/4', 'effective f/17.9', 'effective-f-number', 'right'],
    // (44 + 10 + 30)/35 − 1.
    ['28 mm reversed, register 44, ring 4', 'm 1.9', 'magnification', 'cannot'],
    ['35 mm lens reversed, register 44 mm, ring 10 mm, h 30 mm', 'm 1.4', 'magnification', 'right'],
    ['300 mm, +2 D, f/8', 'effective f/8', 'effective-f-number', 'right'],
    ['f/8 at 1:1', 'lost 1 stop', 'light-loss', 'slip'],
    ['f/11 at 2:1', 'lost 1.58 stops', 'light-loss', 'slip'],
    ['m 1, f/8', 'depth 0.96 mm', 'depth-of-field', 'cannot'],
    ['m 1', 'field height 15.6 mm', 'field-height', 'cannot'],
    ['beetle 12 mm fills half the frame', 'm 1.5', 'magnification', 'right'],
    ['beetle 12 mm fills half the frame', 'm 0.98', 'magnification', 'cannot'],
    ['coin 23 mm fills the frame, sensor 23.5 x 15.6 mm', 'm 1.02', 'magnification', 'right'],
    // 18/11; 18/(11 × 2); 40 × 2/16.
    ['GN 18, f/11', '1.64 m', 'flash-distance', 'right'],
    ['GN 18, f/11', 'distance 82 cm', 'flash-distance', 'slip'],
    ['GN 18, f/11, m 1', 'distance 82 cm', 'flash-distance', 'right'],
    ['GN 40, ISO 400, f/16', '5 m', 'flash-distance', 'right'],
    ['subject depth 6 mm, m 1, f/5.6, overlap 30%', 'frames', 'frame-count', 'worked-out'],
    ['keeper share 20 %', 'frames', 'keeper-frames', 'worked-out'],
  ])('of a few words only: %s → %s', (have, found, asks, verdict) => {
    expect(check(have, found)).toMatchObject([{ asks, verdict }]);
  });

  it('say what was taken, where nothing was said', () => {
    const of = (have: string, found: string) => check(have, found)[0]!;
    expect(of('24 MP', 'Nyquist 83.3').working?.taken).toContain('the sensor is 36 mm wide');
    expect(of('24 MP', 'pixel pitch 6 µm').words).toBe('If the sensor is 36 mm wide: nothing was said of it.');
    expect(of('24 MP', 'Nyquist 128').words).toMatch(
      /^Only if the sensor is 36 mm wide it is 83\.3.lp\/mm, and nothing/,
    );
    expect(of('24 MP full frame', 'pixel pitch 6 µm').words).toMatch(/^What you have says so already/);
    expect(of('10x objective on 105 mm lens', 'm').working?.taken).toEqual([
      'the objective is made for a tube lens of 200 mm',
    ]);
    expect(of('2x converter, 100 mm, 1:1', 'm 2').words).toContain('“1:1” is taken for what the lens gives by itself.');
    expect(of('2x converter, 100 mm, 1:1, f/4', 'effective f-number').working?.taken).toContain(
      '“1:1” is taken for all of it together',
    );
    expect(of('f/8, 1:1', 'effective f/20').words).toMatch(/^With what is taken here it is 25.% too large/);
    expect(of('f/8, 1:1, P 1', 'effective f/20').words).toMatch(/^It is 25.% too large/);
    expect(of('m 1', 'effective f/16').words).toBe('For the effective f-number the f-number must be known too.');
    expect(of('28 mm reversed, register 44, ring 4', 'm').words).toMatch(
      /the front principal depth must be known too\.$/,
    );
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
