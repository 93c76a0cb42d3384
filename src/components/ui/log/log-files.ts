import { recipeAsPulled, type SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { writeLog } from '../../../engine/log/log-file.ts';
import { mergeLogs } from '../../../engine/log/merge.ts';
import { LOG_FORMAT, LOG_VERSION, type LogEvent, type VisitHead, type VisitLog } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/ui/log.ts';
import { eventWords } from '../../words/log-words.ts';
import { chooseFiles, download, fileNameOf } from '../download.ts';
import type { FileReading } from '../files/file-reading.ts';
import { newId } from '../new-id.ts';
import type { LogKeeper } from './log-keeper.ts';

/** Hands out the log, for another device at the same press or for safe keeping. */
export function saveLog(head: VisitHead, events: readonly LogEvent[]): void {
  download(fileNameOf(head.title, 'log.json'), writeLog(head, events), 'application/json');
}

const LOG_FILES = '.json,.zip,application/json,application/zip';

/** Before the first entry a visit that prints the same sheets may go on as that of another device. */
function sameVisit(log: LogKeeper, { head }: VisitLog): boolean {
  if (log.head === null || log.head.id === head.id || log.events.length > 0) return false;
  const gist = ({ recipes, sheets }: VisitHead): string =>
    JSON.stringify([recipes.map(({ pulls, screens }) => [pulls, screens]), sheets.map(({ number, recipe }) => [number, recipe])]);
  return gist(log.head) === gist(head);
}

/** Asks for files with logs and keeps each as a visit of its own: what a lost or another device had logged. */
export async function restoreLogs(store: AppStore, reading: FileReading): Promise<void> {
  for (const file of await chooseFiles(LOG_FILES, true)) {
    try {
      const { value, problems } = await reading.read('log', file);
      if (value === null) {
        store.refuseFile(problems);
        continue;
      }
      const known = new Set(((await store.saver.readEvents?.(value.head.id)) ?? []).map(({ id }) => id));
      const fresh = value.events.filter(({ id }) => !known.has(id));
      await store.saver.addEvents?.(value.head, fresh);
      const brought = fresh.length === 0 ? say.nothingNew : say.entriesOfBroughtIn(fresh.length, value.head.title);
      store.tell(`${file.name}: ${brought}.`, 'news');
    } catch (error) {
      store.refuse(say.wasNotBroughtIn(file.name, sentenceOf(error)));
    }
  }
}

/** Asks for log files of the same visit and keeps every event of theirs and ours. */
export async function bringInLog(store: AppStore, log: LogKeeper, reading: FileReading): Promise<void> {
  for (const file of await chooseFiles(LOG_FILES, true)) {
    try {
      const read = await reading.read('log', file);
      if (read.value === null || log.head === null) {
        store.refuseFile(read.problems);
        continue;
      }
      if (sameVisit(log, read.value)) await log.adopt(read.value.head);
      const own: VisitLog = { format: LOG_FORMAT, version: LOG_VERSION, head: log.head, events: [...log.events] };
      const merged = mergeLogs(own, read.value, log.pairs);
      const known = new Set(log.events.map((event) => event.id));
      const fresh = merged.log.events.filter((event) => !known.has(event.id));
      await log.bringIn(fresh);
      const conflicts = merged.conflicts.length;
      store.tell(
        `${file.name}: ${fresh.length === 0 ? say.nothingNew : say.entriesBroughtIn(fresh.length)}${conflicts === 0 ? '' : say.contradictionsShownWithSheets(conflicts)}.`,
        'news',
      );
    } catch (error) {
      const sentence = sentenceOf(error);
      store.refuse(sentence.startsWith(file.name) ? sentence : `${file.name}: ${sentence}`);
    }
  }
}

/** Keeps a sheet as it really is among the recipes, to print again what happened once. */
export function keepSheet(store: AppStore, recipe: Recipe, sheet: SheetAsPulled): void {
  const title = say.sheetAsPulled(recipe.title, sheet.number);
  const note = sheet.events
    .filter((event) => event.kind === 'otherwise' || event.kind === 'kept' || event.kind === 'lucky')
    .map((event) => eventWords(event, recipe))
    .join('. ');
  try {
    const kept = recipeAsPulled(recipe, sheet, { id: newId(), title, note: note.slice(0, 4000), parent: recipe.id });
    if (store.dispatch({ kind: 'keep-recipe', recipe: kept })) store.tell(say.isInChestMake(title), 'news');
  } catch (error) {
    store.tell(sentenceOf(error));
  }
}
