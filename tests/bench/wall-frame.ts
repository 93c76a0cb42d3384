import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';

// What is timed: a frame of a wall that moves by a pixel, all prints in view, at 1440 × 900 in Chromium
// with software GL, against PixiJS drawing one bitmap sprite a print (160 rows each, as the wall's maps).
// Rounds take turns; medians. 'page' is what the page's own thread spends on a frame, which is all that
// counts beside a graphics card; 'processor' is the time of all processes of the browser, on Linux, where
// the software draws every pixel. The wall also draws shadows, numbers and marks.

const ROOT = process.cwd();
const ROUNDS = 5;
const FRAMES = 12;

interface Bench {
  prepare(count: number): Promise<void>;
  frames(name: 'wall' | 'sprites', steps: number): number;
}

/** Processor time of a process and all that it started, ms; NaN where /proc does not tell. */
function processorMs(root: number): number {
  if (!existsSync('/proc/self/stat')) return Number.NaN;
  const parents = new Map<number, number>();
  const times = new Map<number, number>();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const fields = readFileSync(`/proc/${name}/stat`, 'utf8')
        .replace(/^.*\) /, '')
        .split(' ');
      parents.set(Number(name), Number(fields[1]));
      // Ticks of a hundredth of a second.
      times.set(Number(name), (Number(fields[11]) + Number(fields[12])) * 10);
    } catch {
      // It ended while the list was read.
    }
  }
  const within = (pid: number): boolean => pid === root || (parents.has(pid) && pid > 1 && within(parents.get(pid)!));
  return [...times].reduce((sum, [pid, ms]) => sum + (within(pid) ? ms : 0), 0);
}

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[values.length >> 1]!;
}

const site = await createServer({
  root: ROOT,
  configFile: false,
  logLevel: 'error',
  server: { port: 0, host: '127.0.0.1', hmr: false },
});
await site.listen();
const executablePath = process.env.CHROMIUM_PATH ?? (existsSync('/usr/bin/chromium') ? '/usr/bin/chromium' : undefined);
const server = await chromium.launchServer({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
const browser = await chromium.connect(server.wsEndpoint());
const lines = ['prints  page ms: wall  sprites   ratio   processor ms: wall  sprites   ratio'];
try {
  for (const count of [200, 1000, 3000]) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${site.resolvedUrls!.local[0]}tests/bench/wall-frame.html`);
    await page.waitForFunction(() => 'prepare' in window);
    await page.evaluate((n) => (window as unknown as Bench).prepare(n), count);
    const times = { wall: { page: [] as number[], all: [] as number[] }, sprites: { page: [] as number[], all: [] as number[] } };
    for (let round = 0; round <= ROUNDS; round++) {
      for (const name of ['wall', 'sprites'] as const) {
        const before = processorMs(server.process().pid!);
        const own = await page.evaluate(([which, steps]) => (window as unknown as Bench).frames(which, steps), [name, FRAMES] as const);
        if (round === 0) continue;
        times[name].page.push(own);
        times[name].all.push((processorMs(server.process().pid!) - before) / FRAMES);
      }
    }
    const [wall, sprites] = [times.wall, times.sprites].map(({ page: own, all }) => ({ page: median(own), all: median(all) })) as [
      { page: number; all: number },
      { page: number; all: number },
    ];
    const triple = (a: number, b: number, digits: number, widths: [number, number]): string =>
      `${a.toFixed(digits).padStart(widths[0])}${b.toFixed(digits).padStart(widths[1])}${`${(b / a).toFixed(1)}×`.padStart(8)}`;
    lines.push(`${String(count).padStart(6)}${triple(wall.page, sprites.page, 2, [15, 9])}${triple(wall.all, sprites.all, 0, [21, 9])}`);
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
  await site.close();
}
console.log(lines.join('\n'));
