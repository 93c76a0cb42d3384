// Uses the app for half an hour, or as long as asked, and prints each minute what it holds: `npm run soak`, `npm run soak -- 10`.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { build, preview } from 'vite';
import { findBrowser, installPackages, ROOT } from './install.mjs';

const MINUTES = Number(process.argv[2] ?? 30);
/** By then everything that is made once is made. */
const SETTLED_AFTER = 5;

installPackages();
const { chromium } = createRequire(join(ROOT, 'package.json'))('playwright-core');
const executablePath = await findBrowser();
if (process.env.SOAK_BUILT === undefined) await build({ root: ROOT, logLevel: 'error' });
const server = await preview({ root: ROOT, logLevel: 'error', preview: { port: 0, host: '127.0.0.1', open: false } });
const url = `http://127.0.0.1:${server.httpServer.address().port}/`;
const browser = await chromium.launch({
  executablePath,
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
const errors = [];
page.on('pageerror', (error) => errors.push(String(error)));
const client = await page.context().newCDPSession(page);
await client.send('Performance.enable');

/** Memory that the browser's processes for pages take, MB. */
async function residentMb() {
  const system = await browser.newBrowserCDPSession();
  const { processInfo } = await system.send('SystemInfo.getProcessInfo');
  await system.detach();
  const kb = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }) => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0));
  return Math.max(...kb) / 1024;
}

async function figures() {
  await client.send('HeapProfiler.collectGarbage');
  const { metrics } = await client.send('Performance.getMetrics');
  const metric = (name) => metrics.find((each) => each.name === name).value;
  const canvases = await page.evaluate(() => {
    const count = (root) =>
      [...root.querySelectorAll('*')].reduce(
        (sum, each) => sum + (each.localName === 'canvas') + (each.shadowRoot ? count(each.shadowRoot) : 0),
        0,
      );
    return count(document);
  });
  return {
    'heap MB': metric('JSHeapUsedSize') / 2 ** 20,
    nodes: metric('Nodes'),
    listeners: metric('JSEventListeners'),
    workers: page.workers().length,
    canvases,
    'resident MB': await residentMb(),
  };
}

const enter = (room) => page.evaluate((room) => document.querySelector('app-root').store.go(room), room);
const state = () => page.locator('wall-room').getAttribute('data-state');

async function until(done) {
  const start = Date.now();
  while (!(await done())) {
    if (Date.now() - start > 120_000) throw new Error('nothing happened for two minutes');
    await page.waitForTimeout(100);
  }
}

/** A round of work: a wall, a print on the Bench that is changed, a recipe kept, planned and removed, all rooms seen. */
async function round(number) {
  await enter('wall');
  await page.evaluate(
    (seed) => document.querySelector('app-root').store.dispatch({ kind: 'set-explore', change: { seed, count: 60 } }),
    `soak ${number}`,
  );
  await page.evaluate(() => document.querySelector('app-root').shadowRoot.querySelector('wall-room').find());
  await page.waitForTimeout(300);
  await until(async () => (await state()) === 'done');
  await page.getByRole('application', { name: /wall/i }).focus();
  for (const key of ['Home', 'ArrowRight', 'k', 'ArrowRight', 'k', '+', '+', '+', '0', 'Enter']) {
    await page.keyboard.press(key);
    await page.waitForTimeout(120);
  }
  await enter('bench');
  await page.evaluate((number) => {
    const { store } = document.querySelector('app-root');
    for (const pull of store.project.bench) store.dispatch({ kind: 'change-pull', pull: pull.id, change: { dxMm: (number % 30) / 10 } });
  }, number);
  await page.waitForTimeout(400);
  await enter('press');
  await page.evaluate(() => {
    const { store } = document.querySelector('app-root');
    store.dispatch({ kind: 'set-visit', runs: store.project.recipes.map(({ id }) => ({ recipe: id, sheets: 3 })) });
  });
  await page.getByRole('button', { name: 'Find the pull order' }).first().click();
  await page.waitForTimeout(1500);
  for (const room of ['chest', 'inks', 'drawer', 'lesson', 'chest']) {
    await enter(room);
    await page.waitForTimeout(300);
  }
  await page.evaluate(() => {
    const { store } = document.querySelector('app-root');
    for (const { id } of store.project.recipes) store.dispatch({ kind: 'remove-recipe', recipe: id });
  });
  await page.waitForTimeout(200);
}

await page.goto(`${url}#wall`);
await until(async () => (await state().catch(() => '')) === 'done');
const begun = Date.now();
const seen = [];
let rounds = 0;
console.log(
  ['minute', 'rounds', 'heap MB', 'nodes', 'listeners', 'workers', 'canvases', 'resident MB'].map((word) => word.padStart(11)).join(' '),
);
for (let minute = 0; minute <= MINUTES; minute++) {
  while (Date.now() - begun < minute * 60_000) await round(rounds++);
  const now = await figures();
  seen.push(now);
  console.log(
    [minute, rounds, ...Object.values(now).map((value) => Math.round(value * 10) / 10)]
      .map((value) => String(value).padStart(11))
      .join(' '),
  );
}
const settled = seen[Math.min(SETTLED_AFTER, seen.length - 1)];
for (const [what, value] of Object.entries(seen.at(-1))) {
  const from = settled[what];
  console.log(
    `${what}: ${value.toFixed(1)} at the end, ${from.toFixed(1)} after ${Math.min(SETTLED_AFTER, MINUTES)} minutes (${value >= from ? '+' : ''}${(((value - from) / from) * 100).toFixed(0)} %)`,
  );
}
for (const error of errors) console.log(`error: ${error}`);
await browser.close();
await server.close();
