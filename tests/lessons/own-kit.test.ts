import { globSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { printAnswer, type Answer } from '#site/state/answer.ts';
import { crateKit } from '#site/kit/crate-kit.ts';
import { kitOf } from '#site/kit/change.ts';
import { emptyKit, type Kit, type NewPart } from '#site/kit/part.ts';
import { chooseNamed } from '#site/kit/named-in-address.ts';
import { offersOf } from '#site/kit/offers.ts';
import { searchIn } from '#site/kit/searched-parts.ts';
import { ownParts } from '#site/state/own-parts.svelte.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';

const files = globSync('lessons/*/bench.svelte.ts');
const benches = await Promise.all(
  files.map(async (file) => {
    const { bench } = (await import(/* @vite-ignore */ `../../${file}`)) as { bench: AnyBench };
    return [file.split('/')[1]!, bench] as const;
  }),
);
const withChoice = benches.filter(([, { choices }]) => 'lens' in choices || 'sensor' in choices);
const withLight = benches.filter(([slug]) => ['planning-a-picture', 'size-of-light', 'soap-film'].includes(slug));

const camera: NewPart = {
  kind: 'camera',
  name: 'Mine',
  'sensor-width': 22.3,
  'sensor-height': 14.9,
  'register-distance': 44,
};
/** What a beginner can say of a lens. */
const byMarks: NewPart = {
  kind: 'lens',
  name: 'My 85',
  'focal-length': 85,
  'max-aperture': 1.8,
  'focus-distance': 800,
  focusing: 'whole',
  iris: 'camera',
};
const macro: NewPart = {
  ...byMarks,
  name: 'My macro',
  focusing: 'inside',
  'focus-magnification': 1,
  'focus-distance': 300,
  'barrel-length': 120,
};

/** The bench with a kit offered in it; it is put back, for benches are shared. */
function offered(bench: AnyBench, kit: Kit, then: (offers: ReturnType<typeof offersOf>) => void) {
  const offers = offersOf({ starts: bench.starts, choices: bench.choices, range: (name) => bench.range(name) }, kit);
  bench.offer(
    Object.fromEntries(
      Object.entries(offers).map(([choice, some]) => [
        choice,
        Object.fromEntries(Object.entries(some).map(([slug, { option }]) => [slug, option])),
      ]),
    ),
  );
  try {
    then(offers);
  } finally {
    bench.offer({});
    bench.read('');
  }
}

it('finds lessons that have a lens or a camera to choose', () => {
  expect(withChoice.length).toBeGreaterThan(10);
});

it('a flash of the kit brings its guide number and how long it recharges, where a lesson goes by them', () => {
  const [, bench] = benches.find(([slug]) => slug === 'planning-a-picture')!;
  const flash: NewPart = {
    kind: 'flash',
    name: 'My flash',
    'guide-number': 18,
    'recycling-time': 3.5,
    'source-size': 50,
  };
  offered(bench, kitOf(flash), (offers) => {
    const [choice, some] = Object.entries(offers).find(([, some]) => Object.keys(some).length > 0)!;
    bench.choose(choice, Object.keys(some)[0]!);
    expect(bench.inputs).toMatchObject({ 'guide-number': 18, 'recycling-time': 3.5, 'source-size': 50 });
    expect(bench.chosenOrOwn(choice)).toBe(Object.keys(some)[0]);
  });
});

it.each(withLight)('%s offers the kit’s lights, and of its flashes those whose width it knows', (_, bench) => {
  const softbox: NewPart = { kind: 'light', name: 'My paper', 'source-size': 123 };
  const flash: NewPart = { kind: 'flash', name: 'My flash', 'guide-number': 24000 };
  offered(bench, kitOf(softbox, flash), (offers) => {
    const [[choice, some]] = Object.entries(offers) as [[string, (typeof offers)[string]]];
    const [light, other] = Object.entries(some);
    expect(other![1].option.apart).toContain('width of its window');
    bench.choose(choice, light![0]);
    expect(bench.inputs['source-size']).toBe(123);
  });
});

describe.each(withChoice)('%s', (_, bench) => {
  it('answers with every part of a kit that can be chosen, and says why another cannot', () => {
    const twin = { ...byMarks, 'max-aperture': 5.6 };
    offered(bench, kitOf(camera, byMarks, twin, macro, ...crateKit().parts), (offers) => {
      expect(Object.keys(offers).length).toBeGreaterThan(0);
      for (const [choice, some] of Object.entries(offers)) {
        const labels = Object.values(some).map(({ option }) => option.label);
        expect(new Set(labels).size, labels.join()).toBe(labels.length);
        for (const [slug, { option }] of Object.entries(some)) {
          if (option.apart !== undefined) {
            expect(option.apart).toMatch(/^[A-Z].*\.$/);
            continue;
          }
          bench.choose(choice, slug);
          expect(bench.chosenOrOwn(choice), `${choice} ${slug}`).toBeDefined();
          const answers: Readonly<Record<string, Answer>> = bench.answers;
          for (const [name, answer] of Object.entries(answers)) {
            expect(printAnswer(name as QuantityName, answer)).not.toMatch(/^$|NaN|undefined|null/);
          }
        }
      }
    });
  });

  it('lists the kit before the crate, and names none of it in an address', () => {
    offered(bench, crateKit(), (offers) => {
      for (const [choice, some] of Object.entries(offers)) {
        const slugs = Object.keys(bench.choices[choice]!.options);
        expect(slugs.slice(0, Object.keys(some).length)).toEqual(Object.keys(some));
        const usable = Object.entries(some).find(([, { option }]) => option.apart === undefined);
        if (!usable) continue;
        bench.choose(choice, usable[0]);
        const before = bench.inputs;
        const address = bench.write('');
        expect(address).not.toContain('my-');
        bench.offer({});
        bench.read(address);
        expect(bench.notices).toEqual([]);
        expect(bench.inputs).toEqual(before);
        return;
      }
    });
  });

  it('tells no figure of a kit that it only knows the crate’s things', () => {
    offered(bench, kitOf(camera, byMarks), (offers) => {
      for (const [choice, some] of Object.entries(offers)) {
        for (const [slug, { option }] of Object.entries(some)) {
          if (option.apart !== undefined) continue;
          bench.choose(choice, slug);
          expect(bench.chosenOrOwn(choice)).toBe(slug);
          expect(bench.chosen(choice)).toBeUndefined();
        }
      }
    });
  });

  it('is as it was without a kit', () => {
    const before = JSON.stringify(bench.choices);
    offered(bench, emptyKit, (offers) => expect(offers).toEqual({}));
    expect(JSON.stringify(bench.choices)).toBe(before);
  });
});

describe('a crate that is entered as a kit', () => {
  // Lenses that focus inside are known by two settings in a kit and by more in the crate.
  const whole = ['lens-50', 'lens-28', 'lens-18', 'lens-55', 'lens-100'];
  const names = crateKit()
    .parts.filter(({ kind }) => kind === 'lens')
    .map(({ id }) => `my-${id}`);
  const slugs = ['lens-50', 'lens-28', 'lens-18', 'lens-55', 'lens-60', 'lens-90', 'lens-100', 'lens-200'];

  it.each(withChoice.filter(([, { choices }]) => 'lens' in choices))('fills in %s what the crate fills', (_, bench) => {
    offered(bench, crateKit(), (offers) => {
      for (const [at, name] of names.entries()) {
        const crates = bench.choices['lens']!.options[slugs[at]!];
        const own = offers['lens']?.[name]?.option;
        if (!own || !crates || own.apart !== undefined || !whole.includes(slugs[at]!)) continue;
        const filled = (option: typeof crates) =>
          typeof option.fills === 'function' ? option.fills(bench.starts as never) : option.fills;
        for (const [input, value] of Object.entries(filled(crates) as Record<string, number>)) {
          // Not in the kit: what only a drawing asks for.
          if (input === 'rear-protrusion') continue;
          expect((filled(own) as Record<string, number>)[input], `${slugs[at]} ${input}`).toEqual(
            closeTo(value, { absolute: 0.001, because: 'filled in to six figures' }),
          );
        }
      }
    });
  });
});

describe('a lens by its marks', () => {
  const bench = benches.find(([slug]) => slug === 'extension')![1];

  it('gives a lesson’s answers a range that holds the usual one', () => {
    offered(bench, kitOf(camera, byMarks), (offers) => {
      const offer = offers['lens']!['my-lens-1']!;
      bench.choose('lens', 'my-lens-1');
      const room = offer.option.between!(bench.inputs).map((one) => bench.would('working-distance', one, NaN));
      expect(room.length).toBeGreaterThan(4);
      expect(Math.min(...room)).toBeLessThan(bench.number('working-distance') - 10);
      expect(Math.max(...room)).toBeGreaterThan(bench.number('working-distance') + 10);
    });
  });

  it('is left out with its reason where it does not fit: no register, out of range, glass that moves', () => {
    const reasons = (part: NewPart, of = bench, choice = 'lens') => {
      let found = '';
      offered(of, kitOf(camera, part), (offers) => (found = offers[choice]!['my-lens-1']!.option.apart ?? ''));
      return found.replaceAll('\u202f', ' ');
    };
    const other = (slug: string) => benches.find(([name]) => name === slug)![1];
    expect(reasons({ ...byMarks, mount: 'another' })).toMatch(/register is not known/);
    expect(reasons(macro, other('on-the-barrel'))).toMatch(/Glass moves inside/);
    expect(reasons(byMarks, other('focusing-close'), 'printed')).toMatch(/moves as a whole/);
    expect(reasons(byMarks, other('reversed'))).toMatch(/does not say its part behind its mount/);
  });
});

it('has no kit that makes a bench throw', () => {
  const part = fc.record({
    'focal-length': fc.integer({ min: 8, max: 400 }),
    'focus-magnification': fc.double({ min: 0.01, max: 1.5, noNaN: true }),
    'barrel-length': fc.option(fc.integer({ min: 10, max: 300 }), { nil: undefined }),
    'rear-protrusion': fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
    focusing: fc.constantFrom('whole', 'inside'),
  });
  fc.assert(
    fc.property(part, fc.constantFrom(...withChoice), (drawn, [, bench]) => {
      const said = Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined));
      const lens = { kind: 'lens', name: 'Any', 'max-aperture': 2, iris: 'camera', ...said } as NewPart;
      offered(bench, kitOf(camera, lens), (offers) => {
        for (const [choice, some] of Object.entries(offers)) {
          for (const [slug, { option }] of Object.entries(some)) {
            if (option.apart !== undefined) continue;
            bench.choose(choice, slug);
            for (const one of option.between?.(bench.inputs) ?? []) {
              for (const value of Object.values(one)) expect(value).not.toBeNaN();
            }
          }
        }
      });
    }),
    { numRuns: 150 },
  );
});

