import { afterEach, describe, expect, it, vi } from 'vitest';
import { pathTo } from './course.ts';

describe('a path within the site', () => {
  afterEach(() => vi.unstubAllEnvs());

  it.each([
    ['/', '/course/'],
    ['/club/workbook/', '/club/workbook/course/'],
    ['/club/workbook', '/club/workbook/course/'],
  ])('starts where the site stands: at %s it is %s', (base, path) => {
    vi.stubEnv('BASE_URL', base);
    expect(pathTo('course/')).toBe(path);
  });
});
