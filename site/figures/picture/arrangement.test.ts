import { describe, expect, it } from 'vitest';
import { isOfArrangement, readArranged, withArranged } from './arrangement.ts';
import { arrangements } from './display.ts';

describe('the arrangement of a picture', () => {
  it.each(['alone', ...arrangements])('is read back from the address it was written to: %s', (arranged) => {
    const search = withArranged('?f-number=8', { arranged, divide: 0.275 });
    expect(readArranged(search)).toEqual({
      arranged,
      divide: arranged === 'divided' ? 0.275 : undefined,
      notices: [],
    });
    expect(withArranged(search, {})).toBe('?f-number=8');
  });

  it('that no picture has is left out, and the page says which there are', () => {
    const { arranged, notices } = readArranged('?arranged=upside-down');
    expect(arranged).toBeUndefined();
    expect(notices).toHaveLength(1);
    expect(notices[0]!.text).toMatch(/^The link sets “Layout” to “upside-down”, which this page cannot use\./);
    for (const one of arrangements) expect(notices[0]!.text).toContain(`(${one})`);
    expect(notices.every(isOfArrangement)).toBe(true);
  });

  it.each(['1.5', '-0.1', 'half', ''])(
    'with the dividing line at “%s” is divided in the middle, and says so',
    (text) => {
      const { arranged, divide, notices } = readArranged(`?arranged=divided&divide=${text}`);
      expect([arranged, divide]).toEqual(['divided', undefined]);
      expect(notices.map((notice) => notice.text)).toEqual([
        `The link sets the place of the dividing line to “${text}”, which this page cannot use. It takes a plain number from 0 to 1. Its usual value is shown.`,
      ]);
    },
  );
});
