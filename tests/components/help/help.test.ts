import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { GLOSSARY, wordsWith } from '../../../src/components/help/glossary.ts';
import { ROOM_HELP } from '../../../src/components/help/room-help.ts';
import { FIRST_STEPS } from '../../../src/components/help/steps.ts';
import { ROOMS } from '../../../src/components/rooms.ts';
import { smallProject } from '../../helpers/small-project.ts';

const COMPONENTS = fileURLToPath(new URL('../../../src/components', import.meta.url));

/** What all components but the help itself say, with the places of values left open. */
const said = readdirSync(COMPONENTS, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.ts') && !/^(help|words\/(en\/help|de))\//u.test(name))
  .map((name) => readFileSync(join(COMPONENTS, name), 'utf8'))
  .join('\n');

const labelsOf = (text: string): string[] => text.split('*').filter((_, i) => i % 2 === 1);

describe('the help', () => {
  it('should name only labels that stand in the app', () => {
    const texts = [...Object.values(ROOM_HELP).flatMap(({ howTo }) => howTo.map(([, how]) => how)), ...FIRST_STEPS.map(({ text }) => text)];
    const labels = texts.flatMap(labelsOf);
    expect(labels.length).toBeGreaterThan(30);
    // A number in a label is a value of the app.
    const stands = (label: string): boolean => said.includes(label) || said.includes(label.replace(/\d+/u, '${'));
    expect(labels.filter((label) => !stands(label.replace(/ \d.*$/u, '')))).toEqual([]);
  });

  it('should have a page with a picture for every room', () => {
    for (const { id } of ROOMS) {
      expect(ROOM_HELP[id].howTo.length, id).toBeGreaterThan(2);
      expect(existsSync(join(COMPONENTS, `help/pictures/${id}.webp`)), id).toBe(true);
    }
  });

  it('should hold each word once, by the alphabet, and those of the README with the same meaning', () => {
    const words = GLOSSARY.map(({ word }) => word);
    expect(new Set(words).size).toBe(words.length);
    expect(words).toEqual([...words].sort((a, b) => a.localeCompare(b, 'en')));
    const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
    const table = readme.slice(readme.indexOf('## Words'), readme.indexOf('## What the pictures are'));
    const rows = [...table.matchAll(/^\| ([^|]+) \| ([^|]+) \|$/gmu)].map(([, word, means]) => [word!.trim(), means!.trim()]).slice(2);
    expect(rows.length).toBeGreaterThan(5);
    for (const [word, means] of rows) {
      const entry = GLOSSARY.find((each) => each.word === word);
      expect(entry?.means.replaceAll('’', "'").toLowerCase(), word).toContain(means!.toLowerCase());
    }
  });

  it('should find words by their meaning, all parts of what is looked for', () => {
    expect(wordsWith('  VEIL ').map(({ word }) => word)).toContain('veil');
    expect(wordsWith('second ink').map(({ word }) => word)).toEqual(['stroke']);
    expect(wordsWith('')).toEqual(GLOSSARY);
    expect(wordsWith('xylophone')).toEqual([]);
  });
});

describe('first steps', () => {
  it('should go on by themselves where a project shows that one was done', () => {
    const began = smallProject();
    const [keep, order, , , drawing] = FIRST_STEPS;
    expect(keep!.done(began, began)).toBe(false);
    expect(order!.done(began, { ...began, bench: [...began.bench].reverse() })).toBe(true);
    expect(order!.done(began, { ...began, bench: began.bench.slice(1) })).toBe(false);
    expect(drawing!.done(began, { ...began, drawer: { ...began.drawer, shapes: [...began.drawer.shapes, began.drawer.shapes[0]!] } })).toBe(
      true,
    );
  });
});
