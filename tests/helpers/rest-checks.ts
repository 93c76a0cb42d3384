import type { RestInput, RestPlan } from '../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../src/engine/log/types.ts';
import { overlapsOf } from '../../src/engine/order/overlaps.ts';
import type { Recipe } from '../../src/engine/recipe/types.ts';
import { studioOfRecipe } from '../../src/engine/recipe/write.ts';
import type { PressPlan } from '../../src/engine/visit/visit.ts';

/** Which pulls a set-up prints: 'sheet position'. */
export function pullsOf(card: PressPlan['cards'][number]): string[] {
  return card.states.flatMap(({ sheets, prints }) => sheets.flatMap((sheet) => prints.map((at) => `${sheet} ${at}`)));
}

/** Mounts, ink changes and changes of offset, counted set-up by set-up. */
export function countedBy(cards: readonly PressPlan['cards'][number][]): number[] {
  let [mounts, inks, moves] = [0, 0, 0];
  cards.forEach((card, i) => {
    const before = cards[i - 1];
    if (before?.screen.key !== card.screen.key) mounts++;
    else if (before.dxMm !== card.dxMm || before.dyMm !== card.dyMm || before.turnDeg !== card.turnDeg) moves++;
    if (before?.ink.key !== card.ink.key) inks++;
  });
  return [mounts, inks, moves];
}

/** Compares figures one by one; below 0 when the first is less. */
export function less(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) if (value !== b[i]) return value - b[i]!;
  return 0;
}

/** The set-ups of the old plan in which something is still to be pulled. */
export function goingOn({ plan, events, head }: { plan: PressPlan; events: readonly LogEvent[]; head: VisitHead }): PressPlan['cards'] {
  const done = new Set<string>();
  const spoiled = new Set<number>();
  for (const event of events) {
    if (event.kind === 'spoiled' || event.kind === 'replaced') spoiled.add(event.sheet);
    if (event.kind !== 'pulled' && event.kind !== 'otherwise') continue;
    const recipe = head.recipes[head.sheets.find(({ number }) => number === event.sheet)!.recipe]!;
    for (const id of event.pulls) done.add(`${event.sheet} ${recipe.pulls.findIndex((pull) => pull.id === id)}`);
  }
  return plan.cards.filter((card) => pullsOf(card).some((pull) => !done.has(pull) && !spoiled.has(Number(pull.split(' ')[0]))));
}

const pairsKnown = new WeakMap<Recipe['pulls'], { a: number; b: number }[]>();

/** Pulls of a recipe whose order shows. */
function pairsOf(recipe: Recipe): { a: number; b: number }[] {
  let pairs = pairsKnown.get(recipe.pulls);
  if (pairs === undefined) {
    pairs = overlapsOf({ pulls: recipe.pulls }, studioOfRecipe(recipe), { toleranceMm: 0.05, minDeltaE: 1 });
    pairsKnown.set(recipe.pulls, pairs);
  }
  return pairs;
}

/** Sheets that a plan of a rest does not end whole, each pull once, with what shows in order; a sentence each. */
export function unsound(rest: Pick<RestPlan, 'cards'>, { rest: { recipes, sheets } }: RestInput): string[] {
  return sheets.flatMap((sheet): string[] => {
    const order = [...sheet.done];
    for (const card of rest.cards) for (const state of card.states) if (state.sheets.includes(sheet.number)) order.push(...state.prints);
    if (sheet.spoiled) return order.length === sheet.done.length ? [] : [`sheet ${sheet.number} is spoiled and printed on`];
    const recipe = recipes[sheet.recipe]!;
    if ([...order].sort((a, b) => a - b).join() !== recipe.pulls.map((_, at) => at).join())
      return [`sheet ${sheet.number} gets pulls ${order.join()} of ${recipe.pulls.length}`];
    return pairsOf(recipe)
      .filter(({ a, b }) => order.indexOf(a) > order.indexOf(b))
      .map(({ a, b }) => `sheet ${sheet.number}: pull ${a} lies over ${b}`);
  });
}

/** Wet ink of one pull by hand: the rectangle on the sheet, what 90–48 carries, transfer, strokes, density. */
export function gramsByHand({ pulls, screens, shapes, inks, paper, strokeGain }: Recipe, at: number): { ink: string; grams: number } {
  const pull = pulls[at]!;
  const [placed] = screens.find((screen) => screen.id === pull.screen)!.placed;
  const { widthMm, heightMm } = shapes.find((shape) => shape.id === placed!.shape)!;
  const inside = (middle: number, size: number, sheet: number): number =>
    Math.max(0, Math.min(sheet, middle + size / 2) - Math.max(0, middle - size / 2));
  const areaM2 =
    (inside(placed!.xMm + pull.dxMm, widthMm, paper.widthMm) * inside(placed!.yMm + pull.dyMm, heightMm, paper.heightMm)) / 1e6;
  // Open share of the mesh squared × fabric thickness, 90 threads/cm of 48 µm: common practice, no source.
  const pitchUm = 10_000 / 90;
  const volume = ((pitchUm - 48) / pitchUm) ** 2 * 1.55 * 48;
  const ink = inks.find((each) => each.id === pull.ink)!;
  return { ink: ink.name, grams: areaM2 * volume * 0.8 * (1 + (pull.strokes - 1) * strokeGain) * ink.densityGPerCm3 };
}
