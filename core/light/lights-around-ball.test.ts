import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ballIlluminance } from './ball-illuminance.ts';
import { lightsAroundBall } from './lights-around-ball.ts';
import { length } from './vector.ts';

const given = { sourceSize: 60, flashDistance: 300, ballRadius: 0.8, luminance: 2000, lightAngle: Math.PI / 4 };
const aFew = { relative: 1e-12, because: 'a few roundings' } as const;

describe('lights round a ball', () => {
  it('stand the distance from its nearest point, to the left of the camera, and face its centre', () => {
    const [light] = lightsAroundBall(given, 'one');
    expect(length(light!.centre)).toEqual(closeTo(300.8, aFew));
    expect(light!.centre[0]).toBeLessThan(0);
    expect(light!.centre[2]).toEqual(closeTo(-light!.centre[0], aFew));
    expect(light!.facing[0]).toEqual(closeTo(-light!.centre[0] / 300.8, aFew));
  });

  it('light both sides alike where there are two, or a ring', () => {
    for (const arrangement of ['two', 'ring'] as const) {
      const lights = lightsAroundBall({ ...given, sourceSize: 160, flashDistance: 60 }, arrangement);
      const [left, right] = [-1, 1].map((side) => ballIlluminance(lights, given, [side, 0, 1]));
      expect(left).toEqual(closeTo(right!, aFew));
    }
  });

  it('give a ring three quarters of the light of its disc, far away', () => {
    const far = { ...given, flashDistance: 20000, lightAngle: 0 };
    const [ring, disc] = (['ring', 'one'] as const).map((one) =>
      ballIlluminance(lightsAroundBall(far, one), far, [0, 0, 1]),
    );
    expect(ring! / disc!).toEqual(closeTo(0.75, { relative: 1e-5, because: 'the limit is approached as (S_w/2d)²' }));
  });

  it('are refused at no distance, and with a hole as wide as themselves', () => {
    expect(() => lightsAroundBall({ ...given, flashDistance: 0 }, 'one')).toThrow(OutOfRange);
    const [disc] = lightsAroundBall(given, 'one');
    expect(() => ballIlluminance([{ ...disc!, hole: 60 }], given, [0, 0, 1])).toThrow(OutOfRange);
  });
});
