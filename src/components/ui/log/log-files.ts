import { recipeAsPulled, type SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { writeLog } from '../../../engine/log/log-file.ts';
import { mergeLogs } from '../../../engine/log/merge.ts';
import { LOG_FORMAT, LOG_VERSION, type LogEvent, type VisitHead, type VisitLog } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { eventWords } from '../../words/log-words.ts';
import { chooseFiles, download, fileNameOf } from '../download.ts';
import type { FileReading } from '../files/file-reading.ts';
import { newId } from '../new-id.ts';
import { counted } from '../words.ts';
import type { LogKeeper } from './log-keeper.ts';

/** Hands out the log, for another device at the same press or for safe keeping. */
export function saveLog(head: VisitHead, events: readonly LogEvent[]): void {
  download(fileNameOf(head.title, 'log.json'), writeLog(head, events), 'application/json');
}

/** Asks for log files of the same visit and keeps every event of theirs and ours. */
export async function bringInLog(store: AppStore, log: LogKeeper, reading: FileReading): Promise<void> {
  for (const file of await chooseFiles('.json,application/json', true)) {
    try {
      const read = await reading.read('log', file);
      if (read.value === null || log.head === null) {
        store.tellProblems(read.problems.slice(0, 1));
        continue;
      }
      const own: VisitLog = { format: LOG_FORMAT, version: LOG_VERSION, head: log.head, events: [...log.events] };
      const merged = mergeLogs(own, read.value, log.pairs);
      const known = new Set(log.events.map((event) => event.id));
      const fresh = merged.log.events.filter((event) => !known.has(event.id));
      await log.bringIn(fresh);
      const conflicts = merged.conflicts.length;
      store.tell(
        `${file.name}: ${fresh.length === 0 ? 'nothing new' : `${counted(fresh.length, 'entry', 'entries')} brought in`}${conflicts === 0 ? '' : `; ${counted(conflicts, 'contradiction')}, shown with the sheets`}.`,
        'news',
      );
    } catch (error) {
      const sentence = sentenceOf(error);
      store.tell(sentence.startsWith(file.name) ? sentence : `${file.name}: ${sentence}`);
    }
  }
}

/** Keeps a sheet as it really is among the recipes, to print again what happened once. */
export function keepSheet(store: AppStore, recipe: Recipe, sheet: SheetAsPulled): void {
  const title = `${recipe.title}, sheet ${sheet.number} as pulled`;
  const note = sheet.events
    .filter((event) => event.kind === 'otherwise' || event.kind === 'kept' || event.kind === 'lucky')
    .map((event) => eventWords(event, recipe))
    .join('. ');
  try {
    const kept = recipeAsPulled(recipe, sheet, { id: newId(), title, note: note.slice(0, 4000), parent: recipe.id });
    if (store.dispatch({ kind: 'keep-recipe', recipe: kept }))
      store.tell(`${title} is in the Chest; make an edition of it there, or take it to another visit.`, 'news');
  } catch (error) {
    store.tell(sentenceOf(error));
  }
}
