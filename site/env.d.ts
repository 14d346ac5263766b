import type { Lesson } from '#site/lesson/lesson.ts';

declare global {
  namespace App {
    interface Locals {
      /** The lesson whose page is being made: its prose and the parts of it take everything from here. */
      lesson: Lesson;
    }
  }
}
