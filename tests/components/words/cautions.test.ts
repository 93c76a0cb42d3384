import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { CAUTIONS, CAUTIONS_BY_TOPIC, CAUTIONS_DEFER } from '../../../src/components/words/cautions.ts';

const all = [...CAUTIONS, ...Object.values(CAUTIONS_BY_TOPIC).flat()];

it('should caution of what hurts in each kind of work, and leave the rule to those who know it', () => {
  // Common practice, no source; what must be named was asked for by its users.
  const wanted = {
    screens: [/emulsion/i, /ultraviolet/, /water .* plugs/, /never mixed/, /blade.*laser.*trained staff/],
    cutting: [/trained staff/, /never left alone/, /PVC/, /copper and aluminium/, /eye protection/],
    inks: [/gloves/, /powders/, /UV-curing/, /skin/, /eye wash/],
    target: [/adult/, /no solvents/],
    lesson: [/supervision/, /no solvents/],
    press: [/vacuum bed/, /electricity/, /wet floors/, /heated drying/, /never mixed/, /eye wash/, /food or drink/],
  } as const;
  for (const [topic, words] of Object.entries(wanted)) {
    const text = CAUTIONS_BY_TOPIC[topic as keyof typeof wanted].join(' ');
    for (const word of words) expect(text, topic).toMatch(word);
  }
  for (const sentence of all) {
    expect(sentence.length).toBeLessThan(190);
    expect(sentence).toMatch(/\.$/);
  }
  expect(CAUTIONS_DEFER).toMatch(/safety data sheets.*local codes.*trained staff/);
});

it('should stand where the work is', () => {
  const root = fileURLToPath(new URL('../../../src/components/', import.meta.url));
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
  const text = (file: string): string => readFileSync(root + file, 'utf8');
  const places = files.filter((file) => text(file).includes('<ps-cautions topic=')).sort();
  expect(places).toEqual([
    'drawer/drawer-room.ts',
    'help/help-dialog.ts',
    'inks/inks-room.ts',
    'lesson/lesson-room.ts',
    'press/log/log-press.ts',
    'press/plan/stencil-list.ts',
    'ui/films/films-dialog.ts',
    'ui/films/plates-dialog.ts',
  ]);
  expect(text('inks/target/target-sheet.ts')).toContain('CAUTIONS_BY_TOPIC.target');
});
