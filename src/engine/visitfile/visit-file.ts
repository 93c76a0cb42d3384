import { strFromU8, strToU8, type Unzipped, type UnzipFileInfo, unzipSync, zipSync } from 'fflate';
import { cutName, cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { readLog, writeLog } from '../log/log-file.ts';
import type { LogEvent, VisitHead, VisitLog } from '../log/types.ts';
import { readProject } from '../project/read.ts';
import type { Project } from '../project/types.ts';
import type { ReadResult } from '../recipe/read.ts';
import { say } from '../words/en/visitfile/visitfile.ts';
import { drawings } from './carried/drawings.ts';
import { isZip } from './is-zip.ts';
import { readPlan, type VisitPlan, writePlan } from './plan-file.ts';
import { NO_DAY } from './zip-files.ts';

/** A visit as a file: the project, and the pull order and log where there are some. */
export interface VisitFile {
  project: Project;
  made: VisitPlan | null;
  log: VisitLog | null;
}

/** What a visit is written from. */
export interface VisitToWrite {
  project: Project;
  made: VisitPlan | null;
  log: { head: VisitHead; events: readonly LogEvent[] } | null;
}

const [PROJECT, PLAN, LOG] = ['project.json', 'plan.json', 'log.json'];
const PARTS: readonly string[] = [PROJECT, PLAN, LOG];
/** Bytes of the file, and of each of its parts unpacked. */
const MOST_PACKED = 100_000_000;
const MOST_UNPACKED = 200_000_000;
/** Deflate packs 258 bytes into two bits at the best. Source: RFC 1951, 3.2.5, the longest match in codes of one bit each. */
const MOST_RATIO = 1032;

/**
 * A zip of the project, its pull order and its log, each as it would be saved alone, and of its shapes as
 * drawings for other programs, which are not read back: what is read is the project.
 */
export function writeVisit({ project, made, log }: VisitToWrite): Uint8Array<ArrayBuffer> {
  const parts: Record<string, Uint8Array> = { [PROJECT]: strToU8(`${JSON.stringify(project)}\n`) };
  if (made !== null) parts[PLAN] = strToU8(writePlan(made));
  if (log !== null) parts[LOG] = strToU8(writeLog(log.head, log.events));
  for (const [name, svg] of drawings(project.drawer.shapes)) parts[`shapes/${name}`] = strToU8(svg);
  return zipSync(parts, { level: 6, mtime: NO_DAY }) as Uint8Array<ArrayBuffer>;
}

/**
 * Reads the file of a visit and checks every field in it.
 * @param fileName named in the sentences
 * @returns the visit, or problems and none; never throws on input
 */
export function readVisit(bytes: Uint8Array, fileName: string): ReadResult<VisitFile> {
  const parts = partsOf(bytes, fileName);
  if (parts.value === null) return parts;
  const text = (part: string): string | null => (parts.value[part] === undefined ? null : strFromU8(parts.value[part]));
  // Room for the part that is named behind it.
  const named = (part: string): string => `${cutText(fileName, 80)}, ${part}`;
  const [projectText, planText, logText] = [text(PROJECT), text(PLAN), text(LOG)];
  if (projectText === null) return refused(fileName, 'visit.part', say.thereIsNoIn(PROJECT));
  const project = readProject(projectText, named(PROJECT));
  if (project.value === null) return project;
  const made = planText === null ? null : readPlan(planText, named(PLAN));
  if (made?.value === null) return made;
  const log = logText === null ? null : readLog(logText, named(LOG));
  if (log?.value === null) return log;
  if (made !== null && log === null) return refused(fileName, 'visit.part', say.thereIsButNo(PLAN, LOG));
  return { value: { project: project.value, made: made?.value ?? null, log: log?.value ?? null }, problems: [] };
}

/** The log of a file, which is a log or a whole visit. @returns as `readLog` */
export function readAnyLog(bytes: Uint8Array, fileName: string): ReadResult<VisitLog> {
  if (!isZip(bytes)) return readLog(strFromU8(bytes), fileName);
  const read = readVisit(bytes, fileName);
  if (read.value === null) return read;
  if (read.value.log === null) return refused(fileName, 'visit.part', say.thereIsNoLog);
  return { value: read.value.log, problems: [] };
}

function partsOf(bytes: Uint8Array, fileName: string): ReadResult<Unzipped> {
  if (!isZip(bytes)) return refused(fileName, 'visit.zip', say.thisIsNoZip);
  if (bytes.length > MOST_PACKED) return refused(fileName, 'visit.huge', say.fileHasBytesOver(bytes.length, MOST_PACKED));
  let fault: Problem | null = null;
  const known = new Set<string>();
  try {
    const parts = unzipSync(bytes, {
      filter: (part) => {
        if (!PARTS.includes(part.name)) return false;
        const wrong = partFault(part, known);
        known.add(part.name);
        if (wrong === null) return true;
        fault ??= problem(fileName, wrong.code, wrong.sentence);
        return false;
      },
    });
    return fault === null ? { value: parts, problems: [] } : { value: null, problems: [fault] };
  } catch {
    return refused(fileName, 'visit.zip', say.zipIsCutOff);
  }
}

/** What speaks against unpacking a part; room for it is taken before a byte of it is read, so that what it promises counts. */
function partFault(
  { name, size, originalSize }: Pick<UnzipFileInfo, 'name' | 'size' | 'originalSize'>,
  known: ReadonlySet<string>,
): { code: string; sentence: string } | null {
  if (known.has(name)) return { code: 'visit.zip', sentence: say.isInZipTwice(name) };
  if (originalSize > MOST_UNPACKED)
    return {
      code: 'visit.huge',
      sentence: say.hasBytesUnpackedOver(name, originalSize, MOST_UNPACKED),
    };
  if (originalSize > MOST_RATIO * size + 1) return { code: 'visit.zip', sentence: say.isLargerThanIts(name) };
  return null;
}

function problem(fileName: string, code: string, sentence: string): Problem {
  return { code, message: `${cutName(fileName)}: ${sentence}.`, where: 'the file' };
}

function refused(fileName: string, code: string, sentence: string): { value: null; problems: Problem[] } {
  return { value: null, problems: [problem(fileName, code, sentence)] };
}
