import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALL, openPage, openStudio, type Studio } from '../harness.ts';

const DIST = fileURLToPath(new URL('../../../dist/', import.meta.url));

/** Asked of the app: under 300 kB gzip before the first prints. */
const MOST_BYTES = 290_000;

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio(ALL);
});

afterAll(async () => {
  await studio?.close();
});

/** Waits for the first prints. @returns what the page asked for after they hung */
function askedAfterFirst(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const hang = (room: Element): boolean => Number((room as HTMLElement).dataset['found'] ?? 0) > 0;
    let room: Element | null | undefined;
    while (room === null || room === undefined) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
      room = document.querySelector('app-root')?.shadowRoot?.querySelector('wall-room');
    }
    const wall = room;
    if (!hang(wall))
      await new Promise<void>((resolve) => {
        new MutationObserver(() => hang(wall) && resolve()).observe(wall, { attributeFilter: ['data-found'] });
      });
    const first = performance.now();
    return performance.getEntriesByType('resource').flatMap(({ name, startTime }) => (startTime > first ? [name] : []));
  });
}

async function packedBytes(url: string): Promise<number> {
  const file = new URL(url).pathname.slice(1);
  return gzipSync(await readFile(DIST + (file === '' ? 'index.html' : file))).length;
}

describe('what comes before the first prints', () => {
  it('should be light, page and workers together, and leave the canvas library for later', async () => {
    const { page } = await openPage(studio);
    const asked = new Set<string>();
    page.on('request', (request) => request.url().startsWith(studio.url) && asked.add(new URL(request.url()).href));
    await page.goto(studio.url);
    const after = new Set(await askedAfterFirst(page));
    const before = [...asked].filter((url) => !after.has(url));
    for (const part of ['engine.worker', 'wall-scene', 'demo-']) expect(before.join()).toContain(part);
    expect(before.join()).not.toMatch(/wall-drawing|plan-jobs|schemas/u);
    const bytes = await Promise.all(before.map(packedBytes));
    expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThan(MOST_BYTES);
  });
});
