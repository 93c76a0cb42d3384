import { dirname, resolve } from 'node:path';
import type { Plugin } from 'vite';

/** How a worker is begun in the code; Vite's own server knows it as it stands. */
const BEGUN = /new URL\('(\.[^']+\.worker\.ts)', import\.meta\.url\)/g;
const PRELOAD_HELPER = /vite\/preload-helper\.js$/;
/** Where the helper takes the page for granted, and what stands there instead. */
const TAKEN_FOR_GRANTED = [
  ['deps && deps.length > 0', "typeof document !== 'undefined' && deps && deps.length > 0"],
  ['window.dispatchEvent', 'globalThis.dispatchEvent'],
] as const;

/**
 * Builds the workers together with the page, so that what both use (the engine's base, the clipper) is one file
 * that comes once; left to itself Vite builds each worker as a program of its own.
 */
export function sharedWorkers(): Plugin {
  return {
    name: 'shared-workers',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    enforce: 'pre',
    transform(code, id) {
      if (!code.includes('.worker.ts')) return null;
      return code.replace(BEGUN, (_, file: string) => {
        const worker = this.emitFile({
          type: 'chunk',
          id: resolve(dirname(id), file),
          name: file.slice(file.lastIndexOf('/') + 1, -'.ts'.length),
        });
        return `import.meta.ROLLUP_FILE_URL_${worker}`;
      });
    },
  };
}

/** What a page fetches ahead of an import by links in its head, a worker fetches by the import itself: it has no head. */
export function importsWithoutPage(): Plugin {
  return {
    name: 'imports-without-page',
    apply: 'build',
    transform(code, id) {
      if (!PRELOAD_HELPER.test(id)) return null;
      return TAKEN_FOR_GRANTED.reduce((changed, [page, anywhere]) => {
        if (!changed.includes(page)) throw new Error('Vite fetches ahead of imports in another way now; see .ci/shared-workers.ts.');
        return changed.replace(page, anywhere);
      }, code);
    },
  };
}
