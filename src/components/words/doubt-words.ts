import { rangesText } from '../../engine/base/words.ts';
import type { TickDoubt } from '../../engine/log/ticks/tick-doubts.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { momentText, pullInWords } from './log-words.ts';

type Recipes = readonly Recipe[];

function pullOf({ recipe, at }: { recipe: number; at: number }, recipes: Recipes): string {
  const of = recipes[recipe];
  const pull = of?.pulls[at];
  return of === undefined || pull === undefined ? 'a pull' : pullInWords(pull, of);
}

/** On the tile of a sheet that is not ready: 'wet until 14:20', '7 in Rust first'; '' when nothing speaks against it. */
export function doubtShort(doubts: readonly TickDoubt[], recipes: Recipes): string {
  const [first] = doubts;
  if (first === undefined) return '';
  if (first.kind === 'wet') return `wet until ${momentText(first.dryMs)}`;
  const pull = pullOf(first, recipes).replace(/^screen /u, '');
  return first.kind === 'under' ? `${pull} first` : `${pull} is down`;
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
  return [...groups.values()].map(({ words, sheets }) => words(`${sheets.length === 1 ? 'Sheet' : 'Sheets'} ${rangesText(sheets)}`));
}

function reasonOf(doubt: TickDoubt, recipes: Recipes): (those: string) => string {
  if (doubt.kind === 'wet') return (those) => `${those}: ${doubt.ink} is wet until ${momentText(doubt.dryMs)}, and this pull lies over it.`;
  if (doubt.kind === 'under') return (those) => `${those}: ${pullOf(doubt, recipes)} lies under this pull and is not down yet.`;
  return (those) => `${those}: ${pullOf(doubt, recipes)} is down already and belongs over this pull.`;
}
