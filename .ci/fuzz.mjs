// Builds the fuzz script and runs it: `npm run fuzz`, or `npm run fuzz -- svg 5000`.
import { join } from 'node:path';
import { build } from 'vite';
import { installPackages, ROOT, run } from './install.mjs';

installPackages();
const outDir = join(ROOT, 'node_modules/.cache/fuzz');
await build({ root: ROOT, logLevel: 'error', build: { ssr: 'tests/fuzz/fuzz.ts', outDir } });
run(process.execPath, [join(outDir, 'fuzz.js'), ...process.argv.slice(2)]);
