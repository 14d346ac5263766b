import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { barsLayout, inMicrometres, leverPlaces, turnAsDrawn, type Bar } from './lever.ts';

const given = {
  focalLength: 50,
  magnification: 1,
  principalSeparation: -4,
  entrancePupilDistance: 95,
  pivot: 'sensor',
} as const;
const rounding = { absolute: 1e-9, because: 'rounding' };

describe('the places of the lever', () => {
  it('are counted from H: subject, H′, sensor, and the pupil so far from the subject', () => {
    expect(leverPlaces(given)).toEqual({ sensor: -96, rear: 4, pupil: 5, subject: 100, pivot: -96, lever: 196 });
    expect(leverPlaces({ ...given, pivot: 'entrance-pupil' })).toMatchObject({ pivot: 5, lever: 95 });
  });
});

describe('a turn as it is drawn', () => {
  it('keeps every end within its room, and says how many times too large it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-7, max: 0.5, noNaN: true }),
        fc.array(fc.record({ reach: fc.double({ min: -900, max: 900, noNaN: true }), room: fc.nat({ max: 400 }) }), {
          minLength: 1,
          maxLength: 3,
        }),
        (turn, ends) => {
          const { angle, words } = turnAsDrawn(turn, ends);
          for (const { reach, room } of ends) {
            // An end at the pivot is taken to be a pixel away.
            expect(Math.tan(angle) * Math.max(1, Math.abs(reach))).toBeLessThanOrEqual(Math.max(4, room) + 1e-9);
          }
          const times = Number(/×(.*)$/.exec(words)?.[1] ?? NaN);
          if (!Number.isNaN(times))
            expect(times).toEqual(closeTo(angle / turn, { relative: 0.06, because: 'two figures' }));
          else if (words === 'turn not to scale') expect(angle / turn).toBeLessThanOrEqual(1.05);
          else expect(angle / turn).toBeGreaterThan(2000);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });
});

describe('the bars of the streaks', () => {
  const bar = (name: Bar['name'], streak: number): Bar => ({ name, word: name.slice(0, 8), streak });
  const bars = [bar('turning.motion-blur', 0.03), bar('sideways.motion-blur', 0.01), bar('motion-blur', 0.032)];
  const size = { width: 600, top: 200, bottom: 380, text: 14.5, small: 12.3 };

  it('are as long as their streaks, against the circle of confusion', () => {
    const { rows, left, perMillimetre, circle } = barsLayout(
      { bars, circleOfConfusion: 0.02, pixelPitch: 0.006 },
      size,
    );
    for (const { end, streak, isOver } of rows) {
      expect(end - left).toEqual(closeTo(streak * perMillimetre, rounding));
      expect(isOver).toBe(streak > 0.02);
    }
    expect(circle! - left).toEqual(closeTo(0.02 * perMillimetre, rounding));
  });

  it('keep their numbers on the sheet, whatever the streak', () => {
    for (const streak of [0, 1e-6, 0.03, 4, 900]) {
      for (const held of [undefined, 4000]) {
        const layout = barsLayout(
          { bars: [bar('motion-blur', streak)], circleOfConfusion: 0.02, pixelPitch: 0.006 },
          size,
          held,
        );
        const [row] = layout.rows;
        expect(row!.end).toBeLessThanOrEqual(layout.right);
        expect(row!.valueX).toBeLessThan(layout.right);
        expect(row!.y).toBeLessThan(size.bottom);
        expect(layout.strip).not.toMatch(/NaN/);
      }
    }
  });

  it('are crossed by the line of c, and their numbers are not', () => {
    for (const width of [330, 600]) {
      for (const streak of [0, 5e-5, 0.004, 0.009, 0.02, 0.03, 4]) {
        const given = { bars: [bar('subject.motion-blur', streak)], circleOfConfusion: 0.02, pixelPitch: 0.006 };
        const { rows, circle, circleLine } = barsLayout(given, { ...size, width });
        if (circle === undefined) continue;
        const [{ y, value, valueX, anchor }] = rows as [(typeof rows)[number]];
        const from = anchor === 'start' ? valueX : valueX - textWidth(value, size.text);
        const isCrossed = from < circle && circle < from + textWidth(value, size.text);
        if (isCrossed)
          expect(circleLine, `${streak} on ${width}`).toContain(`V${y - 0.6 * size.text}m0 ${1.2 * size.text}V`);
      }
    }
    const under = { bars: [bar('subject.motion-blur', 0)], circleOfConfusion: 0.02, pixelPitch: 0.006 };
    expect(barsLayout(under, { ...size, width: 330 }).circleLine.match(/m/g)).toHaveLength(1);
    expect(barsLayout({ bars, circleOfConfusion: 0.02, pixelPitch: 0.006 }, size).circleLine).not.toContain('NaN');
  });

  it('say of next to nothing that it is', () => {
    expect(inMicrometres('motion-blur', 5e-5)).toMatch(/^under/);
    expect(inMicrometres('motion-blur', 0.02)).toMatch(/^20/);
  });
});
