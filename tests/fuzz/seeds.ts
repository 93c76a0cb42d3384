import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas } from '@napi-rs/canvas';
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
    default:
      return [light(`${reader}.json`), readFileSync(join('tests/files-from-before', `${reader}.json`), 'utf8')];
  }
}
