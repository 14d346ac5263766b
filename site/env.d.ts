declare namespace App {
  interface Locals {
    /** The lesson whose page is being made: its prose and the parts of it take everything from here. */
    lesson: import('#site/lesson/lesson.ts').Lesson;
  }
}
