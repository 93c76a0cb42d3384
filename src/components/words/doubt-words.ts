import { rangesText } from '../../engine/base/words.ts';
import type { TickDoubt } from '../../engine/log/ticks/tick-doubts.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { say } from './en/phrases/log.ts';
import { momentText, pullInWords } from './log-words.ts';

type Recipes = readonly Recipe[];

function pullOf({ recipe, at }: { recipe: number; at: number }, recipes: Recipes, named = say.screenIn): string {
  const of = recipes[recipe];
  const pull = of?.pulls[at];
  return of === undefined || pull === undefined ? say.aPull : pullInWords(pull, of, named);
}

/** On the tile of a sheet that is not ready: 'wet until 14:20', '7 in Rust first'; '' when nothing speaks against it. */
export function doubtShort(doubts: readonly TickDoubt[], recipes: Recipes): string {
  const [first] = doubts;
  if (first === undefined) return '';
  if (first.kind === 'wet') return say.wetUntil(momentText(first.dryMs));
  const pull = pullOf(first, recipes, say.screenInShort);
  return first.kind === 'under' ? say.first(pull) : say.isDown(pull);
}

/** Why it is asked before a tick counts, a sentence for sheets that are held up by the same. */
export function doubtWords(doubts: readonly TickDoubt[], recipes: Recipes): string[] {
  const groups = new Map<string, { words: (those: string) => string; sheets: number[] }>();
  for (const doubt of doubts) {
    const words = reasonOf(doubt, recipes);
    const key = words('');
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { words, sheets: [doubt.sheet] });
    else known.sheets.push(doubt.sheet);
  }
  return [...groups.values()].map(({ words, sheets }) => words(say.sheets(sheets.length, rangesText(sheets))));
}

function reasonOf(doubt: TickDoubt, recipes: Recipes): (those: string) => string {
  if (doubt.kind === 'wet') return (those) => say.isWetUntilAnd(those, doubt.ink, momentText(doubt.dryMs));
  if (doubt.kind === 'under') return (those) => say.liesUnderThisPull(those, pullOf(doubt, recipes));
  return (those) => say.isDownAlreadyAnd(those, pullOf(doubt, recipes));
}
