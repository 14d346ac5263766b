import type { AstroIntegration } from 'astro';

/**
 * A framework's integration without its part for browsers: that would bring Astro's own islands to life, of which no page has any (a lesson's
 * script mounts its own), and kept code for taking over built markup in what all pages load.
 */
export function onServerAlone(integration: AstroIntegration): AstroIntegration {
  const setUp = integration.hooks['astro:config:setup']!;
  return {
    ...integration,
    hooks: {
      ...integration.hooks,
      'astro:config:setup': (options) =>
        setUp({
          ...options,
          addRenderer: ({ name, serverEntrypoint }) => options.addRenderer({ name, serverEntrypoint }),
        }),
    },
  };
}
