import { describe, expect, it } from 'vitest';
import { type Random, randomFrom } from '../../../src/engine/base/random.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { CASE_PRESS } from '../../helpers/printer-cases.ts';
import { pullOf, rectangle, screenAt, smallProject } from '../../helpers/small-project.ts';
import { bruteForce } from '../pullorder/brute-force.ts';

/** LONG=1 in the environment looks at ten times as many visits. */
const CASES = process.env['LONG'] === undefined ? 400 : 4000;

/** Middle and size of each screen's one rectangle, mm: they overlap by 20 mm or more or lie 20 mm apart, so that no offset here changes which. */
const PLACES = [
  { x: 150, y: 200, width: 160, height: 160 },
  { x: 250, y: 200, width: 80, height: 240 },
  { x: 410, y: 240, width: 200, height: 100 },
  { x: 330, y: 420, width: 280, height: 300 },
] as const;

const { drawer } = smallProject();
const STUDIO = {
  ...drawer,
  shapes: PLACES.map(({ width, height }, at) => rectangle(`shape ${at}`, width, height)),
  screens: PLACES.map(({ x, y }, at) => screenAt(`s${at}`, at + 1, `shape ${at}`, x, y)),
};
const INKS = ['rust', 'weed', 'foam'];

/** A pull as this test reads it. */
type Read = Pick<Pull, 'screen' | 'ink' | 'dxMm' | 'dyMm' | 'turnDeg' | 'strokes'>;

interface Case {
  input: VisitInput;
  recipes: Recipe[];
  registrationMm: number;
  sheets: number[];
}

function randomCase(random: Random): Case {
  const registrationMm = random.pick([0, 0.3, 0.5, 0.8]);
  const screens = 2 + random.int(3);
  const inks = 1 + random.int(3);
  const count = 1 + random.int(3);
  const recipes = Array.from({ length: count }, (_, r) => {
    const pulls = Array.from({ length: 1 + random.int(count === 1 ? 6 : count === 2 ? 4 : 3) }, (_each, at): Pull => {
      const off = random.chance(1, 2);
      return pullOf(`p${at}`, `s${random.int(screens)}`, entry(INKS, random.int(inks)), {
        dxMm: off ? (random.int(13) - 6) / 10 : 0,
        dyMm: off ? (random.int(7) - 3) / 10 : 0,
        turnDeg: random.chance(1, 8) ? 0.1 : 0,
        strokes: 1 + random.int(3),
      });
    });
    return recipeOf(pulls, STUDIO, { id: `r${r}`, title: `R${r}` });
  });
  // Sums of different sheets differ, so that it is seldom a matter of taste which offset most sheets have.
  const sheets = random.shuffle([1, 2, 4]).slice(0, count);
  const runs = recipes.map((recipe, r) => ({ recipe, sheets: entry(sheets, r) }));
  return { input: { runs, minDeltaE: 0, press: { ...CASE_PRESS, registrationMm }, seed: 'b' }, recipes, registrationMm, sheets };
}

function entry<T>(list: readonly T[], at: number): T {
  return list[at]!;
}

const offsetOf = ({ dxMm, dyMm, turnDeg }: Read): string => `${dxMm} ${dyMm} ${turnDeg}`;

/**
 * Which offset stands for each of a screen: the one that most sheets have stands for all that lie nearer to it
 * than the table holds register and are turned as it is; then the next of those that are left.
 * @returns null where two offsets are on as many sheets: then there are two right answers
 */
function offsetsAsOne(pulls: readonly { pull: Read; sheets: number }[], registrationMm: number): Map<string, string> | null {
  const counts = new Map<string, { pull: Read; sheets: number }>();
  for (const { pull, sheets } of pulls) {
    const known = counts.get(offsetOf(pull));
    counts.set(offsetOf(pull), { pull, sheets: sheets + (known?.sheets ?? 0) });
  }
  let left = [...counts.values()].sort((a, b) => b.sheets - a.sheets);
  if (left.some(({ sheets }, at) => left[at + 1]?.sheets === sheets)) return null;
  const standsFor = new Map<string, string>();
  while (left.length > 0) {
    const head = entry(left, 0).pull;
    // Tenths of a millimetre, so that 0.3 is 0.3.
    const near = ({ pull }: { pull: Read }): boolean =>
      pull === head ||
      (pull.turnDeg === head.turnDeg &&
        Math.round(10 * (pull.dxMm - head.dxMm)) ** 2 + Math.round(10 * (pull.dyMm - head.dyMm)) ** 2 <
          Math.round(10 * registrationMm) ** 2);
    for (const other of left.filter(near)) standsFor.set(offsetOf(other.pull), offsetOf(head));
    left = left.filter((other) => !near(other));
  }
  return standsFor;
}

function placeOf({ screen }: Read): (typeof PLACES)[number] {
  return entry(PLACES, Number(screen.slice(1)));
}

