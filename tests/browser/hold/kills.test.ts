import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import type { Command } from '../../../src/engine/project/commands/command.ts';
import { records } from '../databases.ts';
import { LAUNCH, openStudio, type Studio } from '../harness.ts';

/** `npm run kills` asks for 200. */
const KILLS = Number(process.env['KILLS'] ?? 3);

let studio: Studio;
const profiles: string[] = [];

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
  for (const profile of profiles) rmSync(profile, { recursive: true, force: true });
});

/** What makes two saved projects the same: every field of every section, whatever order fields were written in. */
function textOf(sections: object): string {
  const inOrder = (_: string, value: unknown): unknown =>
    value === null || typeof value !== 'object' || Array.isArray(value)
      ? value
      : Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
  return JSON.stringify(Object.entries(JSON.parse(JSON.stringify(sections, inOrder)) as object));
}

/** In which sections a saved project differs from the state that is most like it. */
function oddOf(saved: string, states: ReadonlySet<string>): string {
  const sections = new Map(JSON.parse(saved) as [string, unknown][]);
  const differing = [...states].map((state) => {
    const then = new Map(JSON.parse(state) as [string, unknown][]);
    return [...new Set([...sections.keys(), ...then.keys()])].flatMap((name) => {
      const [now, before] = [JSON.stringify(sections.get(name)), JSON.stringify(then.get(name))];
      return now === before ? [] : [`${name}: saved ${now?.slice(0, 400)}, was ${before?.slice(0, 400)}`];
    });
  });
  return differing.sort((a, b) => a.length - b.length)[0]?.join('; ') ?? 'no state';
}

/** A browser with a profile that outlives it, and the process to kill. */
async function begin(profile: string): Promise<{ context: BrowserContext; page: Page; pid: number }> {
  const context = await chromium.launchPersistentContext(profile, LAUNCH);
  const page = context.pages()[0] ?? (await context.newPage());
  const client = await context.browser()!.newBrowserCDPSession();
  const { processInfo } = await client.send('SystemInfo.getProcessInfo');
  return { context, page, pid: processInfo.find(({ type }) => type === 'browser')!.id };
}

/** Changes the project without end; each state is told before it comes about. */
async function storm(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { store } = document.querySelector('app-root')! as unknown as { store: AppStore };
    const { tellState } = window as unknown as { tellState(text: string): Promise<void> };
    const next = (step: number): Command | null => {
      const { project } = store;
      const pull = project.bench[step % project.bench.length]!;
      switch (step % 5) {
        case 0:
          return { kind: 'rename', title: `Step ${step}` };
        case 1:
          return { kind: 'change-pull', pull: pull.id, change: { dxMm: (step % 40) / 10 } };
        case 2:
          return { kind: 'set-explore', change: { seed: `seed ${step}` } };
        // What lies on the Bench and where it came from: two sections at once.
        case 3:
          return { kind: 'open-stack', pulls: project.bench.toReversed() };
        default:
          return null;
      }
    };
    for (let step = 0; ; step++) {
      const command = next(step);
      const trial = new (store.constructor as typeof AppStore)(store.project, { save() {} });
      // What undo gives is known already: the state before the step before.
      if (command !== null) {
        trial.dispatch(command);
        await tellState(JSON.stringify(trial.project));
        store.dispatch(command);
      } else store.undo();
    }
  });
}

describe('a browser that is killed', () => {
  it(
    `should open again with a project as it once was, whole, after each of ${KILLS} kills`,
    async () => {
      // A profile for each try, since what a failed one left open holds its own.
      const profile = mkdtempSync(join(tmpdir(), 'pullstack-kills-'));
      profiles.push(profile);
      for (let kill = 0; kill < KILLS; kill++) {
        const { context, page, pid } = await begin(profile);
        const states = new Set<string>();
        await page.exposeFunction('tellState', (text: string) => {
          states.add(textOf(JSON.parse(text) as object));
        });
        await page.goto(`${studio.url}#chest`);
        await page.locator('project-menu button.open').waitFor();
        await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['format']).toBe('pullstack-project');
        states.add(textOf(await records(page, 'pullstack', 'sections')));
        const gone = new Promise((resolve) => context.once('close', resolve));
        void storm(page).catch(() => undefined);
        await expect.poll(() => states.size, { timeout: 30_000 }).toBeGreaterThan(3 + ((kill * 7) % 23));
        process.kill(pid, 'SIGKILL');
        await gone;

        const { context: after, page: opened } = await begin(profile);
        await opened.goto(`${studio.url}#chest`);
        await opened.locator('project-menu button.open').waitFor();
        const saved = await records(opened, 'pullstack', 'sections');
        const text = textOf(saved);
        expect(states.has(text), `kill ${kill + 1}: ${states.has(text) ? '' : oddOf(text, states)}`).toBe(true);
        expect(await opened.getByText(/could not be read/).count()).toBe(0);
        await after.close();
      }
    },
    60_000 + KILLS * 30_000,
  );
});
