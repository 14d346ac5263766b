import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { rigPositions } from '#core/rig/positions.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { aboutSubject } from './around-subject.ts';
import { sideViewLayout, type SideViewPlan } from './layout.ts';
import type { SideViewChain } from './side-view.ts';

const positions = rigPositions(assembleRig([camera, ring(24), on(lens50, { at: 0.15 })]));
const around = { name: 'flight-distance' as const, radius: 40, words: ['flight distance 40 mm'] };
const handle = {
  at: 'around' as const,
  name: 'flight-distance' as const,
  label: 'Circle',
  value: 40,
  range: { least: 5, most: 1000 },
  onmove: () => undefined,
  onstep: () => undefined,
};

const layoutOf = (chain: Partial<SideViewChain>, changed: Partial<SideViewPlan> = {}) =>
  sideViewLayout({
    box: { width: 695, height: 450, text: 14.5, small: 12.3 },
    title: 'Room',
    chains: [{ positions, around, hidesSky: true, ...chain }],
    shown: { about: aboutSubject },
    handles: [handle],
    ...changed,
  });
const rounding = { absolute: 1e-9, because: 'rounding' };

describe('a circle about the subject', () => {
  it('is taken hold of at its radius from the sharp plane, towards the lens', () => {
    const { grips, frame, chains } = layoutOf({});
    expect(grips[0]!.x - chains[0]!.sharp!.x).toEqual(closeTo(40 * frame.pixelsPerMillimetre, rounding));
    expect(grips[0]!.y).toBe(chains[0]!.place.axisY);
  });

  it('says what it is', () => {
    const { chains } = layoutOf({});
    expect(chains[0]!.labels.map(({ text }) => text)).toContain('flight distance 40 mm');
  });

  it('is neither drawn nor taken hold of where nothing is sharp in front of the lens', () => {
    const near = rigPositions(assembleRig([camera, on({ ...lens50, registerDistance: 46.5 })]));
    const { chains, grips } = layoutOf({ positions: near });
    expect(chains[0]!.strokes.map(({ key }) => key)).not.toContain('around');
    expect(grips).toEqual([undefined]);
  });

  it('stays about its subject while a hand moves the camera of chains that are aligned at the subject', () => {
    const other = rigPositions(assembleRig([camera, ring(60), on(lens50, { at: 0.15 })]));
    const before = layoutOf({}, { align: 'subject' });
    const during = layoutOf({ positions: other }, { align: 'subject', held: before.frame });
    expect(during.chains[0]!.sharp!.x).toEqual(closeTo(before.chains[0]!.sharp!.x, rounding));
    expect(during.frame.sensorX[0]).not.toBe(before.frame.sensorX[0]);
  });
});

describe('the sky that a lens hides', () => {
  it('is drawn from the middle of the subject to both sides of the rim', () => {
    const { chains, frame } = layoutOf({});
    const hidden = chains[0]!.strokes.find(({ key }) => key === 'hidden sky')!;
    const { foremost, radius } = positions.parts.at(-1)!;
    const across = (positions.sharpPlane! - foremost) * frame.pixelsPerMillimetre;
    const half = radius * frame.pixelsPerMillimetre;
    expect(hidden.path).toContain(`l${across.toFixed(1)} ${half.toFixed(1)}`);
    expect(hidden.path).toContain(`l${across.toFixed(1)} ${(-half).toFixed(1)}`);
  });
});