function meet(one: Read, other: Read): boolean {
  const [a, b] = [placeOf(one), placeOf(other)];
  return 2 * Math.abs(a.x - b.x) < a.width + b.width && 2 * Math.abs(a.y - b.y) < a.height + b.height;
}

/**
 * The visit as a printer counts it: a set-up is a screen, an ink and an offset within register; strokes are told
 * with it. Sheets of one recipe go through together, so one of each is counted.
 */
function readByHand({ recipes, registrationMm, sheets }: Case): Parameters<typeof bruteForce>[0] | null {
  const asOne = new Map<string, Map<string, string>>();
  for (const { id } of STUDIO.screens) {
    const own = recipes.flatMap(({ pulls }, r) =>
      pulls.filter(({ screen }) => screen === id).map((pull) => ({ pull, sheets: entry(sheets, r) })),
    );
    const found = offsetsAsOne(own, registrationMm);
    if (found === null) return null;
    asOne.set(id, found);
  }
  return {
    sheets: recipes.map(({ pulls }) => ({
      pulls: pulls.map((pull) => ({ screen: pull.screen, ink: pull.ink, offset: asOne.get(pull.screen)!.get(offsetOf(pull))! })),
      overlaps: pulls.flatMap((over, b) =>
        pulls.slice(0, b).flatMap((under, a): [number, number][] => (meet(under, over) ? [[a, b]] : [])),
      ),
    })),
  };
}

/** What is wrong with the cards when a printer follows them: sheet by sheet, with the strokes and the offset that he is told. */
function followed({ recipes, sheets, registrationMm }: Case, { cards }: PressPlan): string[] {
  const faults: string[] = [];
  const first = sheets.map((_, r) => sheets.slice(0, r).reduce((a, b) => a + b, 1));
  const done = recipes.map(({ pulls }, r) => Array.from({ length: entry(sheets, r) }, () => pulls.map(() => -1)));
  for (const [at, card] of cards.entries()) {
    for (const { recipe, sheets: numbers, prints } of card.states) {
      for (const [number, p] of numbers.flatMap((each) => prints.map((print) => [each, print] as const))) {
        const printed = entry(entry(done, recipe), number - entry(first, recipe));
        const { pulls } = entry(recipes, recipe);
        const pull = entry(pulls, p);
        if (printed[p] !== -1) faults.push(`sheet ${number} pull ${p} twice`);
        if (pulls.slice(0, p).some((under, a) => meet(under, pull) && (printed[a] === -1 || printed[a] === at)))
          faults.push(`sheet ${number} pull ${p} before what lies under it`);
        printed[p] = at;
        if (card.screen.name !== pull.screen || card.ink.ink.id !== pull.ink) faults.push(`sheet ${number} pull ${p} of another kind`);
        const far = Math.hypot(card.dxMm - pull.dxMm, card.dyMm - pull.dyMm);
        if ((far > 1e-9 && far > registrationMm - 1e-9) || card.turnDeg !== pull.turnDeg)
          faults.push(`sheet ${number} pull ${p} out of register`);
        const told = card.instructions!.some(
          (how) => how.sheets.includes(number) && how.strokes === pull.strokes && how.dxMm === pull.dxMm && how.dyMm === pull.dyMm,
        );
        if (!told) faults.push(`sheet ${number} pull ${p} not told`);
      }
    }
  }
  if (done.flat(2).includes(-1)) faults.push('something is never printed');
  return faults;
}

describe('planVisit', () => {
  it(`should plan ${CASES} random small visits with strokes and register as an independent brute force does`, () => {
    const seen = { strokes: 0, asOne: 0, apart: 0 };
    let counted = 0;
    for (let i = 0; counted < CASES; i++) {
      const one = randomCase(randomFrom(`strokes and register ${i}`));
      const problem = readByHand(one);
      if (problem === null) continue;
      counted++;
      const truth = bruteForce(problem);
      const plan = [...planVisit(one.input, 20)].at(-1)!;
      const text = `case ${i}: ${JSON.stringify(one.recipes.map(({ pulls }) => pulls))}`;
      expect([plan.mounts, plan.inkChanges, plan.registerMoves, plan.cards.length], text).toEqual(truth.best);
      expect(plan.bound.setUps, text).toBeLessThanOrEqual(truth.setUps);
      expect(plan.bound.mounts, text).toBeLessThanOrEqual(truth.mounts);
      expect(followed(one, plan), text).toEqual([]);
      const told = plan.cards.map(({ instructions }) => instructions!);
      if (told.some((how) => new Set(how.map(({ strokes }) => strokes)).size > 1)) seen.strokes++;
      if (told.some((how) => new Set(how.map(({ dxMm, dyMm }) => `${dxMm} ${dyMm}`)).size > 1)) seen.asOne++;
      if (plan.registerMoves > 0) seen.apart++;
    }
    // Cases that show nothing of strokes and register would agree as well.
    expect(seen.strokes).toBeGreaterThan(CASES / 10);
    expect(seen.asOne).toBeGreaterThan(CASES / 20);
    expect(seen.apart).toBeGreaterThan(CASES / 10);
  }, 600_000);
});
