import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const WORDS = fileURLToPath(new URL('../../../src/components/words', import.meta.url));

type Words = Record<string, unknown>;

async function catalogue(language: string, name: string): Promise<Words> {
  return ((await import(join(WORDS, language, name))) as { say: Words }).say;
}

const labelsOf = (text: unknown): string[] =>
  String(text)
    .split('*')
    .filter((_, i) => i % 2 === 1);

/** A label as it stands; one with a count with that of the help. */
const shown = (entry: unknown): string => (typeof entry === 'function' ? String(entry.length === 1 ? entry(12) : '') : String(entry));

describe('the German help', () => {
  it('should name the same labels as the English, each as the rooms have it in German', async () => {
    const names = readdirSync(join(WORDS, 'en'), { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'));
    const german = new Map<string, Set<string>>();
    for (const name of names.filter((each) => each.endsWith('.ts') && !each.startsWith('help/') && existsSync(join(WORDS, 'de', each)))) {
      const [en, de] = [await catalogue('en', name), await catalogue('de', name)];
      for (const [key, entry] of Object.entries(en)) german.set(shown(entry), (german.get(shown(entry)) ?? new Set()).add(shown(de[key])));
    }
    const odd: string[] = [];
    let labels = 0;
    for (const name of ['help/room.ts', 'help/rooms.ts']) {
      const [en, de] = [await catalogue('en', name), await catalogue('de', name)];
      for (const [key, entry] of Object.entries(en).filter(([, each]) => typeof each === 'string')) {
        const [asked, told] = [labelsOf(entry), labelsOf(de[key])];
        labels += told.length;
        // A room that is not in German yet keeps its English labels.
        const missing = asked.filter((label) => german.has(label) && !told.some((each) => german.get(label)?.has(each) === true));
        if (missing.length > 0 || asked.length !== told.length)
          odd.push(`${key}: ${missing.map((label) => `${label} = ${[...(german.get(label) ?? ['?'])].join(' | ')}`).join('; ')}`);
      }
    }
    expect(labels).toBeGreaterThan(30);
    expect(odd).toEqual([]);
  });
});
