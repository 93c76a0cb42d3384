// Kills the whole browser 200 times while the project changes, or as often as asked: `npm run kills -- 50`.
import { join } from 'node:path';
import { findBrowser, installPackages, ROOT, run } from './install.mjs';

installPackages();
process.env.CHROMIUM_PATH = await findBrowser();
process.env.KILLS = process.argv[2] ?? '200';
const bin = (path) => join(ROOT, 'node_modules', path);
run(process.execPath, [bin('vite/bin/vite.js'), 'build']);
run(process.execPath, [bin('vitest/vitest.mjs'), 'run', '--project', 'browser', 'tests/browser/hold/kills.test.ts']);
