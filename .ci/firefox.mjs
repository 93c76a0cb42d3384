// Journeys of the browser tests in the Firefox that is installed: `npm run firefox`, or others by name.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, run } from './install.mjs';

/** What passes there; the rest of the suite was not tried yet, or rests on what playwright does in Chromium alone. */
const JOURNEYS = [
  'artist',
  'bad-files',
  'bench.test',
  'inks',
  'input/kept-place',
  'input/long-strip',
  'input/shape-sizes',
  'overprint',
  'press-fit',
  'rooms',
  'storage',
  'stranger',
  'tabs',
  'teacher',
  'wall-map',
  'wall-pins',
  'wall-settings',
];
const firefox = [process.env.FIREFOX_PATH, '/usr/bin/firefox-esr', '/usr/bin/firefox', '/Applications/Firefox.app/Contents/MacOS/firefox'];
if (!firefox.some((path) => path !== undefined && existsSync(path))) {
  console.log('There is no Firefox on this machine, so nothing was run; FIREFOX_PATH names one.');
  process.exit(0);
}
process.env.BROWSER = 'firefox';
const asked = process.argv.slice(2);
const bin = (path) => join(ROOT, 'node_modules', path);
run(process.execPath, [bin('vite/bin/vite.js'), 'build']);
run(process.execPath, [
  bin('vitest/vitest.mjs'),
  'run',
  '--project',
  'browser',
  ...(asked.length > 0 ? asked : JOURNEYS).map((name) => `tests/browser/${name}`),
]);
