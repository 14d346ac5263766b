import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { defineCollection } from 'astro:content';

/** A lesson is a folder; its name is its slug; its prose is `lesson.mdx`. */
const lessons = defineCollection({
  loader: glob({ base: './lessons', pattern: '*/lesson.mdx', generateId: ({ entry }) => entry.split('/')[0]! }),
  schema: z.strictObject({
    /** The question the lesson answers, as the reader would ask it. */
    question: z.string().endsWith('?'),
    /** One sentence: what the reader will be able to do. */
    summary: z.string(),
    /** How long it takes to read and play through at home. */
    minutes: z.number().int().positive(),
    /** What an instructor brings to teach it, thing by thing, as a list for the evening names them. */
    bring: z.array(z.string()).min(1),
    /** Lessons this one leans on. */
    leansOn: z.array(z.string()).default([]),
  }),
});

export const collections = { lessons };
