import { render } from 'svelte/server';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { dimensionLabelBox, levelPitch, stackDimensions, type Span } from '#site/figures/dimension/stack.ts';
import { isWithin, meet, type Box } from '#site/figures/sheet/boxes.ts';
import { labelBox } from '#site/figures/sheet/labels.ts';
import { aboutSubject } from '#site/figures/side-view/around-subject.ts';
import { sideViewLayout } from '#site/figures/side-view/layout.ts';
import { bench } from '../bench.svelte.ts';
import Bench from './Bench.svelte';
import { chains } from './chains.ts';
import { dragged, drawnPlan } from './drawn-plan.ts';
import { frameLayout } from './frame-layout.ts';
import { later } from './later.ts';
import { lightLayout } from './light-layout.ts';
import { planAreas, type Area } from './plan-areas.ts';
import { plan } from './planned.svelte.ts';
import { isOpen, settledBy, type Question, type Thing } from './questions.ts';
import { fitting, slabLayout } from './slab-layout.ts';
import { subjects } from './subjects.ts';

beforeAll(async () => {
  chains.here = await import('./planned-chain.ts');
  later.here = (await import('./later-sheets.ts')).laterSheets;
});
afterEach(() => void bench.read(''));

/** A page's sheet on a wide and a narrow screen, in the hand, low, on the wall, on a phone's wall. */
const boxes = [
  { width: 695, height: 450, text: 14.5, small: 12.3 },
  { width: 670, height: 272, text: 14.5, small: 12.3 },
  { width: 390, height: 337, text: 12.5, small: 10.6 },
  { width: 844, height: 179, text: 14.5, small: 12.3 },
  { width: 1229, height: 514, text: 28.8, small: 28.8 },
  { width: 374, height: 631, text: 16, small: 16 },
];
const chainsTried = [
  'own',
  'bag',
  'crate',
  'body-36,ring-12,ring-24,ring-36,lens-90,close-up-4',
  'body-36,ring-36,converter-2,lens-50',
  'body-36,reversing-ring,lens-28:turned',
  'body-36,lens-90,coupling-ring,lens-50:turned',
  'body-23,bellows,lens-50',
  'body-36,lens-50,objective-4',
];
const questions = [1, 2, 3, 4, 5, 6, 7, 8] as const;

interface Named {
  readonly what: string;
  readonly box: Box;
}

const words = (name: Parameters<typeof bench.words>[0]) => bench.words(name);

/** Words of a panel's dimensions. */
const dimensioned = (spans: readonly Span[], y: number, outwards: 1 | -1, text: number, width: number): Named[] =>
  stackDimensions(spans, text, width).map((span) => ({
    what: span.name,
    box: dimensionLabelBox(span, y + outwards * span.level * levelPitch * text, text),
  }));

const said = (what: string, text: string, size: number, x: number, y: number): Named => ({
  what,
  box: labelBox(text, size, { x, y, anchor: 'start' }),
});

function inFrame(area: Area): Named[] {
  const { text, small } = area;
  const at = frameLayout(bench.inputs['frame-fill'], plan.givenFill, area);
  const m = fitting([`m ${words('magnification')}`, `m ${words('chain.magnification')}`], text, area.width - 10);
  const [from, to] = [at.centre.x - at.measured, at.centre.x + at.measured];
  const fill: Span = { name: 'frame-fill', letter: '', value: plan.fillSaid, from, to, fromY: at.centre.y };
  return [
    said('magnification', m, text, at.wordsX, at.wordsY),
    ...dimensioned([fill], at.frame.y + at.frame.height + 1.1 * small, 1, small, area.x + area.width),
  ];
}

function inSlabs(area: Area): Named[] {
  const { text, small } = area;
  const at = slabLayout(
    {
      subjectDepth: bench.inputs['subject-depth'],
      depthOfField: bench.number('depth-of-field', undefined),
      frameStep: bench.number('frame-step', 0),
      frameCount: bench.number('frame-count', 1),
      taken: bench.number('in-time.frame-count', 1),
    },
    area,
  );
  for (const path of [at.odd, at.even, at.lost, at.rest, at.mound, at.bar.path, at.one?.path ?? ''])
    expect(path).not.toMatch(/NaN|undefined|Infinity/);
  const width = area.x + area.width;
  const deep: Span = {
    name: 'subject-depth',
    letter: 'Z',
    value: words('subject-depth'),
    from: at.farX,
    to: at.nearX,
    fromY: at.bottom,
  };
  const one: Span[] = at.one
    ? [
        {
          name: 'depth-of-field',
          letter: 'T',
          value: words('depth-of-field'),
          ...at.one,
          fromY: at.top,
          beside: 'left',
        },
      ]
    : [];
  return [
    said('frames', fitting([plan.frames], text, area.width - 10), text, at.wordsX, at.wordsY),
    ...dimensioned(one, at.top - 0.6 * small, -1, small, width),
    ...dimensioned([deep], at.bottom + 1.1 * small, 1, small, width),
    said('bar', `${at.bar.length} mm`, small, at.left + 6, at.bar.y),
  ];
}

