// Takes the pictures of the rooms that the help shows, from the built app with the demo project.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { chromium } from 'playwright-core';
import { preview } from 'vite';
import { findBrowser, ROOT } from './install.mjs';

const OUT = join(ROOT, 'src/components/help/pictures');
const SIZE = { width: 1200, height: 750 };
/** Of WebP, 0 to 100: type stays readable, and a picture below 40 kB. */
const QUALITY = 62;

const server = await preview({ root: ROOT, logLevel: 'error', preview: { port: 0, host: '127.0.0.1', open: false } });
const url = `http://127.0.0.1:${server.httpServer.address().port}/`;
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: SIZE, serviceWorkers: 'block' });
await page.addInitScript(() => localStorage.setItem('pullstack-first-steps', 'closed'));

async function save(room) {
  const image = await loadImage(await page.screenshot());
  const canvas = createCanvas(SIZE.width, SIZE.height);
  canvas.getContext('2d').drawImage(image, 0, 0);
  writeFileSync(join(OUT, `${room}.webp`), canvas.toBuffer('image/webp', QUALITY));
}

const rest = () => page.waitForTimeout(2500);

mkdirSync(OUT, { recursive: true });
await page.goto(`${url}#wall`);
await page.waitForFunction(
  () => document.querySelector('app-root')?.shadowRoot?.querySelector('wall-room')?.getAttribute('data-state') === 'done',
  null,
  { timeout: 180_000 },
);
await page.getByRole('application', { name: 'Wall of prints' }).focus();
for (const key of ['Home', 'k', 'ArrowRight', 'ArrowRight', 'k', 'ArrowRight', 'k', 'ArrowLeft']) await page.keyboard.press(key);
await page.waitForTimeout(9000);
await save('wall');
for (const room of ['drawer', 'inks', 'chest', 'lesson']) {
  await page.goto(`${url}#${room}`);
  await rest();
  await save(room);
}
await page.goto(`${url}#bench`);
await page.getByRole('option').nth(8).click();
await rest();
await save('bench');
await page.goto(`${url}#press`);
const counts = page.getByRole('spinbutton', { name: /^Sheets of/ });
await counts.first().waitFor();
for (const field of await counts.all()) {
  await field.fill('4');
  await field.press('Tab');
}
await page.getByRole('button', { name: 'Find the pull order' }).click();
await page.getByRole('button', { name: 'Print the pull sheet' }).waitFor({ timeout: 120_000 });
await page.waitForTimeout(6000);
await save('press');
await browser.close();
await server.close();
