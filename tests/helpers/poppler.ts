import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Runs a program of poppler on a PDF. @param args with 'FILE' for the file */
function poppler(program: string, args: readonly string[], bytes: Uint8Array): string {
  return raw(program, args, bytes).toString('utf8');
}

function raw(program: string, args: readonly string[], bytes: Uint8Array): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'pullstack-pdf-'));
  try {
    const file = join(folder, 'a.pdf');
    writeFileSync(file, bytes);
    const done = spawnSync(
      program,
      args.map((arg) => (arg === 'FILE' ? file : arg)),
      { maxBuffer: 1e8 },
    );
    if (done.error !== undefined)
      throw new Error(`${program} is missing: install poppler-utils, as 'npm test' does where it may (${done.error.message})`);
    if (done.status !== 0) throw new Error(`${program}: ${done.stderr.toString('utf8')}`);
    return done.stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Number of pages, by poppler. */
export function popplerPages(bytes: Uint8Array): number {
  return Number(/^Pages:\s+(\d+)$/m.exec(poppler('pdfinfo', ['FILE'], bytes))![1]);
}

/** The text of each page as it is laid out, by poppler. */
export function popplerText(bytes: Uint8Array): string[] {
  return poppler('pdftotext', ['-layout', 'FILE', '-'], bytes).split('\f').slice(0, -1);
}

/** The sizes of type of each page, points, as poppler finds them. */
export function popplerSizes(bytes: Uint8Array): number[] {
  const xml = poppler('pdftohtml', ['-xml', '-i', '-zoom', '1', '-stdout', 'FILE'], bytes);
  return [...xml.matchAll(/<fontspec [^>]*size="(\d+)"/g)].map(([, size]) => Number(size));
}

/** A page as poppler paints it, grey, 0 black to 255 white a pixel. @param page from 1 */
export function popplerGrey(bytes: Uint8Array, dpi: number, page = 1): { grey: Uint8Array; widthPx: number; heightPx: number } {
  const pgm = raw('pdftoppm', ['-gray', '-r', String(dpi), '-f', String(page), '-l', String(page), 'FILE'], bytes);
  // 'P5', width, height and 255, each ended by one white space (netpbm's pgm(5)).
  const head = /^P5\s(\d+)\s(\d+)\s255\s/.exec(pgm.subarray(0, 40).toString('latin1'))!;
  return { grey: new Uint8Array(pgm.subarray(head[0].length)), widthPx: Number(head[1]), heightPx: Number(head[2]) };
}
