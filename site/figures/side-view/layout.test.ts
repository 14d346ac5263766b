import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { rigPositions } from '#core/rig/positions.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { pathPoints } from '#tests/support/path-points.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { sideViewPlans } from '#tests/support/side-view-plans.ts';
import { isWithin, meet } from '../sheet/boxes.ts';
import { sideViewLayout, type SideViewPlan } from './layout.ts';
import type { SideViewChain } from './side-view.ts';

const chain = (extension: number): SideViewChain => ({
  positions: rigPositions(assembleRig([camera, ring(extension), on(lens50, { at: 0.15 })])),
  dimensions: [
    { name: 'working-distance', value: '107 mm' },
    { name: 'subject-distance', value: '129 mm' },
    { name: 'focus-distance', value: '207 mm' },
  ],
});

const plan = (chains: readonly SideViewChain[], changed: Partial<SideViewPlan> = {}): SideViewPlan => ({
  box: { width: 695, height: 450, text: 14.5, small: 12.3 },
  title: 'Rings on a lens, from above',
  chains,
  shown: {},
  handles: [],
  ...changed,
});

describe('the layout of a side view', () => {
  it('never has words or marks on each other, nor outside the sheet', () => {
    fc.assert(
      fc.property(sideViewPlans, (any) => {
        const { boxes } = sideViewLayout(any);
        const sheet = { left: 0, top: 0, right: any.box.width, bottom: any.box.height };
        for (const [index, one] of boxes.entries()) {
          if (!isWithin(one.box, sheet)) expect.fail(`${one.what} leaves the sheet: ${JSON.stringify(one.box)}`);
          for (const other of boxes.slice(index + 1)) {
            if (meet(one.box, other.box)) expect.fail(`${one.what} on ${other.what}`);
          }
        }
      }),
      { seed: 8, numRuns: 1000 },
    );
  });

  it('has no word across the outline of a part, its glass, the subject or the sensor, but for a caution', () => {
    let count = 0;
    fc.assert(
      fc.property(sideViewPlans, (any) => {
        for (const { labels, outlines, strokes, sharp, sensor, place } of sideViewLayout(any).chains) {
          const upright = (x: number, half: number) => ({
            left: x,
            right: x,
            top: place.axisY - half,
            bottom: place.axisY + half,
          });
          const lines = [
            ...outlines.flatMap(({ edges }) => edges),
            ...strokes.flatMap(({ box }) => box ?? []),
            ...(sharp ? [upright(sharp.x, sharp.half)] : []),
            upright(place.sensorX, sensor.half),
          ];
          for (const { text, box } of labels.filter(({ className }) => className !== 'caution')) {
            count++;
            if (lines.some((line) => meet(box, line))) expect.fail(`${text} crosses`);
          }
        }
      }),
      { seed: 9, numRuns: 1000 },
    );
    expect(count).toBeGreaterThan(5000);
  });

  it('has the edges of an outline where that is drawn', () => {
    for (const reversed of [false, true]) {
      const lens = on({ ...lens50, rearProtrusion: 9 }, { reversed });
      const positions = rigPositions(assembleRig([camera, ring(24), lens]));
      const { outlines } = sideViewLayout(plan([{ positions }])).chains[0]!;
      for (const { path, edges } of outlines) {
        for (const { x, y } of pathPoints(path)) {
          const isOnEdge = edges.some((edge) => meet(edge, { left: x, right: x, top: y, bottom: y }));
          expect(isOnEdge, `(${x}, ${y})`).toBe(true);
        }
      }
    }
  });

  it('has one scale both ways, and everything where it is', () => {
    const { frame, chains } = sideViewLayout(plan([chain(24)]));
    const { place, outlines, sharp } = chains[0]!;
    const { parts, sharpPlane, field } = chain(24).positions;
    const pixels = frame.pixelsPerMillimetre;
    const rounding = { absolute: 1e-9, because: 'rounding' };
    expect(place.sensorX - sharp!.x).toEqual(closeTo(sharpPlane! * pixels, rounding));
    expect(2 * sharp!.half).toEqual(closeTo(field!.width * pixels, rounding));
    expect(place.sensorX - outlines[2]!.left).toEqual(closeTo(parts[2]!.to * pixels, rounding));
  });

  it('stands two chains above each other at one scale, aligned where that is asked for', () => {
    const chains = [chain(12), chain(60)];
    const atSensor = sideViewLayout(plan(chains));
    expect(new Set(atSensor.frame.sensorX).size).toBe(1);
    expect(atSensor.rule).toMatchObject({ direction: -1, zero: atSensor.frame.sensorX[0] });
    const atSubject = sideViewLayout(plan(chains, { align: 'subject' }));
    const [one, other] = atSubject.chains;
    expect(one!.sharp!.x).toBe(other!.sharp!.x);
    expect(atSubject.rule).toMatchObject({ direction: 1, zero: one!.sharp!.x });
    expect(other!.place.axisY).toBeGreaterThan(one!.place.axisY + 100);
  });

  it('leaves out the least important dimensions where the sheet is low', () => {
    const low = sideViewLayout(plan([chain(24)], { box: { width: 695, height: 150, text: 14.5, small: 12.3 } }));
    const names = low.chains[0]!.dimensions.flatMap(({ spans }) => spans.map(({ name }) => name));
    expect(names).toEqual(['working-distance']);
  });

  it('breaks the axis for a subject that is too far, and says so; the rule begins at the break', () => {
    const { chains, rule } = sideViewLayout(plan([{ ...chain(24), positions: far }]));
    expect(chains[0]!.place.breakX).not.toBeNull();
    expect(chains[0]!.labels.map(({ text }) => text)).toContain('the axis is broken');
    expect(rule.from).toBe(chains[0]!.place.breakX);
  });

  it('keeps scale and places while a hand drags', () => {
    const before = sideViewLayout(plan([chain(24)]));
    const during = sideViewLayout(plan([chain(160)], { held: before.frame }));
    expect(during.frame.pixelsPerMillimetre).toBe(before.frame.pixelsPerMillimetre);
    expect(during.frame.sensorX).toEqual(before.frame.sensorX);
    expect(during.chains[0]!.place.axisY).toBe(before.chains[0]!.place.axisY);
  });

  it('prints a ratio only where it is laid out in millimetres', () => {
    expect(sideViewLayout(plan([chain(24)])).title).not.toHaveProperty('scale');
    const onPaper = { ...plan([]).box, onPaper: true };
    expect(sideViewLayout(plan([chain(24)], { box: onPaper })).title.scale).toBe('1:2');
  });

  it('says in words that the sharp plane is inside, or that nothing is sharp', () => {
    const words = (positions: SideViewChain['positions']) =>
      sideViewLayout(plan([{ positions }])).chains[0]!.labels.map(({ text }) => text);
    const deep = on({ ...lens50, frontPrincipalDepth: 120 });
    expect(words(rigPositions(assembleRig([camera, ring(72), deep])))).toContain('the sharp plane is inside the lens');
    const near = on({ ...lens50, registerDistance: 46.5 });
    expect(words(rigPositions(assembleRig([camera, near])))[0]).toMatch(/nothing can be sharp/);
  });
});

const far = rigPositions(assembleRig([camera, ring(1), on(lens50)]));
