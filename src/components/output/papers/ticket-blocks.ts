import { entryAt } from '../../../engine/base/at.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { bucketsOf } from '../../../engine/visit/quantities/buckets.ts';
import { say } from '../../words/en/output/papers.ts';
import { gramsText, wallClock } from '../../words/plan-words.ts';
import type { MadePlan } from '../made-plan.ts';
import { cell, type PaperBlock } from './paper-blocks.ts';

const HOW_TO_READ = say.ticketBucketWhatIts;

/** A ticket for each bucket that comes on, of one day or of all: what to fill it with, and for which set-ups. */
export function ticketBlocks({ plan, recipes, input }: MadePlan, onlyDay: number | null): PaperBlock[] {
  const several = plan.times.some(({ bed }) => bed > 0);
  const rows = bucketsOf(plan, recipes, input.press).flatMap(({ ink, bed, setUps, lossG, safetyG, totalG }) => {
    const first = entryAt(setUps, 0).at;
    const time = entryAt(plan.times, first);
    if (onlyDay !== null && time.day !== onlyDay) return [];
    const { overWhite } = entryAt(plan.cards, first).ink.ink;
    const each = setUps.map(({ at, grams }) => say.setUpG(entryAt(plan.cards, at).number, gramsText(grams))).join(', ');
    return {
      cells: [
        { lines: [], box: true },
        cell(say.dayDay(time.day, wallClock(plan, time.startMinute), several ? say.bed(bed + 1) : ''), { size: 'small' as const }),
        { lines: [{ text: ink, bold: true }], swatch: srgbHexFromLab(overWhite) },
        cell(`${gramsText(totalG)} g`, { bold: true, size: 'large' as const }),
        cell(each),
        cell(say.gStaysGMore(gramsText(lossG), gramsText(safetyG)), { size: 'small' as const }),
      ],
    };
  });
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      title: say.inkTickets,
      columns: [
        { head: '', share: 0.04 },
        { head: say.from, share: 0.15 },
        { head: say.ink, share: 0.14 },
        { head: say.fill, share: 0.11 },
        { head: say.for, share: 0.34 },
        { head: say.ofIt, share: 0.22 },
      ],
      rows,
    },
    { kind: 'text', text: HOW_TO_READ, size: 'small', soft: true },
  ];
}
