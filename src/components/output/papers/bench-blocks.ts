import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { type SetUpInk, setUpInk } from '../../../engine/visit/quantities/set-up-ink.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { capital } from '../../../engine/words/language.ts';
import { CAUTIONS_DEFER } from '../../words/cautions.ts';
import { dryFrom, waitWords } from '../../words/drying-words.ts';
import { say } from '../../words/en/output/papers.ts';
import { instructionWords, noOffset, offsetLines, offsetShort, turnNote } from '../../words/offset-words.ts';
import { gramsText, setUpTags, wallClock } from '../../words/plan-words.ts';
import { unmadeLine } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import { cell, type PaperBlock, type PaperCell, type PaperLine, type PaperTable } from './paper-blocks.ts';

const HOW_TO_READ = say.gramsWetInkOn;

/** Letters of an offset that a narrow column holds in a line or two. */
const MOST_NARROW = 16;

/** Common practice, no source. */
const TURNED = say.turnIsMadeWith;

/** A page for each day and bed: its set-ups by the clock, with all that is asked for at the press. */
export function benchBlocks(made: MadePlan, onlyDay: number | null): PaperBlock[] {
  const { plan, recipes, input } = made;
  const inks = setUpInk(plan, recipes, input.press);
  const beds = plan.times.reduce((most, { bed }) => Math.max(most, bed + 1), 1);
  const days = [...new Set(plan.times.map(({ day }) => day))].sort((a, b) => a - b);
  return days
    .filter((day) => onlyDay === null || day === onlyDay)
    .flatMap((day) =>
      Array.from({ length: beds }, (_, bed) => bed).flatMap((bed): PaperBlock[] => {
        const own = plan.times.flatMap((time, at) => (time.day === day && time.bed === bed ? [at] : []));
        if (own.length === 0) return [];
        return [
          { kind: 'page' },
          dayTable(made, inks, own),
          { kind: 'text', text: `${clockedWords(made)}${howToRead(made, own)}`, size: 'small', soft: true },
          { kind: 'text', text: CAUTIONS_DEFER, bold: true, size: 'small' },
        ];
      }),
    );
}

/** Which times they are, where the clock has gone on since the order was planned. */
function clockedWords({ clocked }: MadePlan): string {
  return clocked === undefined ? '' : say.timesByWhatWas(clocked.at);
}

function dayTable(made: MadePlan, inks: readonly SetUpInk[], own: readonly number[]): PaperTable {
  const { plan } = made;
  const { day, bed, startMinute } = entryAt(plan.times, entryAt(own, 0));
  const end = Math.max(...own.map((at) => entryAt(plan.times, at).endMinute));
  const several = plan.times.some((time) => time.bed > 0);
  const long = longOffsets(made);
  return {
    kind: 'table',
    title: say.benchSheetDayTo(day, several ? say.bed(bed + 1) : '', wallClock(plan, startMinute), wallClock(plan, end)),
    columns: [
      { head: '', share: 0.035 },
      { head: say.time, share: 0.1 },
      { head: say.setUp, share: 0.065 },
      ...(long
        ? [
            { head: say.screen, share: 0.19 },
            { head: say.inkGrams, share: 0.125 },
            { head: say.offsetMm, share: 0.195 },
            { head: say.sheetsStrokes, share: 0.195 },
          ]
        : [
            { head: say.screen, share: 0.19 },
            { head: say.inkGrams, share: 0.15 },
            { head: say.offsetStrokes, share: 0.16 },
            { head: say.sheetsHowMany, share: 0.205 },
          ]),
      { head: say.dryStack, share: 0.095 },
    ],
    rows: own.map((at) => ({
      ...(entryAt(plan.times, at).waitMinutes >= 1 ? { over: capital(waitWords(plan, at, false)) } : {}),
      cells: rowCells(made, at, entryAt(inks, at)),
      under: [unmadeLine(entryAt(plan.cards, at).screen.key, made.screenStates), ...instructionWords(entryAt(plan.cards, at))].filter(
        (text) => text !== '',
      ),
    })),
  };
}

/** Whether offsets want more than a narrow column: the same over the whole visit, so that all its days are read alike. */
function longOffsets({ plan }: MadePlan): boolean {
  return plan.cards.some((card) => offsetShort(card).length > MOST_NARROW);
}

/** How the columns are read, and how a turn is made where there is one: a day of twenty set-ups fills its page. */
function howToRead({ plan }: MadePlan, own: readonly number[]): string {
  return own.some((at) => turnNote(entryAt(plan.cards, at)) !== '') ? `${HOW_TO_READ} ${TURNED}` : HOW_TO_READ;
}

/** An offset in lines; without its unit where the head of the column says it. */
function offsetOn(card: SetUpCard, long: boolean): PaperLine[] {
  return offsetLines(card).map((text) => ({ text: long ? text.replace(' mm', '') : text, bold: text !== noOffset() }));
}

function strokesOn({ strokes }: SetUpCard, before: string): PaperLine {
  return { text: say.strokes(before, strokes), bold: strokes > 1 };
}

function rowCells(made: MadePlan, at: number, { grams }: SetUpInk): PaperCell[] {
  const { plan, clocked } = made;
  const card = entryAt(plan.cards, at);
  const time = entryAt(plan.times, at);
  const tags = setUpTags(plan, at).join(', ');
  const { dry, stack } = dryFrom(plan, at);
  const long = longOffsets(made);
  return [
    clocked?.done.has(at) === true ? cell(say.done, { size: 'small' }) : { lines: [], box: true },
    {
      lines: [
        { text: wallClock(plan, time.startMinute), size: 'large', bold: true },
        { text: say.to(wallClock(plan, time.endMinute)), size: 'small' },
      ],
    },
    cell(String(card.number), { size: 'large', bold: true }),
    {
      lines: [
        { text: `${card.screen.key} ${card.screen.name}`, bold: true },
        ...(tags === '' ? [] : [{ text: tags, size: 'small' as const }]),
      ],
    },
    { lines: [{ text: card.ink.key, bold: true }, { text: `${gramsText(grams)} g` }], swatch: srgbHexFromLab(card.ink.ink.overWhite) },
    { lines: [...offsetOn(card, long), ...(long ? [] : [strokesOn(card, '')])] },
    {
      lines: [
        { text: `${rangesText(card.sheets)}${long ? '' : ` (${card.sheets.length})`}`, bold: true },
        ...(long ? [strokesOn(card, `${card.sheets.length} × `)] : []),
        ...(card.test === undefined || plan.testNumber === undefined
          ? []
          : [{ text: say.testFirst(plan.testNumber), size: 'small' as const }]),
      ],
    },
    { lines: [{ text: dry, bold: true }, ...(stack === dry ? [] : [{ text: stack, size: 'small' as const }])] },
  ];
}
