import { defined } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import type { EditionSheet } from '../../engine/log/edition/edition-sheets.ts';
import type { EditionCounts, ScreenFate } from '../../engine/log/edition/edition.ts';
import type { VisitHead } from '../../engine/log/types.ts';
import { counted } from '../ui/words.ts';
import { deviationWords } from './log-words.ts';

/** 'Variable edition (EV) of 20, numbered EV 1/20 to EV 20/20', then a line for each class of proof. */
export function countFacts({ impressions, ap, pp, hc, bat, variable }: EditionCounts): string[] {
  const mark = variable ? 'EV ' : '';
  const proofs = (count: number, one: string, mark: string): string[] =>
    count === 0 ? [] : [`${counted(count, one)}, ${mark} 1/${count}${count > 1 ? ` to ${count}/${count}` : ''}`];
  return [
    `${variable ? 'Variable edition (EV)' : 'Edition'} of ${impressions}, numbered ${mark}1/${impressions} to ${mark}${impressions}/${impressions}`,
    ...(bat ? ['1 approved standard, BAT'] : []),
    ...proofs(ap, 'artist’s proof', 'AP'),
    ...proofs(pp, 'printer’s proof', 'PP'),
    ...(hc === 0 ? [] : [`${hc} hors commerce, HC 1/${hc}${hc > 1 ? ` to ${hc}/${hc}` : ''}`]),
  ];
}

/** A day as it is written on paper: '4 May 2026'. */
export function dayOf(atMs: number): string {
  return new Date(atMs).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
}

/** '4 May 2026, 9:41': a day can have two visits. */
export function beganWords({ begunMs }: Pick<VisitHead, 'begunMs'>): string {
  return `${dayOf(begunMs)}, ${new Date(begunMs).toLocaleTimeString('en-GB', { hour: 'numeric', minute: '2-digit' })}`;
}

/** '4 May 2026, 6 May 2026': each day once. @param atMs in any order */
export function datesOf(atMs: readonly number[], dayOf: (atMs: number) => string): string {
  return [...new Set([...atMs].sort((a, b) => a - b).map(dayOf))].join(', ');
}

/** '4 May 2026 to 6 May 2026', one day alone, or '' without any. */
export function rangeOf(atMs: readonly number[], dayOf: (atMs: number) => string): string {
  if (atMs.length === 0) return '';
  const [first, last] = [dayOf(atMs.reduce((a, b) => Math.min(a, b))), dayOf(atMs.reduce((a, b) => Math.max(a, b)))];
  return first === last ? first : `${first} to ${last}`;
}

/** 'cancelled, by M. Sand, 5 May'; a dash where nothing was said. */
export function fateOf(fate: ScreenFate | undefined): string {
  if (fate === undefined) return '–';
  return [fate.fate, ...(fate.by === '' ? [] : [`by ${fate.by}`]), ...(fate.when === '' ? [] : [fate.when])].join(', ');
}

/** 'as the recipe says', or what of its pulls was pulled differently. */
export function pulledWords({ sheet, finished }: EditionSheet): string {
  const how = sheet.events.flatMap((event) => {
    if (event.kind === 'otherwise')
      return [[deviationWords(event.how), event.note].filter((part) => part !== '').join('; ') || 'differently, as noted'];
    if (event.kind === 'kept' || event.kind === 'lucky') return [event.note === '' ? 'kept as it came' : `kept as it came: ${event.note}`];
    return [];
  });
  const told = how.length > 0 ? how.join('; ') : sheet.otherwise ? 'pulls out of turn' : '';
  if (finished) return told === '' ? 'as the recipe says' : told;
  return `${sheet.pulls.length === 0 ? 'not pulled yet' : 'not finished'}${told === '' ? '' : `; ${told}`}`;
}

/** A row for each mark in the order of the marks: mark, sheet, place, how it was pulled; and what got none. */
export function markRows(sheets: readonly EditionSheet[]): { rows: string[][]; spare: string[] } {
  const numbered = sheets.filter((sheet) => sheet.mark !== null).sort((a, b) => rank(defined(a.mark)) - rank(defined(b.mark)));
  const rows = numbered.map((sheet) => [defined(sheet.mark), `${sheet.number}`, sheet.sheet.box || '–', pulledWords(sheet)]);
  const named = (fate: EditionSheet['fate'], words: string): string[] => {
    const found = sheets.filter((sheet) => sheet.fate === fate).map((sheet) => sheet.number);
    return found.length === 0 ? [] : [`${words}: ${found.length === 1 ? 'sheet' : 'sheets'} ${rangesText(found)}.`];
  };
  return { rows, spare: [...named('out', 'Kept out of the edition'), ...named('spare', 'Good, but without a mark')] };
}

/** The order of marks: impressions, BAT, AP, PP, HC, each by its number. */
function rank(mark: string): number {
  const kind = ['BAT', 'AP', 'PP', 'HC'].findIndex((word) => mark.startsWith(word)) + 1;
  return kind * 1000 + Number(/\d+/.exec(mark)?.[0] ?? 0);
}
