import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { passportsOf } from '../../../engine/visit/passports.ts';
import { say } from '../../words/en/output/papers.ts';
import { howWords } from '../../words/offset-words.ts';
import { recipeLetter } from '../../words/plan-words.ts';
import type { MadePlan } from '../made-plan.ts';
import type { PaperBlock } from './paper-blocks.ts';

/** For each kind of sheet its whole stack, first down first. */
export function passportBlocks({ plan, recipes }: MadePlan): PaperBlock[] {
  return [
    { kind: 'page' },
    { kind: 'heading', text: say.sheets2 },
    {
      kind: 'columns',
      entries: passportsOf(plan).map(({ recipe, sheets, setUps }) => ({
        kind: 'passport',
        title: `${recipeLetter(recipe)} ${plan.recipes[recipe]?.title ?? ''}`,
        sheets: say.sheetsEachSetUps(sheets.length, rangesText(sheets), setUps.length),
        state: { recipe, pulls: entryAt(recipes, recipe).pulls },
        rows: setUps.map((at) => {
          const card = entryAt(plan.cards, at);
          return { number: String(card.number), screen: `${card.screen.key} ${card.screen.name}`, how: howWords(card, sheets) };
        }),
      })),
    },
  ];
}
