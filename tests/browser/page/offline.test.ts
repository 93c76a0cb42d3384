import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadImage } from '@napi-rs/canvas';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { preview, type PreviewServer } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '../../../src/components/rooms.ts';
import { enter, LAUNCH } from '../harness.ts';

const DIST = fileURLToPath(new URL('../../../dist', import.meta.url));

let folder: string;
let server: PreviewServer | undefined;
let port = 0;

/** Serves a copy of the build, so that a newer one can lie in its place; the port stays, as a studio's address does. */
async function serve(): Promise<void> {
  server = await preview({
    root: folder,
    configFile: false,
    logLevel: 'error',
    preview: { port, strictPort: port !== 0, host: '127.0.0.1', open: false },
    build: { outDir: 'dist' },
  });
  const address = server.httpServer.address();
  port = typeof address === 'object' && address !== null ? address.port : 0;
}

async function away(): Promise<void> {
  const http = server?.httpServer as { closeAllConnections?(): void } | undefined;
  http?.closeAllConnections?.();
  await server?.close();
  server = undefined;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'pullstack-offline-'));
  await cp(DIST, join(folder, 'dist'), { recursive: true });
  await serve();
});

afterAll(async () => {
  await away();
  await rm(folder, { recursive: true, force: true });
});

const url = (): string => `http://127.0.0.1:${port}/`;

/** Waits until the browser holds every file of the build. */
function held(page: Page): Promise<void> {
  return page.evaluate(async () => void (await navigator.serviceWorker.ready));
}

async function withContext(use: (context: BrowserContext) => Promise<void>): Promise<void> {
  const browser = await chromium.launch(LAUNCH);
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  try {
    await use(context);
  } finally {
    await browser.close();
  }
}

describe('a build', () => {
  it('should open every room after one visit when its server is gone', () =>
    withContext(async (context) => {
      const first = await context.newPage();
      await first.goto(url());
      await held(first);
      await first.close();
      await away();

      const page = await context.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(String(error)));
      await page.goto(url());
      for (const room of ROOMS) {
        await enter(page, room.label);
        await expect
          .poll(() => page.locator(room.element).evaluate((element) => element.shadowRoot?.childElementCount ?? 0))
          .toBeGreaterThan(0);
      }
      await enter(page, 'Wall');
      await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
      // Letters of PDFs, too.
      await page.getByRole('application', { name: 'Wall of prints' }).focus();
      await page.keyboard.press(' ');
      await page.getByRole('button', { name: 'Contact sheet' }).click();
      const [pdf] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        page.getByRole('dialog', { name: 'Contact sheet' }).getByRole('button', { name: 'Save' }).click(),
      ]);
      expect((await readFile(await pdf.path())).subarray(0, 5).toString()).toBe('%PDF-');
      expect(errors).toEqual([]);
      await serve();
    }));

  it('should offer a newer one, and open it only when asked', () =>
    withContext(async (context) => {
      const page = await context.newPage();
      await page.goto(url());
      await held(page);
      await page.reload();
      await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);

      const index = join(folder, 'dist', 'index.html');
      const worker = join(folder, 'dist', 'offline.js');
      await writeFile(index, (await readFile(index, 'utf8')).replace('<title>', '<meta name="build" content="newer" /><title>'));
      await writeFile(worker, (await readFile(worker, 'utf8')).replace(/("url":"index\.html","revision":")\w+/, '$1newer'));
      await page.reload();
      const newer = (): Promise<number> => page.locator('meta[name=build]').count();
      const offer = page.getByRole('status').getByRole('button', { name: 'Open it' });
      await offer.waitFor();
      expect(await newer()).toBe(0);
      await offer.click();
      await expect.poll(newer).toBe(1);
    }));

  it('should say what it is to a home screen', async () => {
    const read = async (file: string): Promise<Buffer> => readFile(join(DIST, file));
    expect((await read('index.html')).toString()).toContain('<link rel="manifest" href="./pullstack.webmanifest" />');
    // Source: W3C Web Application Manifest, members; Chromium asks for icons of 192 and 512 px.
    const manifest = JSON.parse((await read('pullstack.webmanifest')).toString()) as {
      name: string;
      start_url: string;
      display: string;
      icons: { src: string; sizes: string }[];
    };
    expect([manifest.name, manifest.start_url, manifest.display]).toEqual(['Pullstack', './', 'standalone']);
    expect(manifest.icons.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512']);
    for (const { src, sizes } of manifest.icons) {
      const icon = await loadImage(await read(src));
      expect(`${icon.width}x${icon.height}`).toBe(sizes);
    }
  });
});