describe('where chains are searched', () => {
  const [, bench] = benches.find(([slug]) => slug === 'choosing-kit')!;
  const found = () => [bench.kept['kit'], bench.number('chain-count' as QuantityName)];
  const bring = (kit: Kit, search?: string) => {
    if (search !== undefined) bench.read((ownParts.opened = search));
    searchIn(bench, {}, kit);
  };
  afterEach(() => {
    ownParts.found = undefined;
    bench.offer({});
    bench.read('');
  });
  const ring: NewPart = { kind: 'ring', name: 'My 20', extension: 20, contacts: 'yes' };

  it('has the whole kit to choose from, and begins with the bag all the same', () => {
    bring(kitOf(camera, byMarks, ring));
    expect(found()).toEqual(['bag', 160]);
    bench.choose('kit', 'own');
    // One lens, with a ring and without, on the camera that is in the kit.
    expect(found()).toEqual(['own', 2]);
    expect(bench.number('sensor-width')).toBe(22.3);
    expect(bench.write('')).toContain('kit=own');
    bring(kitOf(camera, byMarks, macro, ring));
    expect(found()).toEqual(['own', 4]);
  });

  it('takes over an address that names it, once it is here', () => {
    bring(kitOf(camera, byMarks), '?kit=own&budget=20');
    expect(bench.notices).toEqual([]);
    // Two lengths, a second ring of the wish list or none; the lens turned round or not. A second lens for the coupling ring there is not.
    expect(found()).toEqual(['own', 4]);
  });

  it('goes back to the bag where another tab has emptied the kit, or left no chain in it', () => {
    for (const less of [emptyKit, kitOf(byMarks)]) {
      bring(kitOf(camera, byMarks, ring));
      bench.choose('kit', 'own');
      bring(less);
      expect(bench.kept['kit']).toBe('bag');
    }
  });
});

