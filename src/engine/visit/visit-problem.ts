import { defined, entryAt } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { MOST_SHEETS } from '../base/limits.ts';
import type { PlanProblem, PlanPull, PlanSheet } from '../pullorder/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { say } from '../words/en/visit/visit.ts';
import { Lays } from './problem/lays.ts';
import { type MeasuredPairs, PairMemory } from './problem/pair-memory.ts';
import { registerRecipes, type Registry } from './registry.ts';

/** What a sheet is for: a print that is wanted, one that takes the place of a spoiled one, or one to look at first. */
export type SheetUse = 'good' | 'over' | 'proof';

/** A numbered sheet of paper with the recipe it becomes. */
export interface VisitSheet {
  /** From 1, as pencilled on the back; those of the prints that are wanted come first. */
  number: number;
  /** Index into the recipes. */
  recipe: number;
  /** Absent = a print that is wanted. */
  use?: SheetUse | undefined;
}

/** What is to be printed, as the planner sees it, with what leads back to the studio's words. */
export interface VisitProblem {
  problem: PlanProblem;
  /** The same with free swaps ignored: every overlap keeps its order. */
  withoutFreeSwaps: PlanProblem;
  sheets: VisitSheet[];
  recipes: Recipe[];
  registry: Registry;
  /** By recipe: pairs of pulls [a, b] that overlap, hence must dry one before the other. */
  drying: [number, number][][];
  /** By recipe: how many overlapping pairs may change places. */
  freeSwaps: number[];
  /** Which offsets are one lay. */
  lays: Lays;
  /** Number of the sheet on which each set-up is first pulled; null = none. */
  testSheet: number | null;
}

/** One recipe and how many sheets of it. */
export interface VisitRunInput {
  recipe: Recipe;
  /** Prints that are wanted. */
  sheets: number;
  /** Further sheets that go through all set-ups: to take the place of spoiled ones, and to look at first; absent = none. */
  overs?: number | undefined;
  proofs?: number | undefined;
  /** What is left of a visit: its sheets as they are numbered, which count instead of the three numbers above. */
  numbered?: readonly Omit<VisitSheet, 'recipe'>[] | undefined;
  /**
   * The whole recipe and its sheets where only some pulls are left: its films under and over them tell
   * which order shows, and which of its offsets are one lay does not change with the work.
   */
  whole?: { recipe: Recipe; left: readonly number[]; sheets: number } | undefined;
}

/** How the visit is read. */
export interface VisitReading {
  /** Orders that differ by less may change places, ΔE00. */
  minDeltaE: number;
  /** Offsets nearer than this are one lay, mm; absent = 0, each its own. */
  registrationMm?: number | undefined;
  /** Whether each set-up is first pulled on a test sheet, or the number that it has; absent = no. */
  testSheet?: boolean | number | undefined;
  /** Pairs that were measured before; absent = none. */
  memory?: PairMemory | undefined;
}

function sameKind(a: PlanPull, b: PlanPull): boolean {
  return a.screen === b.screen && a.ink === b.ink && a.offset === b.offset;
}

/**
 * Turns recipes and sheet counts into a pull-order problem.
 * @param runs at least one with at least one sheet
 * @param reading or the ΔE00 alone
 * @throws EngineError 'visit.empty', 'visit.sheets' in a sentence
 */
export function visitProblem(runs: readonly VisitRunInput[], reading: number | VisitReading): VisitProblem {
  const read: VisitReading = typeof reading === 'number' ? { minDeltaE: reading } : reading;
  const { minDeltaE, registrationMm = 0, testSheet = false, memory = new PairMemory() } = read;
  const used = printedRuns(runs);
  checkCounts(used);
  const recipes = used.map((run) => run.recipe);
  const registry = registerRecipes(recipes);
  const kinds = kindsOf(used, registry, registrationMm);
  const drying: [number, number][][] = [];
  const freeSwaps: number[] = [];
  const ordered: PlanSheet[] = [];
  const rigid: PlanSheet[] = [];
  for (const [r, run] of used.entries()) {
    const pulls = entryAt(kinds.pulls, r);
    const { touching, mattering } = pairsOfRun(run, minDeltaE, memory);
    // The same pull twice over itself would otherwise print both at once, wet in wet.
    const repeats = touching.filter(([a, b]) => sameKind(entryAt(pulls, a), entryAt(pulls, b)));
    const keep = new Map([...mattering, ...repeats].map((pair) => [pair.join(), pair]));
    drying.push(touching);
    freeSwaps.push(touching.length - keep.size);
    ordered.push({ pulls, overlaps: [...keep.values()] });
    rigid.push({ pulls, overlaps: touching });
  }
  const sheets = numberedSheets(used);
  return {
    problem: { sheets: sheets.map((sheet) => entryAt(ordered, sheet.recipe)) },
    withoutFreeSwaps: { sheets: sheets.map((sheet) => entryAt(rigid, sheet.recipe)) },
    sheets,
    recipes,
    registry,
    drying,
    freeSwaps,
    lays: kinds.lays,
    testSheet: testSheet === true ? 1 + Math.max(...sheets.map(({ number }) => number)) : testSheet === false ? null : testSheet,
  };
}

