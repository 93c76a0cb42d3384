import { strToU8, zipSync } from 'fflate';
import { goalSheet } from '../../src/engine/lesson/goal-sheets.ts';
import { packLesson } from '../../src/engine/lesson/packed-lesson.ts';
import type { PackedLesson } from '../../src/engine/lesson/packed-schema.ts';
import { lettersOf } from '../../src/engine/lesson/packed-steps.ts';

/** Bytes, one a sign. */
const textOf = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');

/** Where the one record of a zip's directory begins, and its end record. Source: APPNOTE.TXT of the ZIP format, 4.3.12 and 4.3.16. */
function directoryOf(zip: Uint8Array): { from: number; end: number } {
  const end = zip.length - 22;
  return { from: new DataView(zip.buffer, zip.byteOffset).getUint32(end + 16, true), end };
}

/** A zip of a few bytes whose directory promises so many. */
function promising(size: number): Uint8Array {
  const zip = zipSync({ 'project.json': strToU8('{}') });
  new DataView(zip.buffer, zip.byteOffset).setUint32(directoryOf(zip).from + 24, size, true);
  return zip;
}

/** The same part named again and again. */
function repeated(zip: Uint8Array, times: number): Uint8Array {
  const { from, end } = directoryOf(zip);
  const record = zip.subarray(from, end);
  const whole = new Uint8Array(from + record.length * times + 22);
  whole.set(zip.subarray(0, from));
  for (let i = 0; i < times; i++) whole.set(record, from + i * record.length);
  whole.set(zip.subarray(end), from + record.length * times);
  const ending = new DataView(whole.buffer, whole.length - 22);
  ending.setUint16(8, times, true);
  ending.setUint16(10, times, true);
  ending.setUint32(12, record.length * times, true);
  return whole;
}

/** Visit files that ended a reader or held it up. */
export const HOSTILE_VISITS: readonly [what: string, text: string][] = [
  ['a zip of a few bytes that promises 199 MB', textOf(promising(199e6))],
  ['one part of 199 MB named 5,000 times', textOf(repeated(promising(199e6), 5000))],
  ['one whole part named 60,000 times', textOf(repeated(zipSync({ 'project.json': new Uint8Array(100_000) }), 60_000))],
  ['60 MB of blanks', textOf(zipSync({ 'project.json': new Uint8Array(60e6).fill(32) }, { level: 1 }))],
];

/** Addresses of set-ups that are none. */
export const HOSTILE_LINKS: readonly [what: string, text: string][] = [
  ['an address of 400,000 signs', 'A'.repeat(400_000)],
  ['a set-up of lists within each other', `{"version":1,"lines":${'['.repeat(9000)}${']'.repeat(9000)}}`],
  ['a set-up that unpacks into megabytes', `{"title":"${'x'.repeat(2_000_000)}"}`],
];

function lessonWith(change: Partial<PackedLesson>): string {
  return JSON.stringify({ ...packLesson({ sheet: goalSheet('alike'), goal: null }, 1), ...change });
}

const [SCREEN] = packLesson({ sheet: goalSheet('alike'), goal: null }, 1).screens;
/** As many corners as there may be, each on the other side of the sheet. */
const ZIGZAG = lettersOf(Array.from({ length: 12_000 }, (_, i) => (i % 2 === 0 ? 1 : (i % 4) - 2) * (i % 2 === 0 ? 1 : 700)));

/** Addresses of lessons that are none, or take long to print. */
export const HOSTILE_LESSONS: readonly [what: string, text: string][] = [
  ['an address of 400,000 signs', 'A'.repeat(400_000)],
  ['a lesson that unpacks into megabytes', `{"title":"${'x'.repeat(2_000_000)}"}`],
  ['lists within each other', `{"version":1,"screens":${'['.repeat(9000)}${']'.repeat(9000)}}`],
  ['an outline that goes up and down 6,000 times', lessonWith({ screens: [{ ...SCREEN!, rings: [ZIGZAG] }] })],
  [
    'a turn of a hundred times round',
    lessonWith({
      pulls: [
        [0, 0, 0, 0, 36_000, 20],
        [1, 1, 20_000, -20_000, -36_000, 1],
      ],
    }),
  ],
  [
    'a sheet a millimetre wide',
    lessonWith({ paper: { ...packLesson({ sheet: goalSheet('alike'), goal: null }, 1).paper, size: [1, 5000] } }),
  ],
];
