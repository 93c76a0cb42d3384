// Builds the simulation of whole visits and runs it: `npm run visits`, or `npm run visits -- 20`.
import { join } from 'node:path';
import { build } from 'vite';
import { installPackages, ROOT, run } from './install.mjs';

installPackages();
const outDir = join(ROOT, 'node_modules/.cache/visits');
await build({ root: ROOT, logLevel: 'error', build: { ssr: 'tests/visits/visits.ts', outDir } });
run(process.execPath, [join(outDir, 'visits.js'), ...process.argv.slice(2)]);
