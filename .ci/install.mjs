import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Runs a command in the project and ends the process when it fails. */
export function run(command, args, options = {}) {
  console.log(`\n› ${command} ${args.join(' ')}`);
  const done = spawnSync(command, args, { cwd: ROOT, stdio: 'inherit', shell: process.platform === 'win32', ...options });
  if (done.status !== 0) process.exit(done.status ?? 1);
}

/** Whether a version such as '20.19.0' is one of `engines` in package.json: ranges of the forms ^1.2.3 and >=1. */
export function nodeServes(version, engines) {
  const [major, minor, patch] = version.split('.').map(Number);
  return engines.split('||').some((range) => {
    const [, sign, from] = /^\s*(\^|>=)([\d.]+)\s*$/.exec(range);
    const [fromMajor, fromMinor = 0, fromPatch = 0] = from.split('.').map(Number);
    if (major !== fromMajor) return sign === '>=' && major > fromMajor;
    return minor > fromMinor || (minor === fromMinor && patch >= fromPatch);
  });
}

/** Ends the process with one sentence when this Node is not among those of package.json. */
function checkNode() {
  const { engines } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  if (nodeServes(process.versions.node, engines.node)) return;
  console.error(`Pullstack needs Node ${engines.node}, and this is ${process.versions.node}: install another and run the command again.`);
  process.exit(1);
}

/** Installs the packages of the lockfile, unless they are there; Node must be one that serves. */
export function installPackages() {
  checkNode();
  const mark = join(ROOT, 'node_modules/.package-lock.json');
  const lock = join(ROOT, 'package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs) return;
  run('npm', ['ci', '--no-audit', '--no-fund']);
}

/** The same browser without windows, in which all browser tests take a quarter less work. */
const HEADLESS = '/usr/bin/chromium-headless-shell';

const SYSTEM_BROWSERS = [
  process.env.CHROMIUM_PATH,
  HEADLESS,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

async function ownBrowser() {
  const { chromium } = createRequire(join(ROOT, 'package.json'))('playwright-core');
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

function tryRun(command, args) {
  console.log(`\n› ${command} ${args.join(' ')}`);
  return spawnSync(command, args, { cwd: ROOT, stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;
}

/** Finds a Chromium: that named or without windows, Debian's where we may install it; else the system's; else Playwright's own. */
export async function findBrowser() {
  const system = () => SYSTEM_BROWSERS.find((path) => path && existsSync(path));
  if (!process.env.CHROMIUM_PATH && !existsSync(HEADLESS) && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    // Without a network another browser does, and nobody waits for this one.
    tryRun('apt-get', ['update', '-o', 'Acquire::http::Timeout=15', '-o', 'Acquire::Retries=0']);
    tryRun('apt-get', ['install', '-y', '--no-install-recommends', 'chromium-headless-shell']);
  }
  const found = system() ?? (await ownBrowser());
  if (found) return found;
  console.log('No Chromium or Chrome found; fetching one for the browser tests.');
  tryRun(process.execPath, [join(ROOT, 'node_modules/playwright-core/cli.js'), 'install', 'chromium']);
  const fetched = await ownBrowser();
  if (fetched) return fetched;
  console.error('The browser tests need Chromium or Chrome: install one, or set CHROMIUM_PATH to it, and run npm test again.');
  process.exit(1);
}

/** Sees to poppler, by which the tests read PDFs back; installs Debian's where we may. */
export function findPoppler() {
  const there = () => ['pdfinfo', 'pdftotext', 'pdftohtml'].every((program) => spawnSync(program, ['-v']).error === undefined);
  if (there()) return;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    tryRun('apt-get', ['update']);
    tryRun('apt-get', ['install', '-y', '--no-install-recommends', 'poppler-utils']);
  }
  if (there()) return;
  console.error('The tests of the PDFs need poppler (pdfinfo, pdftotext, pdftohtml): install poppler-utils and run npm test again.');
  process.exit(1);
}

/** Tests that a report of vitest counts as passed and failed. */
export function countTests(file) {
  const report = JSON.parse(readFileSync(file, 'utf8'));
  return { passed: report.numPassedTests, failed: report.numFailedTests, skipped: report.numPendingTests };
}
