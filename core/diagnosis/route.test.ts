import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airy, assumptions, by, formulas, made, rings, roads } from '#tests/support/few-roads.ts';
import { reworked, routesFrom } from './route.ts';

const rounding = { relative: 1e-9, because: 'rounding' };

const first = (to: QuantityName, given: Parameters<typeof routesFrom>[0] = rings, setUps: readonly string[] = []) =>
  routesFrom(given, roads, setUps).get(to)?.[0];

describe('a route', () => {
  it('goes from formula to formula, and knows what it uses, takes for granted and passes', () => {
    const route = first('airy-diameter')!;
    expect(route.value).toEqual(closeTo(airy, rounding));
    expect(route.steps.map(({ gives }) => gives)).toEqual(['magnification', 'effective-f-number', 'airy-diameter']);
    expect(route.steps.map(({ value }) => Number(value.toPrecision(4)))).toEqual([0.72, 13.76, 0.01846]);
    expect(route.assumed.map(({ quantity }) => quantity).sort()).toEqual([
      'focus-magnification',
      'pupil-magnification',
      'wavelength',
    ]);
    expect([...route.uses].sort()).toEqual(['extension', 'f-number', 'focal-length']);
    expect(route.known).toMatchObject({ magnification: 0.72, 'focal-length': 50, wavelength: 0.00055 });
    expect(route.known['airy-diameter']).toBe(route.value);
  });

  it('to what was given is that number, and to what was taken that assumption, however else it could be had', () => {
    const given = routesFrom({ ...rings, magnification: 1, 'sensor-width': 23.5 }, roads);
    expect(given.get('magnification')).toEqual([
      { to: 'magnification', value: 1, steps: [], assumed: [], known: { magnification: 1 }, uses: ['magnification'] },
    ]);
    expect(given.get('sensor-width')).toMatchObject([{ value: 23.5, assumed: [], uses: ['sensor-width'] }]);
    expect(first('wavelength')).toMatchObject({ value: 0.00055, steps: [], uses: [], assumed: [assumptions[3]] });
    expect(first('field-width', { ...rings, magnification: 1 })!.value).toBe(36);
  });

  it('goes backwards where nothing leads forwards, from what was given alone', () => {
    const route = first('extension', { magnification: 0.72, 'focal-length': 50 })!;
    expect(route.value).toEqual(closeTo(36, rounding));
    expect(route.steps.map(({ gives, by: { id } }) => [id, gives])).toEqual([
      ['magnification-from-extension', 'extension'],
    ]);
    // A field 50 mm wide is m = 0.72, had backwards; what follows from that goes on forwards.
    expect(first('effective-f-number', { 'field-width': 50, 'f-number': 8 })!.value).toEqual(closeTo(13.76, rounding));
    // Where rings say what m is, the effective f-number does not say it once more.
    const rung = { 'focal-length': 50, extension: 36, 'f-number': 8, 'effective-f-number': 16 };
    expect(
      routesFrom(rung, roads)
        .get('magnification')!
        .map(({ value }) => value),
    ).toEqual([0.72]);
    expect(first('magnification', { 'f-number': 8, 'effective-f-number': 16 })!.value).toEqual(closeTo(1, rounding));
    // The same m, worked out, leads back to no ring.
    expect(first('extension', { 'field-width': 50, 'focal-length': 50 })).toBeUndefined();
  });

  it('takes a formula for a set-up where that is spoken of, and leaves one out where it does not hold', () => {
    const reversed = by(
      'turned',
      made('effective-f-number', ['f-number'], ({ fNumber }) => 3 * fNumber!),
      {
        setUp: 'reversed lens',
      },
    );
    const all = { ...roads, formulas: [...formulas, reversed] };
    const value = (given: object, setUps: readonly string[] = []) =>
      routesFrom({ ...rings, ...given }, all, setUps)
        .get('effective-f-number')
        ?.map((route) => Number(route.value.toFixed(6)));
    expect(value({})).toEqual([13.76]);
    expect(value({}, ['reversed lens'])).toEqual([24]);
    expect(value({ 'converter-factor': 2 })).toBeUndefined();
    expect(value({}, ['close-up lens'])).toEqual([13.76]);
  });

  it('is the better the more it uses, the less it takes and the shorter it is; four are kept', () => {
    const ways = [
      by(
        'by-nothing',
        made('working-distance', ['wavelength'], () => 1),
      ),
      by(
        'by-one',
        made('working-distance', ['focal-length'], () => 2),
      ),
      by(
        'by-two',
        made('working-distance', ['focal-length', 'extension'], () => 3),
      ),
      by(
        'by-two-and-one-taken',
        made('working-distance', ['focal-length', 'extension', 'wavelength'], () => 4),
      ),
      by(
        'by-two-steps',
        made('working-distance', ['magnification', 'focal-length'], () => 5),
      ),
      by(
        'by-none-but-more',
        made('working-distance', ['wavelength', 'sensor-width'], () => 6),
      ),
    ];
    const routes = routesFrom({ 'focal-length': 50, extension: 36 }, { ...roads, formulas: [...formulas, ...ways] });
    // Cost: 1 − 8; 1 + 3 − 8; 2 + 3 − 8; 1 − 4; and 1 + 3, 1 + 6, which are left off.
    expect(routes.get('working-distance')!.map(({ value }) => value)).toEqual([3, 4, 2, 5]);
  });

  it('never has two numbers for one quantity', () => {
    const twice = [
      by(
        'by-a-print',
        made('magnification', ['print-width'], ({ printWidth }) => printWidth! / 360),
      ),
      by(
        'of-both',
        made('working-distance', ['effective-f-number', 'field-width'], (known) => known.fieldWidth!),
      ),
    ];
    const routes = routesFrom({ ...rings, 'print-width': 360 }, { ...roads, formulas: [...formulas, ...twice] });
    expect(
      routes
        .get('magnification')!
        .map(({ value }) => value)
        .sort(),
    ).toEqual([0.72, 1]);
    const both = routes.get('working-distance')!;
    expect(both.length).toBeGreaterThan(0);
    for (const { known } of both) {
      expect(known['effective-f-number']).toEqual(closeTo(8 * (1 + known.magnification!), rounding));
      expect(known['field-width']).toEqual(closeTo(36 / known.magnification!, rounding));
    }
  });

  it('stops at what a formula refuses, and at what is not finite', () => {
    const none = [
      by(
        'refused',
        made('working-distance', ['f-number'], ({ fNumber }) => {
          throw new OutOfRange('f-number', fNumber!, 'less');
        }),
      ),
      by(
        'endless',
        made('flash-distance', ['f-number'], () => Infinity),
      ),
    ];
    const routes = routesFrom(rings, { ...roads, formulas: none });
    expect([routes.has('working-distance'), routes.has('flash-distance')]).toEqual([false, false]);
    const broken = [
      by(
        'broken',
        made('working-distance', ['f-number'], () => {
          throw new TypeError('broken');
        }),
      ),
    ];
    expect(() => routesFrom(rings, { ...roads, formulas: broken })).toThrow(TypeError);
  });

  it('is worked on from a number put in on the way, and from one it began with', () => {
    const route = first('airy-diameter')!;
    const marked = reworked(route, { 'effective-f-number': 8 })!;
    expect(marked.value).toEqual(closeTo((airy * 8) / 13.76, rounding));
    expect(marked.known['effective-f-number']).toBe(8);
    expect(marked.steps.map(({ value }) => Number(value.toPrecision(4)))).toEqual([0.72, 8, 0.01073]);
    expect(reworked(route, { extension: 50 })!.value).toEqual(closeTo((airy * 16) / 13.76, rounding));
    expect(reworked(route, { 'airy-diameter': 1 })!.value).toBe(1);
    expect(reworked(first('field-width')!, { magnification: 0 })).toBeUndefined();
  });
});
