// Builds each benchmark as the app is built and runs it: `npm run bench`, or `npm run bench explore mix`.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { findBrowser, installPackages, ROOT, run } from './install.mjs';

installPackages();
const SCRIPTS = ['explore', 'ink', 'mix', 'overprints', 'pullorder', 'stop', 'thumbnails', 'wall-frame'];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !SCRIPTS.includes(name));
if (unknown.length > 0) {
  console.error(`No benchmark is called ${unknown.join(', ')}; there are ${SCRIPTS.join(', ')}.`);
  process.exit(1);
}
const outDir = join(ROOT, 'node_modules/.cache/bench');
rmSync(outDir, { recursive: true, force: true });
for (const name of asked.length > 0 ? asked : SCRIPTS) {
  if (name === 'wall-frame') process.env.CHROMIUM_PATH = await findBrowser();
  await build({ root: ROOT, logLevel: 'error', build: { ssr: `tests/bench/${name}.ts`, outDir, emptyOutDir: false } });
  run(process.execPath, [join(outDir, `${name}.js`)]);
}
