import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { type Plugin, preview, type PreviewServer } from 'vite';
import { it } from 'vitest';
import type { ROOMS } from '../../src/components/rooms.ts';
import { launchFirefox } from './firefox-launch.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Where a reader of a failed test finds the pictures. */
export const SHOTS = fileURLToPath(new URL('./shots', import.meta.url));

const CHROMIUM = process.env.CHROMIUM_PATH ?? ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium'].find((path) => existsSync(path));

/** How Chromium starts where there is no graphics card; pages are put together without drawing on it either. */
export const LAUNCH = {
  ...(CHROMIUM === undefined ? {} : { executablePath: CHROMIUM }),
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-gpu-compositing'],
};

/** Whether `npm run firefox` asks, which runs the same journeys in the Firefox that is installed. */
const IN_FIREFOX = process.env['BROWSER'] === 'firefox';

/**
 * A test of what WebDriver BiDi, which the installed Firefox is driven by, has no word for yet: files that are
 * saved, a page as printed, touch, a look into a worker, a full disk. Chromium alone runs it.
 */
export const itInChromium = it.skipIf(IN_FIREFOX);

/** The built app, served on this machine, and a real browser. */
export interface Studio {
  url: string;
  browser: Browser;
  close(): Promise<void>;
}

/** How many prints the demo's wall has in tests that do not ask for the whole of it. */
export const FEW = 40;

/** What a newcomer's wall has. */
export const ALL = 200;

/** Gives the demo a wall of fewer prints, as finding them is the longest work of most tests. */
function fewerPrints(prints: number): Plugin {
  return {
    name: 'fewer-prints',
    configurePreviewServer(server) {
      server.middlewares.use((request, response, next) => {
        const demo = /assets\/demo-[\w-]{8}\.js/.exec(request.url ?? '')?.[0];
        if (demo === undefined) return next();
        const text = readFileSync(`${ROOT}/dist/${demo}`, 'utf8');
        // A build may give the demo's inks a file of their own.
        if (!text.includes('"format":"pullstack-project"')) return next();
        const fewer = text.replace(`"count":${ALL},`, `"count":${prints},`);
        if (prints !== ALL && fewer === text) throw new Error('the demo has no wall of 200 prints any more; see tests/browser/harness.ts');
        response.setHeader('Content-Type', 'text/javascript');
        response.end(fewer);
      });
    },
  };
}

/** Serves `dist/` (built by `npm test` beforehand), its demo with so many prints, and starts the browser. */
export async function openStudio(prints = FEW): Promise<Studio> {
  if (!existsSync(`${ROOT}/dist/index.html`)) throw new Error('dist/ is missing; run `npm run build` before the browser tests');
  const server: PreviewServer = await preview({
    root: ROOT,
    logLevel: 'error',
    plugins: [fewerPrints(prints)],
    preview: { port: 0, host: '127.0.0.1', open: false },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('the preview server has no port');
  const browser = IN_FIREFOX ? await launchFirefox() : await chromium.launch(LAUNCH);
  return {
    url: `http://127.0.0.1:${address.port}/`,
    browser,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** A page that notes everything its console calls an error and every request that leaves the machine. */
export interface WatchedPage {
  page: Page;
  context: BrowserContext;
  errors: string[];
}

/** A core alone, for which the app starts no workers that help find prints. */
function countOneCore(): void {
  Object.defineProperty(Navigator.prototype, 'hardwareConcurrency', { get: () => 1, configurable: true });
}

/**
 * A fresh browser profile with one page. A helping worker costs a quarter of what a page takes to open, so that only
 * journeys that are about finding prints ask for it; that it changes no print is held in hold/across.
 */
export async function openPage(studio: Studio, viewport = { width: 1440, height: 900 }, { helpers = false } = {}): Promise<WatchedPage> {
  const context = await studio.browser.newContext({ viewport, serviceWorkers: 'block' });
  if (!helpers) await context.addInitScript(countOneCore);
  // The system's chooser of a place cannot be driven; without it files are downloads.
  await context.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  // Whoever comes for the first time is looked at in stranger.test.ts.
  await context.addInitScript(() => localStorage.setItem('pullstack-first-steps', 'closed'));
  if (IN_FIREFOX) await context.addInitScript(countFilledAsTyped);
  const page = await context.newPage();
  const errors: string[] = [];
  watch(page, studio, errors);
  return { page, context, errors };
}

/**
 * Enter or Tab tells of a change where a person typed, and in Chromium also where a script did. In Firefox it does not,
 * and playwright's `fill` is a script: there the change that it leaves out is told of here.
 */
function countFilledAsTyped(): void {
  const filled = new WeakSet<EventTarget>();
  const at = (event: Event): EventTarget | undefined => event.composedPath()[0];
  addEventListener('input', (event) => void (event.isTrusted ? filled.delete(at(event)!) : filled.add(at(event)!)), true);
  addEventListener('change', (event) => void filled.delete(at(event)!), true);
  window.addEventListener('keydown', (event) => {
    const field = at(event);
    if (!['Enter', 'Tab'].includes(event.key) || field === undefined || !filled.delete(field)) return;
    field.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

/** What Firefox tells of and is not the app's: playwright's own script on the empty page, and a library that only tries whether it may make code. */
const OTHERS_ERRORS: ((error: Error, page: Page) => boolean)[] = [
  (_, page) => page.url() === 'about:blank',
  ({ message }) => message.includes('blocked a JavaScript eval'),
];

/** Notes a page's errors; for further pages of one profile. */
export function watch(page: Page, studio: Studio, errors: string[]): void {
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => {
    if (!IN_FIREFOX || !OTHERS_ERRORS.some((known) => known(error, page))) errors.push(String(error));
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(studio.url) && !url.startsWith('blob:') && !url.startsWith('data:')) {
      errors.push(`a request left the app: ${url}`);
    }
  });
}

/** Goes through a door of the studio. */
export async function enter(page: Page, room: (typeof ROOMS)[number]['label']): Promise<void> {
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: room, exact: true }).click();
}
