import { render } from 'svelte/server';
import { afterEach, describe, expect, it } from 'vitest';
import { drawnLessons } from './settings.ts';

/** Settings at which a lesson has nothing sharp, for a reason that is not a sharp plane inside the lens. */
const settings: Readonly<Record<string, string>> = {
  'beyond-life-size': 'route=reversed&turned=lens-200',
  reversed: 'lens=lens-200',
  'close-up-lenses': 'focal-length=50&focus-magnification=2&close-up-gap=100',
  'on-the-barrel': 'focus-distance=100',
};

const lessons = (await drawnLessons()).filter(({ slug }) => slug in settings);

it('finds all of them', () => {
  expect(lessons).toHaveLength(Object.keys(settings).length);
});

describe.each(lessons)('where nothing is sharp, the figure of $slug', ({ slug, bench, Figure, props }) => {
  afterEach(() => void bench.read(''));

  it('has no sentence that goes on as if something were', () => {
    bench.read(settings[slug]!);
    const { body } = render(Figure, { props });
    const said = body.replaceAll(/<!--[^>]*-->/g, '').replaceAll(/<[^>]+>/g, ' ');
    expect(said).toMatch(/none: /);
    expect(said).not.toMatch(/(?:works at|ring of|out by|subject:) none/);
    if (slug !== 'on-the-barrel') expect(said).not.toContain('the sharp plane is inside');
  });
});
