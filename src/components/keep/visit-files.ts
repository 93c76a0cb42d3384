import type { VisitHead } from '../../engine/log/types.ts';
import type { ReadResult } from '../../engine/recipe/read.ts';
import { isZip } from '../../engine/visitfile/is-zip.ts';
import type { VisitPlan } from '../../engine/visitfile/plan-file.ts';
import type { VisitFile } from '../../engine/visitfile/visit-file.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import { fileNameOf } from '../ui/download.ts';
import type { FileReading } from '../ui/files/file-reading.ts';
import { saveFile } from '../ui/files/save-file.ts';
import { say } from '../words/en/keep/room.ts';
import { copySaved } from './copies/copies-noted.ts';
import { orderParts, RECORD_VERSION } from './order-parts.ts';
import { openInstead, type Shelf } from './projects.ts';
import { saveAsFile } from './save-strip.ts';

/** The open project with its drawings, its pull order and its log as one file, for another device or for safe keeping. */
export async function saveProjectFile(store: AppStore, to: 'the same' | 'another'): Promise<boolean> {
  try {
    const { readVisit, writeVisit } = await import('../../engine/visitfile/visit-file.ts');
    const parts = (await store.saver.openPress?.()) ?? {};
    const { made, head } = parts as { made?: VisitPlan | null; head?: VisitHead | null };
    const whole = parts['version'] === RECORD_VERSION && made && head ? { made, head } : null;
    const log = whole === null ? null : { head: whole.head, events: (await store.saver.readEvents?.(whole.head.id)) ?? [] };
    const bytes = writeVisit({ project: store.project, made: whole?.made ?? null, log });
    // What cannot be opened again is no copy.
    const [problem] = readVisit(bytes, say.theProject).problems;
    if (problem !== undefined) throw new Error(problem.message);
    const saved = await saveFile({ name: fileNameOf(store.project.title, 'pullstack.zip'), bytes, of: store.opened, to });
    if (saved) copySaved();
    return saved;
  } catch (error) {
    saveAsFile(store);
    store.tell(say.fileCouldNotBe(sentenceOf(error)));
    return false;
  }
}

/** Whether a file is a visit, by how it begins. */
export async function isVisitFile(file: File): Promise<boolean> {
  return isZip(new Uint8Array(await file.slice(0, 4).arrayBuffer()));
}

/** Opens a visit in place of what is open, after it was asked where an order or a log comes with it. @returns whether it was opened */
export async function openVisitFile(shelf: Shelf, file: File, reading: FileReading): Promise<boolean> {
  const { store } = shelf;
  let read: ReadResult<VisitFile>;
  try {
    read = await reading.read('visit', file);
  } catch (error) {
    store.refuse(sentenceOf(error));
    return false;
  }
  const { value } = read;
  if (value === null) {
    store.refuseFile(read.problems);
    return false;
  }
  if ((value.made !== null || value.log !== null) && !confirm(askWords(file.name, value))) return false;
  return openInstead(shelf, value.project, say.isOpen(file.name), () => bringVisit(store, value));
}

function askWords(name: string, { project, made, log }: VisitFile): string {
  const with_ = [
    ...(made === null ? [] : [say.setUps(made.plan.cards.length)]),
    ...(log === null || log.events.length === 0 ? [] : [say.logEntries(log.events.length)]),
  ];
  const what = with_.length === 0 ? '' : say.with(with_.join(say.and));
  return say.openOpenProjectAnd(name, project.title, what);
}

/** Keeps the order and the log of a visit; events that are here already stay as they are. */
async function bringVisit({ saver }: AppStore, { made, log }: VisitFile): Promise<void> {
  if (log !== null && log.events.length > 0) await saver.addEvents?.(log.head, log.events);
  await saver.savePress?.(made === null || log === null ? orderParts(null, null) : orderParts(made, log.head));
}
