import { rangesText } from '../../engine/base/words.ts';
import type { SheetAsPulled } from '../../engine/log/as-pulled.ts';
import type { Deviation, LogEvent } from '../../engine/log/types.ts';
import type { WetSheet } from '../../engine/log/wet.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { counted, mmText } from '../ui/words.ts';
import { clockText, listed } from './plan-words.ts';

/** 'in Rust, 2 strokes, 0.5 mm right, 1.0 mm up'; '' when nothing differs. */
export function deviationWords(how: Deviation): string {
  const parts: string[] = [];
  if (how.ink !== undefined) parts.push(`in ${how.ink.name}`);
  if (how.strokes !== undefined) parts.push(counted(how.strokes, 'stroke'));
  if (how.dxMm !== 0) parts.push(`${mmText(Math.abs(how.dxMm))} mm ${how.dxMm > 0 ? 'right' : 'left'}`);
  if (how.dyMm !== 0) parts.push(`${mmText(Math.abs(how.dyMm))} mm ${how.dyMm > 0 ? 'down' : 'up'}`);
  return parts.join(', ');
}

/** 'screen 7 in Rust' of a pull that a recipe names by its id. */
function pullName(id: string, recipe: Recipe): string {
  const pull = recipe.pulls.find((entry) => entry.id === id);
  if (pull === undefined) return 'a pull that the recipe does not have';
  return pullInWords(pull, recipe);
}

/** 'screen 7 in Rust'. */
export function pullInWords(pull: Pull, recipe: Pick<Recipe, 'screens' | 'inks'>): string {
  const screen = recipe.screens.find((entry) => entry.id === pull.screen);
  const ink = recipe.inks.find((entry) => entry.id === pull.ink);
  return `screen ${screen?.number ?? '?'} in ${ink?.name ?? '?'}`;
}

/** What happened, as a line of a sheet's log. */
export function eventWords(event: LogEvent, recipe: Recipe): string {
  switch (event.kind) {
    case 'pulled':
      return `Pulled ${listed(event.pulls.map((pull) => pullName(pull, recipe)))}`;
    case 'otherwise':
      return `Pulled ${listed(event.pulls.map((pull) => pullName(pull, recipe)))} differently: ${[deviationWords(event.how), event.note].filter((part) => part !== '').join('; ') || 'as noted'}`;
    case 'spoiled':
      return event.note === '' ? 'Spoiled' : `Spoiled: ${event.note}`;
    case 'replaced':
      return `Spoiled, sheet ${event.by} takes its place${event.note === '' ? '' : `: ${event.note}`}`;
    case 'kept':
    case 'lucky':
      return event.note === '' ? 'Kept as it came' : `Kept as it came: ${event.note}`;
    case 'placed':
      return event.box === '' ? 'Taken out of its box' : `Put in ${event.box}`;
    case 'tested':
      return `Tried as on sheet ${event.of}`;
    case 'set-up':
    case 'weighed':
      return `Said of screen ${event.screen.number} in ${event.ink}`;
    case 'goes-on':
      return `Goes on with ${listed(event.more.map((pull) => pullInWords(pull, event.parts)))}, in place of what was planned`;
    case 'undone':
      return 'Undone';
  }
}

/** How a sheet stands: '4 of 9 pulls', 'spoiled', 'finished, pulled differently from its recipe'. */
export function sheetWords(sheet: SheetAsPulled, recipe: Recipe): string {
  if (sheet.spoiled) return 'spoiled';
  const parts = [sheet.done.length >= recipe.pulls.length ? 'finished' : `${sheet.done.length} of ${counted(recipe.pulls.length, 'pull')}`];
  if (sheet.inPlaceOf !== undefined) parts.push(`in place of sheet ${sheet.inPlaceOf}`);
  if (sheet.kept) parts.push('kept as it came');
  else if (sheet.otherwise) parts.push('pulled differently from its recipe');
  return parts.join(', ');
}

/** What the picture of a sheet shows, as a sentence. */
export function stateWords(sheet: SheetAsPulled, recipe: Recipe): string {
  return sheet.spoiled
    ? `Sheet ${sheet.number} is spoiled.`
    : `Sheet ${sheet.number} must look like this now: ${sheetWords(sheet, recipe)}.`;
}

/** The clock on the wall of a moment, up to the minute in which it has passed. */
export function momentText(ms: number): string {
  const at = new Date(Math.ceil(ms / 60_000) * 60_000);
  return clockText(60 * at.getHours() + at.getMinutes());
}

function sheetsText(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? 'sheet' : 'sheets'} ${rangesText(numbers.toSorted((a, b) => a - b))}`;
}

/** By the ink on top, with the latest of its times. */
function byInk(wet: readonly WetSheet[]): { ink: string; numbers: number[]; dryMs: number; stackMs: number }[] {
  const groups = new Map<string, { ink: string; numbers: number[]; dryMs: number; stackMs: number }>();
  for (const { ink, number, dryMs, stackMs } of wet) {
    const group = groups.get(ink);
    if (group === undefined) groups.set(ink, { ink, numbers: [number], dryMs, stackMs });
    else {
      group.numbers.push(number);
      group.dryMs = Math.max(group.dryMs, dryMs);
      group.stackMs = Math.max(group.stackMs, stackMs);
    }
  }
  return [...groups.values()];
}

/** 'Still wet: sheets 5–7 in Rust until 14:57.'; '' for none. */
export function stillWetWords(wet: readonly WetSheet[]): string {
  if (wet.length === 0) return '';
  return `Still wet: ${byInk(wet)
    .map(({ ink, numbers, dryMs }) => `${sheetsText(numbers)} in ${ink} until ${momentText(dryMs)}`)
    .join('; ')}.`;
}

/** 'Wet, but not where this pull lies: sheets 5–7 in Rust until 14:57…'; '' for none. By the drying rule of the plan only films that touch wait. */
export function wetBesideWords(wet: readonly WetSheet[]): string {
  if (wet.length === 0) return '';
  const those = byInk(wet).map(({ ink, numbers, dryMs }) => `${sheetsText(numbers)} in ${ink} until ${momentText(dryMs)}`);
  return `Wet, but not where this pull lies: ${those.join('; ')}. The plan waits only for inks that touch, so they may be pulled now: handle them as wet.`;
}

/** 'Print over sheets 5–7 from 14:57, stack from 15:17.'; '' for none. */
export function dryingWords(wet: readonly WetSheet[], nowMs: number): string {
  return byInk(wet)
    .map(
      ({ numbers, dryMs, stackMs }) =>
        `${dryMs > nowMs ? `Print over ${sheetsText(numbers)} from ${momentText(dryMs)}, stack` : `Stack ${sheetsText(numbers)}`} from ${momentText(stackMs)}.`,
    )
    .join(' ');
}
