import { describe, expect, it } from 'vitest';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airy, families, family, formulas, rings, roads } from '#tests/support/few-roads.ts';
import { routesFrom, type Route } from './route.ts';
import { slipsOn } from './slips.ts';

const rounding = { relative: 1e-9, because: 'rounding' };

const slipsTo = (to: QuantityName, given: Parameters<typeof routesFrom>[0] = rings, known = families) => {
  const routes = routesFrom(given, roads);
  const route = routes.get(to)![0]!;
  return { route, slips: new Map(slipsOn(route, routes, known).map((slip) => [slip.id, slip])) };
};

describe('slips', () => {
  it('are those that a family knows of the same sum, in its words, and none that comes out right', () => {
    const { slips } = slipsTo('magnification');
    expect(slips.get('extension/rings/upside-down')).toEqual({
      id: 'extension/rings/upside-down',
      value: 50 / 36,
      because: expect.stringMatching(/^Upside down: 36.mm\.$/) as string,
      tier: 1,
    });
    expect([...slips.keys()].filter((id) => id.startsWith('extension/'))).toEqual(['extension/rings/upside-down']);
    expect([...slips.values()].every(({ value }) => Math.abs(value / 0.72 - 1) > 1e-3)).toBe(true);
  });

  it('are none of a family that asks something else, asks it by other formulas, or of what nobody knows', () => {
    const of = (change: Partial<typeof family>) =>
      [
        ...slipsTo('magnification', rings, [{ lesson: 'extension', family: { ...family, ...change } }]).slips.keys(),
      ].filter((id) => id.startsWith('extension/'));
    expect(of({})).toHaveLength(1);
    expect(of({ asks: 'field-width' })).toEqual([]);
    expect(of({ working: [{ formula: formulas[1]!.formula } as never] })).toEqual([]);
    expect(of({ working: [] })).toEqual([]);
    expect(of({ id: 'unknown', givens: () => ({ 'guide-number': 12 }) })).toEqual([]);
    expect(of({ id: 'other-answer', answer: () => 0.5 })).toEqual([]);
  });

  it('are known, too, where a family speaks of what the way does not, if that goes with it', () => {
    const beside = (name: QuantityName) => {
      const { slips } = slipsTo('magnification', rings, [
        {
          lesson: 'beside',
          family: {
            ...family,
            id: name,
            mistakes: family.mistakes.slice(0, 1),
            givens: () => ({ 'focal-length': 1, extension: 1, [name]: 1 }),
          },
        },
      ]);
      return slips.has(`beside/${name}/upside-down`);
    };
    // The sensor is 36 mm wide, and the field follows from m; of a guide number nobody knows.
    expect([beside('sensor-width'), beside('field-width'), beside('guide-number')]).toEqual([true, true, false]);
  });

  it('are carried on from a number on the way', () => {
    const { slips } = slipsTo('airy-diameter');
    const carried = slips.get('extension/rings/upside-down/carried-on')!;
    expect(carried.value).toEqual(closeTo((airy * (1 + 50 / 36)) / 1.72, rounding));
    expect(carried.tier).toBe(2);
    expect(carried.because).toMatch(/^The slip is in the magnification: with .* this number comes out\. Upside down/);
  });

  it('are the marked f-number for the effective one, in words for where it is meant', () => {
    expect(slipsTo('airy-diameter').slips.get('marked-for-effective')).toMatchObject({
      value: closeTo((airy * 8) / 13.76, rounding),
      because: expect.stringMatching(/^That takes the marked f-number, f\/8, where/) as string,
      tier: 2,
    });
    expect(slipsTo('effective-f-number').slips.get('marked-for-effective')).toMatchObject({
      value: 8,
      because: expect.stringMatching(/^That is the marked f-number, f\/8\./) as string,
    });
    expect(slipsTo('magnification').slips.has('marked-for-effective')).toBe(false);
  });

  it('are points and units in the wrong place: ten times and a tenth, inches for lengths alone', () => {
    const { slips } = slipsTo('magnification');
    for (const power of [10, 100, 1000]) {
      expect(slips.get(`${power}-times`)!.value).toEqual(closeTo(0.72 * power, rounding));
      expect(slips.get(`one-in-${power}`)!.value).toEqual(closeTo(0.72 / power, rounding));
      expect(slips.get(`${power}-times`)!.because).toBe(
        `The figures are right, but ${power} times too large: look for a decimal point, or a unit.`,
      );
      expect(slips.get(`one-in-${power}`)!.because).toContain(`${power} times too small`);
    }
    expect(slips.has('25.4-times')).toBe(false);
    const field = slipsTo('field-width').slips;
    expect(field.get('25.4-times')!.value).toEqual(closeTo(50 * 25.4, rounding));
    expect(field.get('one-in-25.4')!.because).toContain('millimetres and inches');
    expect(field.get('100-times')!.because).toContain('centimetres and metres');
    expect(field.get('double')).toMatchObject({ value: closeTo(100, rounding), tier: 2 });
    expect(field.get('half')).toMatchObject({ value: closeTo(25, rounding), tier: 2 });
  });

  it('are upside down of a ratio alone, one frame too few of frames, and no powers of stops', () => {
    const of = (to: QuantityName, value: number) => {
      const route: Route = { to, value, steps: [], assumed: [], known: { [to]: value }, uses: [] };
      return new Map(slipsOn(route, new Map(), []).map((slip) => [slip.id, slip.value]));
    };
    expect(of('magnification', 0.5).get('upside-down')).toBe(2);
    expect(of('magnification', 0).size).toBe(0);
    expect(of('field-width', 50).has('upside-down')).toBe(false);
    for (const to of ['f-number', 'contrast', 'iso'] as const) expect(of(to, 0.5).has('upside-down'), to).toBe(false);
    expect(of('frame-count', 21).get('one-missing')).toBe(20);
    expect(of('field-width', 21).has('one-missing')).toBe(false);
    expect([...of('light-loss', 2).keys()]).toEqual(['double', 'half']);
  });

  it('are another sensor, and centimetres for millimetres in what was given', () => {
    const { slips } = slipsTo('field-width');
    expect(slips.get('sensor-23.5')).toMatchObject({ value: closeTo(23.5 / 0.72, rounding), tier: 3 });
    expect(slips.get('sensor-23.5')!.because).toMatch(/a sensor 23\.5.mm wide\.$/);
    expect(slips.get('sensor-23.5')!.instead).toBe('sensor-width');
    const onFilm = slipsTo('field-width', { ...rings, 'sensor-width': 36 }).slips;
    expect(onFilm.get('sensor-23.5')!.because).toMatch(/a sensor 23\.5.mm wide; here it is 36.mm/);
    expect(slips.has('sensor-36')).toBe(false);
    expect(slips.get('extension-ten-times')).toMatchObject({ value: closeTo(5, rounding), tier: 3 });
    expect(slips.get('extension-a-tenth')!.value).toEqual(closeTo(500, rounding));
    expect(slips.get('focal-length-a-tenth')!.because).toMatch(/if the focal length is 5.mm; it is 50.mm/);
    const small = slipsTo('field-width', { ...rings, 'sensor-width': 23.5 }).slips;
    expect([small.has('sensor-23.5'), small.get('sensor-36')!.value]).toEqual([false, closeTo(50, rounding)]);
    const given = slipsTo('field-width', { magnification: 1, 'sensor-width': 36 }).slips;
    expect([...given.keys()].filter((id) => id.startsWith('sensor-width'))).toEqual([]);
    expect(slipsTo('magnification').slips.has('sensor-23.5')).toBe(false);
  });
});