describe('an address that names parts of the kit', () => {
  it.each(withChoice)(
    'opened before the kit is here chooses them once it is, its numbers above theirs: %s',
    (_, bench) => {
      const kit = kitOf(camera, byMarks);
      const plans = offersOf({ starts: bench.starts, choices: bench.choices, range: (name) => bench.range(name) }, kit);
      const named = Object.entries(plans).flatMap(([choice, some]) =>
        Object.entries(some).flatMap(([slug, { option }]) =>
          option.apart === undefined ? [[choice, slug] as const] : [],
        ),
      );
      const once = new Map(named);
      const address = `?${new URLSearchParams([...once]).toString()}`;
      bench.read(address);
      expect(bench.notices).toHaveLength(once.size);
      offered(bench, kit, (offers) => {
        chooseNamed(bench, offers, address);
        expect(bench.notices).toEqual([]);
        if (once.has('sensor')) expect(bench.chosenOrOwn('sensor')).toBe(once.get('sensor'));
        if (!once.has('sensor') || !('sensor-width' in bench.starts)) return;
        chooseNamed(bench, offers, `${address}&sensor-width=20`);
        expect(bench.number('sensor-width')).toBe(20);
      });
    },
  );

  it('keeps its notice where the kit has no such part, or none that can stand there', () => {
    const [, bench] = withChoice.find(([slug]) => slug === 'choosing-kit')!;
    bench.read('?sensor=my-camera-7&subject-depth=0.7');
    offered(bench, kitOf(camera), (offers) => {
      chooseNamed(bench, offers, '?sensor=my-camera-7&subject-depth=0.7');
      expect(bench.notices).toHaveLength(1);
      expect(bench.number('subject-depth')).toBe(0.7);
    });
  });
});