function inSide(area: Area): Named[] {
  const chain = drawnPlan();
  if (!chain) return [];
  const layout = sideViewLayout({
    box: area,
    title: 'The plan',
    chains: [chain],
    shown: { rays: ['cone'], about: aboutSubject },
    handles: dragged(),
  });
  const light = { flashDistance: bench.inputs['flash-distance'], sourceSize: bench.inputs['source-size'] };
  const lamp = lightLayout(light, layout, area, {
    light: plan.light,
    softness: [`${words('source-angle')} wide, from ${words('flash-distance')}`, `${words('source-angle')} wide`],
  });
  if (lamp) expect(lamp.beam + lamp.source + (lamp.broken ?? '')).not.toMatch(/NaN|Infinity/);
  const labels = lamp?.labels.map(({ text, box }) => ({ what: text, box })) ?? [];
  return [...layout.boxes, ...labels].map(({ what, box }) => ({
    what,
    box: {
      left: box.left + area.x,
      right: box.right + area.x,
      top: box.top + area.y,
      bottom: box.bottom + area.y,
    },
  }));
}

describe('the drawing of a plan', () => {
  it.each(Object.keys(subjects))(
    'of %s has no words on each other or off the sheet, whatever stands before it',
    (subject) => {
      const faults: string[] = [];
      for (const chain of chainsTried) {
        bench.read(`?subject=${subject}&question=8&chain=${chain}`);
        expect(bench.notices).toEqual([]);
        for (const box of boxes) {
          const areas = planAreas(box);
          const all = [...inFrame(areas.frame), ...inSlabs(areas.slabs), ...inSide(areas.side)];
          const sheet = { left: 0, top: 0, right: box.width, bottom: box.height };
          all.forEach((one, index) => {
            const where = `${chain} ${box.width} × ${box.height}`;
            if (Object.values(one.box).some((side) => !Number.isFinite(side)))
              faults.push(`${where}: ${one.what} nowhere`);
            if (!isWithin(one.box, sheet)) faults.push(`${where}: ${one.what} leaves the sheet`);
            for (const other of all.slice(index + 1))
              if (meet(one.box, other.box)) faults.push(`${where}: ${one.what} on ${other.what}`);
          });
        }
      }
      expect(faults).toEqual([]);
    },
  );

  /** What is dashed while a thing is undecided, as it stands in the markup. */
  const marks: Readonly<Partial<Record<Thing, RegExp>>> = {
    chain: /<g class="plan[^"]*\bopen-chain\b/,
    room: /<g class="plan[^"]*\bopen-room\b/,
    frame: /<path class="slab open\b/,
    stack: /<path class="rest open\b/,
    light: /<path class="source open\b/,
    softness: /<path class="beam open\b/,
  };

  it.each(questions)('has dashed what question %d has not settled yet, and nothing else', (question: Question) => {
    for (const setting of ['', 'subject=butterfly&chain=bag', 'chain=body-36,lens-90,coupling-ring,lens-50:turned']) {
      bench.read(`?${setting}&question=${question}`);
      const { body } = render(Bench, {});
      for (const [thing, mark] of Object.entries(marks) as [Thing, RegExp][])
        expect(mark.test(body), `${setting}: ${thing}`).toBe(isOpen(thing, question));
    }
  });

  it('has the subject as large as the chain makes it, beside what is asked', () => {
    const drawn = (search: string) => {
      bench.read(`?${search}`);
      const { subject, asked, frame, measured } = frameLayout(
        bench.inputs['frame-fill'],
        plan.givenFill,
        planAreas(boxes[0]!).frame,
      );
      const share = (half: number | undefined) => half && Math.round((200 * half) / frame.width);
      return { subject: share(subject?.rx), asked: share(asked?.rx), measured: share(measured), said: plan.fillSaid };
    };
    // 1.46 × 6 mm / 36 mm.
    expect(drawn('chain=body-36,lens-90,close-up-4')).toEqual({
      subject: 24,
      asked: 50,
      measured: 24,
      said: '24.4\u202f%',
    });
    expect(drawn('chain=body-36,bellows,lens-90').asked).toBeUndefined();
    expect(drawn('')).toEqual({ subject: 50, asked: undefined, measured: 50, said: '50\u202f%' });
    // 3.78 × 60 mm is six pictures wide.
    const tooLarge = drawn('subject=butterfly&chain=body-36,lens-200,coupling-ring,lens-50:turned');
    expect([tooLarge.measured, tooLarge.subject! > 500]).toEqual([100, true]);
    expect(drawn('chain=body-36,lens-999')).toEqual({
      subject: undefined,
      asked: 50,
      measured: 50,
      said: '50\u202f% asked',
    });
  });

  it('says what a distance comes to once it is settled', () => {
    const said = (question: Question) => {
      bench.read(`?question=${question}`);
      return drawnPlan()!.dimensions!.map(({ value }) => value);
    };
    expect(said(1)).toEqual(['?', '?']);
    expect(said(2)).toEqual(['?', bench.words('extension')]);
    expect(said(3)).toEqual([bench.words('working-distance'), bench.words('extension')]);
    expect(Object.keys(settledBy)).toHaveLength(7);
    bench.read('?question=2&chain=body-36,lens-90,close-up-4');
    expect(drawnPlan()!.dimensions!.map(({ name }) => name)).not.toContain('extension');
  });

  it('has no name for what nobody can put between lens and camera', () => {
    const drawn = (search: string) => {
      bench.read(`?question=2&${search}`);
      const { labels, notice } = drawnPlan()!;
      return [labels![1], notice];
    };
    expect(drawn('frame-fill=1')).toEqual(['', 'longer than the bellows']);
    expect(drawn('frame-fill=0.5')).toEqual(['bellows', undefined]);
    expect(drawn('frame-fill=0.2')).toEqual(['rings', undefined]);
  });

  it('has the way to a light beyond its edge broken off', () => {
    const isBroken = (distance: number) => {
      bench.read(`?question=8&flash-distance=${distance}`);
      return render(Bench, {}).body.includes('class="broken');
    };
    expect([isBroken(100), isBroken(1300)]).toEqual([false, true]);
  });
});
