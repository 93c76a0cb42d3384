import { readdirSync, readFileSync } from 'node:fs';
import type { Random } from '../../../../src/engine/base/random.ts';
import type { TasteChoice, TastePrint } from '../../../../src/engine/explore/taste/choices.ts';
import { sketchText, TRAITS, traitsOf } from '../../../../src/engine/explore/taste/traits.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { wallPrints } from '../../../helpers/wall-prints.ts';

const folder = new URL('../../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const project = demoProject(files);
/** Screens anywhere on the sheet, in any order and ink: what stands here stays, whatever the first wall of a newcomer is. */
const CHANGES = {
  orderFrom: 0,
  orderTo: 1,
  leaveOut: 7,
  bringIn: 4,
  places: 'anywhere',
  onSheet: 0.7,
  turns: 'quarter',
  repeats: 2,
} as const;
export const COUNT = 120;
/** A wall that choices are made on. */
export const prints = wallPrints({
  drawer: project.drawer,
  bench: project.bench,
  explore: { ...project.explore, ...CHANGES, count: COUNT },
});
/** Its prints as choices name them. */
export const known = prints.map(({ variant, measures, sketch }, i): TastePrint => ({
  key: variant.key,
  name: `no. ${i + 1}`,
  measures,
  sketch: sketchText(sketch),
}));

/** Their traits in standard deviations, worked out here from the measures alone. */
const traits = prints.map(traitsOf);
export const standard = traits.map((row) =>
  row.map((value, i) => {
    const column = traits.map((each) => each[i]!);
    const middle = column.reduce((sum, each) => sum + each, 0) / COUNT;
    const spread = Math.sqrt(column.reduce((sum, each) => sum + (each - middle) ** 2, 0) / COUNT);
    return spread < 1e-9 ? 0 : (value - middle) / spread;
  }),
);
/** Numbers of the traits in which they differ. */
export const VARYING = TRAITS.flatMap((_, i) => (standard.some((row) => row[i] !== 0) ? [i] : []));

/** A number between 0 and 1. */
export const share = (random: Random): number => (random.int(2 ** 30) + 0.5) / 2 ** 30;

/** Their numbers. */
export const all = prints.map((_, i) => i);
/** How closely two traits go together (coefficient of correlation). */
export const together = (i: number, k: number): number => standard.reduce((sum, row) => sum + row[i]! * row[k]!, 0) / COUNT;

/** Two logits to a standard deviation: the better of two prints is chosen in about four of five cases. */
export function worths(values: readonly number[]): number[] {
  const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / values.length);
  return values.map((value) => (2 * (value - middle)) / spread);
}

/** How likely the first of two prints is chosen. */
export const chance = (worth: readonly number[], a: number, b: number): number => 1 / (1 + Math.exp(worth[b]! - worth[a]!));

/** Which of two prints is chosen. @param worth of each print, in logits */
export function answer(worth: readonly number[], a: number, b: number, random: Random): TasteChoice {
  const [chosen, other] = share(random) < chance(worth, a, b) ? [a, b] : [b, a];
  return { way: 'compared', chosen: known[chosen]!, over: [known[other]!] };
}

/** So many answers about prints taken by chance. */
export function answers(worth: readonly number[], among: readonly number[], random: Random, count: number): TasteChoice[] {
  return Array.from({ length: count }, () => {
    const [a, b] = random.shuffle(among);
    return answer(worth, a!, b!, random);
  });
}
