import type { APIRoute } from 'astro';
import { pathTo } from '#site/course.ts';
import { light } from '#site/styles/palette.ts';

/** What a device needs to keep the workbook among its programs. */
export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: 'Ring and Ruler',
      short_name: 'Ring and Ruler',
      description: 'A workbook of interactive optics explainers for close-up and macro photography.',
      lang: 'en',
      id: pathTo(''),
      start_url: pathTo(''),
      scope: pathTo(''),
      display: 'standalone',
      background_color: light.ground,
      theme_color: light.ground,
      icons: [
        { src: pathTo('favicon.svg'), sizes: 'any', type: 'image/svg+xml' },
        { src: pathTo('icon-192.png'), sizes: '192x192', type: 'image/png' },
        { src: pathTo('icon-512.png'), sizes: '512x512', type: 'image/png' },
        { src: pathTo('icon-512.png'), sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
