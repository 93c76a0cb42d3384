import type { Plugin } from 'vite';

/**
 * Packages that do nothing when they are imported but do not say so: their `package.json` has no `sideEffects`.
 * Of them a build takes what is used.
 */
const QUIET = /\/node_modules\/clipper2-ts\//;

/** Has a build leave out the modules of quiet packages of which nothing is used. */
export function leanPackages(): Plugin {
  return {
    name: 'lean-packages',
    apply: 'build',
    transform: (_, id) => (QUIET.test(id) ? { moduleSideEffects: false } : null),
  };
}
