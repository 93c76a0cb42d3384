import { entryAt } from '../../../engine/base/at.ts';
import { type CalendarEntry, calendarOf, type DatedVisit, daysOf } from '../../../engine/visitfile/calendar.ts';
import { dayLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/output/papers.ts';
import { clockText } from '../../words/plan-words.ts';
import { cell, type PaperBlock, type PaperTable } from './paper-blocks.ts';

const DAY_MS = 86_400_000;
/** Clashes that are written out. */
const MOST_TOLD = 5;
const dayName = new Intl.DateTimeFormat(dayLocale(), { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });

/** 'Fri 27 Nov': its parts only, as browsers put other commas between them. @param date whole days since 1970 */
function dateName(date: number): string {
  const parts = dayName.formatToParts(date * DAY_MS).filter(({ type }) => type !== 'literal');
  return parts.map(({ value }) => value).join(' ');
}

/** Which visits want one bed at one time, a sentence each, the rest counted. */
function clashWords(visits: readonly DatedVisit[], clashes: readonly [CalendarEntry, CalendarEntry][]): string[] {
  const several = visits.some(({ days }) => days.some(({ bed }) => bed > 0));
  const told = clashes.slice(0, MOST_TOLD).map(([one, other]) => {
    const [title, title2] = [entryAt(visits, one.visit).title, entryAt(visits, other.visit).title];
    return say.andWantAtOne(dateName(one.date), title, title2, several ? one.bed + 1 : null);
  });
  const more = clashes.length - told.length;
  return more > 0 ? [...told, say.andMoreSuchClashes(more)] : told;
}

/** The calendar of a press: whose day it is, from when until when, and where two want one bed. @param visits the open one first */
export function weekBlocks(visits: readonly DatedVisit[]): PaperBlock[] {
  const { entries, clashes } = calendarOf(visits);
  return [
    ...clashWords(visits, clashes).map((text): PaperBlock => ({ kind: 'text', text, bold: true })),
    weekTable(visits, entries),
    {
      kind: 'text',
      text: say.timesFromFirstMount,
      size: 'small',
      soft: true,
    },
  ];
}

function weekTable(visits: readonly DatedVisit[], entries: readonly CalendarEntry[]): PaperTable {
  const several = entries.some(({ bed }) => bed > 0);
  return {
    kind: 'table',
    title: say.visitsOnThisPress,
    columns: [
      { head: say.day2, share: 0.2 },
      { head: say.time, share: 0.2 },
      ...(several ? [{ head: say.bed2, share: 0.08 }] : []),
      { head: say.visit, share: several ? 0.34 : 0.42 },
      { head: say.setUps, share: 0.18 },
    ],
    rows: entries.map((entry, at) => {
      const { date, fromMinute, toMinute, bed, day, setUps } = entry;
      const visit = entryAt(visits, entry.visit);
      const first = at === 0 || entryAt(entries, at - 1).date !== date;
      return {
        cells: [
          cell(first ? dateName(date) : '', { bold: true }),
          cell(say.toClock(clockText(fromMinute), clockText(toMinute))),
          ...(several ? [cell(String(bed + 1))] : []),
          {
            lines: [
              { text: visit.title, bold: true },
              { text: say.dayOf(day, daysOf(visit)), size: 'small' as const },
            ],
          },
          cell(String(setUps)),
        ],
      };
    }),
  };
}
