import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Runs a program of poppler on a PDF. @param args with 'FILE' for the file */
function poppler(program: string, args: readonly string[], bytes: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), 'pullstack-pdf-'));
  try {
    const file = join(folder, 'a.pdf');
    writeFileSync(file, bytes);
    const done = spawnSync(
      program,
      args.map((arg) => (arg === 'FILE' ? file : arg)),
      { encoding: 'utf8', maxBuffer: 1e8 },
    );
    if (done.error !== undefined)
      throw new Error(`${program} is missing: install poppler-utils, as 'npm test' does where it may (${done.error.message})`);
    if (done.status !== 0) throw new Error(`${program}: ${done.stderr}`);
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
