import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas } from '@napi-rs/canvas';
import { strToU8, zipSync } from 'fflate';
import { goalSheet } from '../../src/engine/lesson/goal-sheets.ts';
import { packLesson } from '../../src/engine/lesson/packed-lesson.ts';
import { recipeOf } from '../../src/engine/recipe/write.ts';
import { planVisit } from '../../src/engine/visit/visit.ts';
import { lessonLink } from '../../src/engine/visitfile/lesson-link.ts';
import { writePlan } from '../../src/engine/visitfile/plan-file.ts';
import { setUpFragment, type SetUpOnPhone } from '../../src/engine/visitfile/set-up-link.ts';
import { smallProject } from '../helpers/small-project.ts';
import type { ReaderName } from './readers.ts';

const textsIn = (folder: string, ending: string, every = 1): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .filter((_, i) => i % every === 0)
    .map((name) => readFileSync(join(folder, name), 'utf8'));

/** Shapes of few corners, so that a text is mostly names, numbers and lists that matter. */
function light(name: string): string {
  const text = readFileSync(join('tests/files-from-before', name), 'utf8');
  const cut = (key: string, value: unknown): unknown =>
    key === 'rings' ? (value as number[][]).slice(0, 1).map((ring) => ring.slice(0, 16)) : value;
  return JSON.stringify(JSON.parse(text, cut));
}

const SET_UP: SetUpOnPhone = {
  version: 1,
  project: 'Slack tide, Żółw',
  title: 'Set-up 12',
  tags: 'mount, new ink',
  screen: '7 reef',
  ink: 'Foam, 24 g',
  hex: '#a63c20',
  lines: ['2.0 mm right, 1.0 mm up; 2 strokes', 'Mesh 90/cm, thread 48 µm'],
  paper: { widthMm: 560, heightMm: 760 },
  offset: { dxMm: 2, dyMm: -1, turnDeg: 0 },
  parts: [{ title: 'A Ebb', sheets: ['1', '2', '3'] }],
};

/** A pull order as a visit's file holds it. */
function smallPlan(): unknown {
  const { bench, drawer, press } = smallProject();
  const recipe = recipeOf(bench, drawer, { id: 'a', title: 'Ebb' });
  const input = { runs: [{ recipe, sheets: 4, overs: 1, proofs: 1 }], minDeltaE: 1, press, seed: 'x' };
  const [plan] = [...planVisit(input, 50)].slice(-1);
  return JSON.parse(writePlan({ plan: plan!, input, recipes: [recipe] }));
}

/** A zip's bytes, one a sign. */
function zipText(parts: Record<string, unknown>, level: 0 | 6): string {
  const packed = zipSync(Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, strToU8(JSON.stringify(part))])), { level });
  return Array.from(packed, (byte) => String.fromCharCode(byte)).join('');
}

/** Real files of each reader; run from the root of the project. */
export function realFiles(reader: ReaderName): string[] {
  switch (reader) {
    case 'svg':
      return [
        ...textsIn('shapes', '.svg'),
        ...textsIn('node_modules/bootstrap-icons/icons', '.svg', 50),
        ...(JSON.parse(readFileSync('tests/published/shapes/features.json', 'utf8')) as { rows: { svg: string }[] }).rows.map(
          ({ svg }) => svg,
        ),
      ];
    case 'cgats':
      return textsIn('tests/published/ink/cgats', '.txt');
    case 'photo':
      return (['png', 'jpeg', 'webp'] as const).map((kind) =>
        createCanvas(23, 17)
          .encodeSync(kind as 'png')
          .toString('latin1'),
      );
    case 'typed':
      return ['1,234.5', '−0,5', '1 3/8', '50 −3,2 40', '#a0b1c2', 'rgb(1, 2, 3)', 'L* 50 a* 3 b* −9', '#press', '#wall?print=3'];
    case 'visit': {
      const [project, log] = [JSON.parse(light('project.json')) as unknown, JSON.parse(light('log.json')) as unknown];
      const parts = { 'project.json': project, 'plan.json': smallPlan(), 'log.json': log };
      return [JSON.stringify(parts), ...([0, 6] as const).map((level) => zipText(parts, level))];
    }
    case 'lesson': {
      const given = { sheet: goalSheet('overprint-avoided'), goal: 'on-top' as const };
      return [JSON.stringify(packLesson(given, 1)), lessonLink(given, 30_000)!.fragment];
    }
    case 'link':
      return [JSON.stringify(SET_UP), setUpFragment(SET_UP)];
    default:
      return [light(`${reader}.json`), readFileSync(join('tests/files-from-before', `${reader}.json`), 'utf8')];
  }
}
