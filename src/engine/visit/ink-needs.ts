import { defined, entryAt, num } from '../base/at.ts';
import { intersectionArea } from '../geometry/booleans.ts';
import { meshVolumeCm3PerM2 } from '../ink/film/mesh.ts';
import { testPullOf } from '../pullorder/timeline/test-pull.ts';
import type { SetUp } from '../pullorder/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { pullRings } from '../shapes/place/placed.ts';
import { inkGrams, stockGrams } from './quantities/ink.ts';
import type { InkRun } from './quantities/types.ts';
import { inkText } from './registry.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitProblem } from './visit-problem.ts';

/** What one ink needs over the whole visit. */
export interface InkNeed {
  key: string;
  name: string;
  /** Area printed, all pulls on all numbered sheets, m². */
  areaM2: number;
  /** Wet ink to mix, g: what the four below come to. */
  grams: number;
  /** On sheets and overs, on proofs, left in screen and bucket, and for safety, g. */
  printedG: number;
  proofsG: number;
  lossG: number;
  safetyG: number;
}

/** What to have of one stock ink over the whole visit. */
export interface StockNeed {
  name: string;
  grams: number;
}

const knownAreas = new WeakMap<Recipe, number[]>();

/** Area that each pull of a recipe prints on the sheet, mm²; each recipe is measured once. */
export function pullAreas(recipe: Recipe): number[] {
  const known = knownAreas.get(recipe);
  if (known !== undefined) return known;
  const { widthMm, heightMm } = recipe.paper;
  const sheet = { rings: [[0, 0, widthMm, 0, widthMm, heightMm, 0, heightMm]], fillRule: 'nonzero' as const };
  const screens = new Map(recipe.screens.map((screen) => [screen.id, screen]));
  const areas = recipe.pulls.map((pull) =>
    intersectionArea(pullRings(defined(screens.get(pull.screen)), recipe.shapes, pull, recipe.paper), sheet),
  );
  knownAreas.set(recipe, areas);
  return areas;
}

/**
 * Wet ink to mix for a visit, by ink.
 * @param order its set-ups: each ink is lost in screen and bucket as often as it comes on a bed, and where
 *   the visit has a test sheet each set-up is pulled on it once, which counts with the proofs
 * @throws EngineError 'quantities.bad-number', 'ink.bad-mesh' with a sentence
 */
export function visitInks(visit: VisitProblem, given: VisitFigures, order: InkOrder): InkNeed[] {
  const { transfer, lossMl, safety } = wholeFigures(given);
  const { registry } = visit;
  const tests = testPulls(visit, order.setUps);
  const changes = bucketChanges(order);
  const densityGPerCm3 = Object.fromEntries(registry.inks.map(({ key, ink }) => [key, ink.densityGPerCm3]));
  const nothing = { areaM2: 0, grams: 0, printedG: 0, proofsG: 0, lossG: 0, safetyG: 0 };
  const needs = new Map<string, InkNeed>(registry.inks.map(({ key, ink }) => [key, { key, name: ink.name, ...nothing }]));
  for (const [r, recipe] of visit.recipes.entries()) {
    const areas = pullAreas(recipe);
    const own = visit.sheets.filter((sheet) => sheet.recipe === r);
    const proofs = own.filter((sheet) => sheet.use === 'proof').length;
    const meshes = new Map(recipe.screens.map((screen) => [screen.id, screen.mesh]));
    const runs: InkRun[] = recipe.pulls.map((pull, p) => ({
      ink: defined(entryAt(registry.inkKey, r).get(pull.ink)),
      areaMm2: num(areas, p),
      sheets: own.length - proofs,
      proofs: proofs + (tests.get(`${r} ${p}`) ?? 0),
      strokes: pull.strokes,
      volumeCm3PerM2: meshVolumeCm3PerM2(defined(meshes.get(pull.screen))),
    }));
    // Each recipe has its own stroke gain; what stays in screen and bucket goes by the changes of ink.
    const { strokeGain } = recipe;
    for (const need of inkGrams(runs, { transfer, lossMl, strokeGain, densityGPerCm3, safety })) {
      const sum = defined(needs.get(need.ink));
      sum.areaM2 += need.areaM2;
      sum.printedG += need.printedG;
      sum.proofsG += need.proofsG;
      sum.lossG = need.lossG * (changes.get(need.ink) ?? 0);
      const wanted = sum.printedG + sum.proofsG + sum.lossG;
      sum.safetyG = wanted * safety;
      sum.grams = wanted + sum.safetyG;
    }
  }
  return [...needs.values()];
}

/** Set-ups in time, with the bed of each, and the inks that are on beds already. */
export interface InkOrder {
  setUps: readonly SetUp[];
  beds?: readonly number[] | undefined;
  onPress?: readonly (Pick<SetUp, 'ink'> | null)[] | undefined;
}

/** How often each ink comes on a bed that has another, or none: so often a bucket is changed. */
function bucketChanges({ setUps, beds = [], onPress = [] }: InkOrder): Map<string, number> {
  const changes = new Map<string, number>();
  const there = new Map(onPress.map((each, bed) => [bed, each?.ink]));
  for (const [i, { ink }] of setUps.entries()) {
    const bed = beds[i] ?? 0;
    if (there.get(bed) !== ink) changes.set(ink, (changes.get(ink) ?? 0) + 1);
    there.set(bed, ink);
  }
  return changes;
}

/** How often each pull, 'recipe position', is tried on the test sheet. */
function testPulls({ testSheet, sheets }: VisitProblem, setUps: readonly SetUp[]): Map<string, number> {
  const tests = new Map<string, number>();
  if (testSheet === null) return tests;
  for (const { pulls } of setUps) {
    const [sheet, pull] = testPullOf(pulls);
    const key = `${entryAt(sheets, sheet).recipe} ${pull}`;
    tests.set(key, (tests.get(key) ?? 0) + 1);
  }
  return tests;
}

/**
 * Ink to weigh out for a visit, by stock ink: mixes taken apart by their parts, inks that are no
 * mixes as they are.
 * @param needs as visitInks gives them
 * @returns in the order in which the inks first ask for them
 */
export function visitStocks(visit: VisitProblem, needs: readonly InkNeed[]): StockNeed[] {
  const names = new Map<string, string>();
  const mixes = Object.fromEntries(
    visit.registry.inks.map(({ key, stocks }) => [
      key,
      stocks.map(({ ink, parts }) => {
        const stock = inkText(ink);
        names.set(stock, ink.name);
        return { stock, parts };
      }),
    ]),
  );
  const wet = needs.map(({ key, grams }) => ({ ink: key, totalG: grams }));
  return [...stockGrams(wet, mixes)].map(([stock, grams]) => ({ name: defined(names.get(stock)), grams }));
}
