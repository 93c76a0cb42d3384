import { entryAt } from '../base/at.ts';
import { cutName } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { explainIssues } from '../recipe/explain.ts';
import { MOST_TOLD, readEnvelope, type ReadResult } from '../recipe/read.ts';
import { checkHolder, checkPulls } from '../recipe/references.ts';
import type { Recipe } from '../recipe/types.ts';
import type { PressPlan, VisitInput } from '../visit/visit.ts';
import { say } from '../words/en/visitfile/visitfile.ts';
import { PLAN_FORMAT, PLAN_VERSION, planFileSchema } from './plan-schema.ts';

/** A pull order, what it was made from, and the recipes by the index that it uses. */
export interface VisitPlan {
  plan: PressPlan;
  input: VisitInput;
  recipes: Recipe[];
}

/** The text of a pull order's file. What was at hand before it, and how the sheets stood when the rest was planned, stay behind: the log tells that. */
export function writePlan({ plan, input, recipes }: VisitPlan): string {
  const all = [...recipes];
  const runs = input.runs.map(({ recipe, sheets, overs, proofs }) => {
    let at = all.findIndex((known) => known === recipe || JSON.stringify(known) === JSON.stringify(recipe));
    if (at < 0) at = all.push(recipe) - 1;
    return { recipe: at, sheets, ...(overs === undefined ? {} : { overs }), ...(proofs === undefined ? {} : { proofs }) };
  });
  const { minDeltaE, press, seed } = input;
  const testSheet = input.testSheet === undefined ? undefined : input.testSheet !== false;
  const { before: _before, kept: _kept, ...order } = plan;
  return `${JSON.stringify({
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    recipes: all,
    runs,
    minDeltaE,
    press,
    seed,
    ...(testSheet === undefined ? {} : { testSheet }),
    plan: order,
  })}\n`;
}

/**
 * Reads a pull order and checks every field and number in it.
 * @param fileName named in the sentences
 * @returns the order, or problems and none; never throws on input
 */
export function readPlan(text: string, fileName: string): ReadResult<VisitPlan> {
  const envelope = readEnvelope(text, fileName, { format: PLAN_FORMAT, latest: PLAN_VERSION, what: 'plan' });
  if (envelope.value === null) return envelope;
  const name = cutName(fileName);
  const parsed = planFileSchema.safeParse(envelope.value.raw);
  if (!parsed.success) return { value: null, problems: explainIssues(parsed.error.issues, envelope.value.raw, name, 'plan') };
  const { recipes, runs, minDeltaE, press, seed, testSheet, plan } = parsed.data;
  const problems = [
    ...recipes.flatMap((recipe, i) => [...checkHolder(recipe, name), ...checkPulls(recipe.pulls, recipe, `recipes[${i}].pulls`, name)]),
    ...checkOrder(plan, recipes, name),
    ...runs.flatMap(({ recipe }, i) => beyond(recipe, recipes.length, `runs[${i}].recipe`, name)),
  ];
  if (problems.length > 0) return { value: null, problems: problems.slice(0, MOST_TOLD) };
  const input = {
    runs: runs.map(({ recipe, ...counts }) => ({ recipe: entryAt(recipes, recipe), ...counts })),
    minDeltaE,
    press,
    seed,
    ...(testSheet === undefined ? {} : { testSheet }),
  };
  // Recipes that only a run names stand behind those of the order.
  return { value: { plan, input, recipes: recipes.slice(0, plan.recipes.length) }, problems: [] };
}

function beyond(at: number, count: number, where: string, fileName: string): Problem[] {
  if (at < count) return [];
  return [
    {
      code: 'plan.index',
      message: say.isButThereAre(fileName, where, at, count),
      where,
    },
  ];
}

/** Whether an order names only recipes, pulls and sheets that are there, and has a time for each set-up. */
function checkOrder(plan: PressPlan, recipes: readonly Recipe[], fileName: string): Problem[] {
  const problems = [
    ...beyond(plan.recipes.length - 1, recipes.length, 'plan.recipes', fileName),
    ...plan.sheets.flatMap(({ recipe }, i) => beyond(recipe, plan.recipes.length, `plan.sheets[${i}].recipe`, fileName)),
  ];
  const refuse = (message: string, where: string): void => {
    problems.push({ code: 'plan.order', message: say.saveVisitAgainWhere(fileName, message), where });
  };
  if (plan.times.length !== plan.cards.length) refuse(say.planTimesHasEntries(plan.times.length, plan.cards.length), 'plan.times');
  const recipeOf = new Map(plan.sheets.map(({ number, recipe }) => [number, recipe]));
  for (const [c, card] of plan.cards.entries()) {
    const number = (plan.setUpsBefore ?? 0) + c + 1;
    if (card.number !== number) refuse(say.planCardsNumberIs(c, card.number, number), `plan.cards[${c}].number`);
    for (const [s, { recipe, prints, sheets }] of card.states.entries()) {
      const where = `plan.cards[${c}].states[${s}]`;
      const pulls = recipes[recipe]?.pulls.length ?? 0;
      if (recipe >= plan.recipes.length || prints.some((at) => at >= pulls)) refuse(say.namesRecipeOrPull(where), where);
      if (sheets.some((sheet) => recipeOf.get(sheet) !== recipe)) refuse(say.namesSheetThatIts(where), where);
    }
    const { test } = card;
    if (test !== undefined && (recipeOf.get(test.sheet) !== test.recipe || test.at >= (recipes[test.recipe]?.pulls.length ?? 0)))
      refuse(say.planCardsTestNames(c), `plan.cards[${c}].test`);
    if (card.sheets.some((sheet) => !recipeOf.has(sheet))) refuse(say.planCardsSheetsNames(c), `plan.cards[${c}].sheets`);
  }
  for (const [p, part] of plan.parts.entries())
    if (part.setUp >= plan.cards.length) refuse(say.planPartsSetUpIs(p, part.setUp, plan.cards.length), `plan.parts[${p}]`);
  return problems;
}
