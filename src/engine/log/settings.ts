import { standing } from './events.ts';
import type { LogEvent } from './types.ts';

/** What was noted of a set-up: how its screen stood on the press. */
export type SettingNoted = Omit<Extract<LogEvent, { kind: 'set-up' }>, 'id' | 'device' | 'sheet' | 'kind'>;

/** The last word of each screen and ink, the latest first. @param events of one visit or of several */
export function settingsNoted(events: readonly LogEvent[]): SettingNoted[] {
  const found = new Map<string, SettingNoted>();
  for (const event of standing(events).toReversed()) {
    if (event.kind !== 'set-up') continue;
    const { screen, ink, how, note, atMs } = event;
    const key = JSON.stringify([screen.number, screen.name, ink]);
    if (!found.has(key)) found.set(key, { screen, ink, how, note, atMs });
  }
  return [...found.values()];
}

/**
 * What to begin a set-up with: what was noted of its screen in the same ink, else of its screen.
 * @param noted the latest first
 */
export function settingFor(
  noted: readonly SettingNoted[],
  { screen, ink }: { screen: SettingNoted['screen']; ink: { ink: { name: string } } },
): SettingNoted | null {
  const own = noted.filter((each) => each.screen.number === screen.number && each.screen.name === screen.name);
  return own.find((each) => each.ink === ink.ink.name) ?? own[0] ?? null;
}
