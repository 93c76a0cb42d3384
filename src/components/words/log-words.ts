import { rangesText } from '../../engine/base/words.ts';
import type { SheetAsPulled } from '../../engine/log/as-pulled.ts';
import type { Deviation, GoingOn, LogEvent } from '../../engine/log/types.ts';
import type { WetSheet } from '../../engine/log/wet.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { mmText } from '../ui/words.ts';
import { say } from './en/phrases/log.ts';
import { clockText, listed } from './plan-words.ts';

/** 'in Rust, 2 strokes, 0.5 mm right, 1.0 mm up'; '' when nothing differs. */
export function deviationWords(how: Deviation): string {
  const parts: string[] = [];
  if (how.ink !== undefined) parts.push(say.in(how.ink.name));
  if (how.strokes !== undefined) parts.push(say.strokes(how.strokes));
  if (how.dxMm !== 0) parts.push(say.mmRight(mmText(Math.abs(how.dxMm)), how.dxMm > 0));
  if (how.dyMm !== 0) parts.push(say.mmDown(mmText(Math.abs(how.dyMm)), how.dyMm > 0));
  return parts.join(', ');
}

/** 'screen 7 in Rust' of a pull that a recipe names by its id. */
function pullName(id: string, recipe: Recipe): string {
  const pull = recipe.pulls.find((entry) => entry.id === id);
  if (pull === undefined) return say.pullThatRecipeDoes;
  return pullInWords(pull, recipe);
}

/** 'screen 7 in Rust'. @param named how screen and ink are put together */
export function pullInWords(pull: Pull, recipe: Pick<Recipe, 'screens' | 'inks'>, named = say.screenIn): string {
  const screen = recipe.screens.find((entry) => entry.id === pull.screen);
  const ink = recipe.inks.find((entry) => entry.id === pull.ink);
  return named(screen?.number ?? '?', ink?.name ?? '?');
}

/** 'screen 7 in Rust' of a pull that nothing planned. */
export function extraName({ more: [pull], parts }: GoingOn): string {
  return pull === undefined ? '' : pullInWords(pull, parts);
}

/** What happened, as a line of a sheet's log. */
export function eventWords(event: LogEvent, recipe: Recipe): string {
  switch (event.kind) {
    case 'pulled':
      return say.pulled(listed(event.pulls.map((pull) => pullName(pull, recipe))));
    case 'otherwise':
      return say.pulledDifferently(
        listed(event.pulls.map((pull) => pullName(pull, recipe))),
        [deviationWords(event.how), event.note].filter((part) => part !== '').join('; ') || say.asNoted,
      );
    case 'spoiled':
      return event.note === '' ? say.spoiled : say.spoiledNote(event.note);
    case 'replaced':
      return say.spoiledSheetTakesIts(event.by, event.note === '' ? '' : `: ${event.note}`);
    case 'kept':
    case 'lucky':
      return event.note === '' ? say.keptAsItCame2 : say.keptAsItCame3(event.note);
    case 'placed':
      return event.box === '' ? say.takenOutOfIts : say.putIn(event.box);
    case 'tested':
      return say.triedAsOnSheet(event.of);
    case 'set-up':
    case 'weighed':
      return say.saidOfScreenIn(event.screen.number, event.ink);
    case 'goes-on':
      return say.goesOnWithIn(listed(event.more.map((pull) => pullInWords(pull, event.parts))));
    case 'extra':
      return say.extraPullOf(extraName(event));
    case 'undone':
      return say.undone;
  }
}

/** How a sheet stands: '4 of 9 pulls', 'spoiled', 'finished, pulled differently from its recipe'. */
export function sheetWords(sheet: SheetAsPulled, recipe: Recipe): string {
  if (sheet.spoiled) return say.spoiled2;
  const parts = [sheet.done.length >= recipe.pulls.length ? say.finished : say.ofPulls(sheet.done.length, recipe.pulls.length)];
  if (sheet.inPlaceOf !== undefined) parts.push(say.inPlaceOfSheet(sheet.inPlaceOf));
  if (sheet.kept) parts.push(say.keptAsItCame);
  else if (sheet.otherwise) parts.push(say.pulledDifferentlyFromIts);
  return parts.join(', ');
}

/** What the picture of a sheet shows, as a sentence. */
export function stateWords(sheet: SheetAsPulled, recipe: Recipe): string {
  return sheet.spoiled ? say.sheetIsSpoiled(sheet.number) : say.sheetMustLookLike(sheet.number, sheetWords(sheet, recipe));
}

/** The clock on the wall of a moment, up to the minute in which it has passed. */
export function momentText(ms: number): string {
  const at = new Date(Math.ceil(ms / 60_000) * 60_000);
  return clockText(60 * at.getHours() + at.getMinutes());
}

function sheetsText(numbers: readonly number[]): string {
  return say.sheetsNumbers(numbers.length, rangesText(numbers.toSorted((a, b) => a - b)));
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
  return say.stillWet(
    byInk(wet)
      .map(({ ink, numbers, dryMs }) => say.inUntil(sheetsText(numbers), ink, momentText(dryMs)))
      .join('; '),
  );
}

/** 'Wet, but not where this pull lies: sheets 5–7 in Rust until 14:57…'; '' for none. By the drying rule of the plan only films that touch wait. */
export function wetBesideWords(wet: readonly WetSheet[]): string {
  if (wet.length === 0) return '';
  const those = byInk(wet).map(({ ink, numbers, dryMs }) => say.inUntil(sheetsText(numbers), ink, momentText(dryMs)));
  return say.wetButNotWhere(those.join('; '));
}

/** 'Print over sheets 5–7 from 14:57, stack from 15:17.'; '' for none. */
export function dryingWords(wet: readonly WetSheet[], nowMs: number): string {
  return byInk(wet)
    .map(({ numbers, dryMs, stackMs }) =>
      say.from(
        dryMs > nowMs ? say.printOverFromStack(sheetsText(numbers), momentText(dryMs)) : say.stack(sheetsText(numbers)),
        momentText(stackMs),
      ),
    )
    .join(' ');
}
