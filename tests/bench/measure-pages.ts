import { builtPages, lessonPages } from './built.ts';
import { firstVisit } from './first-visit.ts';
import { onBuiltSite } from './on-built-site.ts';
import { picturePage, type PicturePage } from './picture-page.ts';
import type { LessonResult, PageResult, Results } from './report.ts';
import { responsivenessOf } from './responsiveness.ts';
import { weightOf } from './weight.ts';

/** Weighs the built pages whose paths contain one of *wanted*, all where that is empty, and drags every handle of the lessons among them. */
export function measurePages(wanted: readonly string[]): Promise<Omit<Results, 'machine'>> {
  const all = builtPages();
  const pages = wanted.length === 0 ? all : all.filter((page) => wanted.some((part) => page.includes(part)));

  const lessons = lessonPages(pages);

  return onBuiltSite(async (browser, address) => {
    const pageResults: PageResult[] = [];
    for (const page of pages) {
      process.stdout.write(`bytes of /${page}\n`);
      const { received: _, ...visit } = await firstVisit(browser, address + page);
      pageResults.push({ page, lesson: lessons.includes(page), weight: weightOf(page), firstVisit: visit });
    }
    const lessonResults: LessonResult[] = [];
    for (const page of lessons) {
      process.stdout.write(`dragging on /${page}\n`);
      const measured = await responsivenessOf(browser, address + page);
      lessonResults.push({ page, ...measured });
      const inFigure = measured.handles.filter(({ handle }) => handle.startsWith('figure'));
      const still = measured.handles.filter(({ moved }) => !moved);
      process.stdout.write(
        `  ${measured.handles.length} handles, ${inFigure.length} of them in its figure; ${still.length} did not move\n`,
      );
    }
    const pictureResults: PicturePage[] = [];
    for (const { page, lesson, weight } of pageResults) {
      if (!lesson || !weight.picture) continue;
      process.stdout.write(`pictures of /${page}\n`);
      const measured = await picturePage(browser, address + page, page).catch((error: unknown) => String(error));
      if (typeof measured === 'string') process.stdout.write(`  none came: ${measured.split('\n')[0]}\n`);
      else pictureResults.push(measured);
    }
    const version = `Chromium ${browser.version()}`;
    return { browser: version, pages: pageResults, lessons: lessonResults, pictures: pictureResults };
  });
}
