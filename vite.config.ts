import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { demoModule } from './.ci/demo-module.ts';
import { devConnection } from './.ci/dev-connection.ts';
import { installable } from './.ci/installable.ts';
import { leanPackages } from './.ci/lean-packages.ts';
import { notices } from './.ci/notices.ts';
import { importsWithoutPage, sharedWorkers } from './.ci/shared-workers.ts';
import { OFFLINE_FILE } from './src/workers/api/offline-api.ts';

/**
 * Vitest calls an imported function through a getter of its module, which costs the engine's inner
 * loops a factor of eight. Binding the reads of `base/at.ts` to names of the file gives it back; a
 * build does so by itself.
 */
const boundReads: Plugin = {
  name: 'bound-reads',
  enforce: 'pre',
  transform(code, id) {
    if (process.env['VITEST'] === undefined || !id.includes('/src/')) return null;
    return code.replace(/^import \{ ([\w, ]+) \} from '([^']*base\/at\.ts)';/m, "import * as reads from '$2'; const { $1 } = reads;");
  },
};

/** What is built for Node, such as the benchmarks, is no page: its entry keeps its name. */
const PAGES = {
  input: { index: 'index.html', kit: 'src/components/ui/kit.html', offline: 'src/workers/entry/offline.worker.ts' },
  // The browser looks for it beside the page, under one name in every build.
  output: { entryFileNames: ({ name }: { name: string }) => (name === 'offline' ? OFFLINE_FILE : 'assets/[name]-[hash].js') },
};

/** Tests that put others in the place of modules. */
const MOCKED = 'tests/**/*.mocked.test.ts';

export default defineConfig(({ isSsrBuild }) => ({
  plugins: [boundReads, sharedWorkers(), importsWithoutPage(), leanPackages(), demoModule(), devConnection(), notices(), installable()],
  base: './',
  build: {
    target: 'es2022',
    chunkSizeWarningLimit: 1500,
    ...(isSsrBuild === true ? {} : { rollupOptions: PAGES }),
  },
  worker: { format: 'es' },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', MOCKED],
          // The engine keeps no state: what one file has imported serves the next, at a third of the time.
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        // What stands in for a module must do so before anybody has imported it.
        extends: true,
        test: { name: 'mocked', environment: 'node', include: [MOCKED], testTimeout: 60_000 },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          // Importing playwright and the preview server again for each file took a second a file.
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A browser on a busy machine now and then loses a race that a second try, told as such, wins.
          retry: 1,
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
}));
