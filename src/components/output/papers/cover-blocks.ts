import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import { type PrintError, printError } from '../../../engine/stack/print-error.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { say } from '../../words/en/output/papers.ts';
import { withinWords } from '../../words/error-words.ts';
import { nowEndWords } from '../../words/now-words.ts';
import { beginWords, boundWords, endWords, freeSwapWords, needsWords, planHeadline, recipeLetter } from '../../words/plan-words.ts';
import { unmadeWords } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import type { PaperBlock } from './paper-blocks.ts';

/** Warnings that are written out. */
const MOST_TOLD = 3;
const OUT_OF_DATE = say.outOfDateRecipes;

/** What is printed, how good the order is, room for who printed it when, the recipes, and the cautions. */
export function coverBlocks({ plan, recipes, clocked, screenStates }: MadePlan, heading: string, outOfDate: boolean): PaperBlock[] {
  const ends = clocked === undefined ? endWords(plan) : say.timesByWhatWasTicked(clocked.at, nowEndWords(clocked.planned, plan));
  const sentences = [boundWords(plan), beginWords(plan), ends, freeSwapWords(plan), needsWords(plan)];
  const more = plan.problems.length - MOST_TOLD;
  const warnings = [
    ...plan.problems.slice(0, MOST_TOLD).map(({ message }) => message),
    ...(more > 0 ? [say.andMoreSuchWarnings(more)] : []),
    ...[unmadeWords(plan, screenStates)].filter((words) => words !== ''),
    ...(outOfDate ? [OUT_OF_DATE] : []),
  ];
  return [
    {
      kind: 'cover',
      over: say.pullSheet,
      title: heading,
      lines: [
        { text: say.sheets(plan.sheets.length, planHeadline(plan)), bold: true, size: 'large' },
        { text: sentences.filter((words) => words !== '').join(' ') },
        ...warnings.map((text) => ({ text, bold: true })),
      ],
      fill: [say.date, say.printer, say.studio],
    },
    {
      kind: 'prints',
      prints: plan.recipes.map(({ title, sheets }, recipe) => ({
        state: { recipe, pulls: entryAt(recipes, recipe).pulls },
        title: `${recipeLetter(recipe)} ${title}`,
        below: say.sheetsSheets(sheets.length, rangesText(sheets)),
      })),
    },
    { kind: 'text', text: expectedWords(recipes) },
    { kind: 'list', title: say.beforeYouStart, items: [...CAUTIONS] },
    { kind: 'text', text: CAUTIONS_DEFER, bold: true },
  ];
}

/** By the recipe: a plan is laid out anew whenever a picture of it has come. */
const errors = new WeakMap<Recipe, PrintError>();

function errorOf(recipe: Recipe): PrintError {
  let error = errors.get(recipe);
  if (error === undefined) errors.set(recipe, (error = printError({ pulls: recipe.pulls }, studioOfRecipe(recipe))));
  return error;
}

/** How far the prints' colours may be from the pictures. */
function expectedWords(recipes: readonly Recipe[]): string {
  const each = recipes.map((recipe, at) => `${recipeLetter(at)} ${withinWords(errorOf(recipe).mean)}`);
  return say.coloursShouldComeOut(each.join(', '));
}
