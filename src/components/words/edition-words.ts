import { defined } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import type { EditionSheet } from '../../engine/log/edition/edition-sheets.ts';
import type { EditionCounts } from '../../engine/log/edition/edition.ts';
import type { ScreenFate } from '../../engine/log/edition/fates.ts';
import type { VisitHead } from '../../engine/log/types.ts';
import { dayLocale } from '../../engine/words/language.ts';
import { say } from './en/phrases/log.ts';
import { deviationWords, extraName } from './log-words.ts';

/** 'Variable edition (EV) of 20, numbered EV 1/20 to EV 20/20', then a line for each class of proof. */
export function countFacts({ impressions, ap, pp, hc, bat, variable }: EditionCounts): string[] {
  const mark = variable ? 'EV ' : '';
  const proofs = (count: number, named: string, mark: string): string[] =>
    count === 0 ? [] : [`${named}, ${mark} 1/${count}${count > 1 ? say.to(count) : ''}`];
  return [
    say.variableEditionEVOf(variable, impressions, mark),
    ...(bat ? [say.n1ApprovedStandardBAT] : []),
    ...proofs(ap, say.artistsProofs(ap), 'AP'),
    ...proofs(pp, say.printersProofs(pp), 'PP'),
    ...(hc === 0 ? [] : [say.horsCommerceHC1(hc, hc > 1 ? say.toHc(hc) : '')]),
  ];
}

/** A day as it is written on paper: '4 May 2026'. */
export function dayOf(atMs: number): string {
  return new Date(atMs).toLocaleDateString(dayLocale(), { day: 'numeric', month: 'short', year: 'numeric' });
}

/** '4 May 2026, 9:41': a day can have two visits. */
export function beganWords({ begunMs }: Pick<VisitHead, 'begunMs'>): string {
  return `${dayOf(begunMs)}, ${new Date(begunMs).toLocaleTimeString(dayLocale(), { hour: 'numeric', minute: '2-digit' })}`;
}

/** '4 May 2026, 6 May 2026': each day once. @param atMs in any order */
export function datesOf(atMs: readonly number[], dayOf: (atMs: number) => string): string {
  return [...new Set([...atMs].sort((a, b) => a - b).map(dayOf))].join(', ');
}

/** '4 May 2026 to 6 May 2026', one day alone, or '' without any. */
export function rangeOf(atMs: readonly number[], dayOf: (atMs: number) => string): string {
  if (atMs.length === 0) return '';
  const [first, last] = [dayOf(atMs.reduce((a, b) => Math.min(a, b))), dayOf(atMs.reduce((a, b) => Math.max(a, b)))];
  return first === last ? first : say.toFirst(first, last);
}

const WHAT_BECAME: Readonly<Record<ScreenFate['fate'], string>> = {
  kept: say.screenKept,
  cancelled: say.screenCancelled,
  destroyed: say.screenDestroyed,
};

/** 'cancelled, by M. Sand, 5 May'; a dash where nothing was said. */
export function fateOf(fate: ScreenFate | undefined): string {
  if (fate === undefined) return '–';
  return [WHAT_BECAME[fate.fate], ...(fate.by === '' ? [] : [say.by(fate.by)]), ...(fate.when === '' ? [] : [fate.when])].join(', ');
}

/** 'as the recipe says', or what of its pulls was pulled differently. */
export function pulledWords({ sheet, finished }: EditionSheet): string {
  const how = sheet.events.flatMap((event) => {
    if (event.kind === 'otherwise')
      return [[deviationWords(event.how), event.note].filter((part) => part !== '').join('; ') || say.differentlyAsNoted];
    if (event.kind === 'extra') return [say.extraPull(extraName(event))];
    if (event.kind === 'kept' || event.kind === 'lucky') return [event.note === '' ? say.keptAsItCame : say.keptAsItCameNote(event.note)];
    return [];
  });
  const told = how.length > 0 ? how.join('; ') : sheet.otherwise ? say.pullsOutOfTurn : '';
  if (finished) return told === '' ? say.asRecipeSays : told;
  return say.notPulledYet(sheet.pulls.length === 0, told === '' ? '' : `; ${told}`);
}

/** A row for each mark in the order of the marks: mark, sheet, place, how it was pulled; and what got none. */
export function markRows(sheets: readonly EditionSheet[]): { rows: string[][]; spare: string[] } {
  const numbered = sheets.filter((sheet) => sheet.mark !== null).sort((a, b) => rank(defined(a.mark)) - rank(defined(b.mark)));
  const rows = numbered.map((sheet) => [defined(sheet.mark), `${sheet.number}`, sheet.sheet.box || '–', pulledWords(sheet)]);
  const named = (fate: EditionSheet['fate'], words: string): string[] => {
    const found = sheets.filter((sheet) => sheet.fate === fate).map((sheet) => sheet.number);
    return found.length === 0 ? [] : [say.sheetsWords(words, found.length, rangesText(found))];
  };
  return { rows, spare: [...named('out', say.keptOutOfEdition), ...named('spare', say.goodButWithoutMark)] };
}

/** The order of marks: impressions, BAT, AP, PP, HC, each by its number. */
function rank(mark: string): number {
  const kind = ['BAT', 'AP', 'PP', 'HC'].findIndex((word) => mark.startsWith(word)) + 1;
  return kind * 1000 + Number(/\d+/.exec(mark)?.[0] ?? 0);
}