/** The runs of which any sheet is printed. */
export function printedRuns(runs: readonly VisitRunInput[]): VisitRunInput[] {
  return runs.filter((run) => sheetCount(run) > 0);
}

function sheetCount({ sheets, overs = 0, proofs = 0, numbered }: VisitRunInput): number {
  if (numbered !== undefined) return numbered.length;
  return sheets > 0 ? sheets + overs + proofs : 0;
}

function checkCounts(used: readonly VisitRunInput[]): void {
  const count = used.reduce((sum, run) => sum + sheetCount(run), 0);
  if (count === 0) throw new EngineError('visit.empty', say.nothingIsToBe);
  const whole = (value: number | undefined): boolean => value === undefined || (Number.isInteger(value) && value >= 0);
  for (const { sheets, overs, proofs, recipe } of used) {
    if (whole(sheets) && whole(overs) && whole(proofs)) continue;
    throw new EngineError('visit.sheets', say.numberOfSheetsOvers(recipe.title));
  }
  if (count > MOST_SHEETS) {
    throw new EngineError('visit.sheets', say.sheetsAreMoreThan(count, MOST_SHEETS));
  }
}

/** The frame, ink and lay of each pull, by recipe. */
function kindsOf(used: readonly VisitRunInput[], registry: Registry, registrationMm: number): { pulls: PlanPull[][]; lays: Lays } {
  const screenOf = (r: number, id: string): string => defined(entryAt(registry.screenKey, r).get(id));
  const wholes = new Map(used.map((run, r) => [run.whole?.recipe ?? run.recipe, { r, sheets: run.whole?.sheets ?? sheetCount(run) }]));
  const all = [...wholes].flatMap(([{ pulls }, { r, sheets }]) =>
    pulls.map((pull) => ({ screen: screenOf(r, pull.screen), lay: pull, sheets })),
  );
  const lays = new Lays(all, registrationMm);
  const pulls = used.map(({ recipe }, r) =>
    recipe.pulls.map((pull): PlanPull => {
      const screen = screenOf(r, pull.screen);
      const ink = defined(entryAt(registry.inkKey, r).get(pull.ink));
      return { screen, ink, offset: lays.textOf(screen, pull), ...(pull.strokes === 1 ? {} : { strokes: pull.strokes }) };
    }),
  );
  return { pulls, lays };
}

type Pair = [number, number];

/** Which pulls of a run touch and whose order shows; each whole recipe is measured once. */
function pairsOfRun({ recipe, whole }: VisitRunInput, minDeltaE: number, memory: PairMemory): MeasuredPairs {
  const pairs = memory.of(whole?.recipe ?? recipe, minDeltaE);
  if (whole === undefined) return pairs;
  const place = new Map(whole.left.map((at, p) => [at, p]));
  const kept = (of: readonly Pair[]): Pair[] =>
    of.flatMap(([a, b]): Pair[] => {
      const [one, other] = [place.get(a), place.get(b)];
      return one === undefined || other === undefined ? [] : [[one, other]];
    });
  return { touching: kept(pairs.touching), mattering: kept(pairs.mattering) };
}

/** Proofs before the prints of their recipe and overs behind them; the prints that are wanted have the first numbers. */
function numberedSheets(used: readonly VisitRunInput[]): VisitSheet[] {
  let good = 0;
  let extra = used.reduce((sum, run) => sum + (run.numbered === undefined ? run.sheets : 0), 0);
  return used.flatMap((run, recipe): VisitSheet[] => {
    if (run.numbered !== undefined) return run.numbered.map((sheet) => ({ ...sheet, recipe }));
    const { sheets, overs = 0, proofs = 0 } = run;
    return [
      ...Array.from({ length: proofs }, (): VisitSheet => ({ number: ++extra, recipe, use: 'proof' })),
      ...Array.from({ length: sheets }, (): VisitSheet => ({ number: ++good, recipe })),
      ...Array.from({ length: overs }, (): VisitSheet => ({ number: ++extra, recipe, use: 'over' })),
    ];
  });
}
