import * as Comlink from 'comlink';
import { keepErrorFields } from '../api/errors.ts';
import type { WallToolsApi } from '../api/wall-tools-api.ts';
import { differencePicture } from '../jobs/difference-picture.ts';
import { embedSteps } from '../jobs/embed.ts';
import { Jobs } from '../jobs/jobs.ts';

const jobs = new Jobs();
/** Work that asks between two of its own steps whether to go on. */
const going = new Set<string>();

function breathe(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

/** Runs work that is told after each step whether it goes on. */
async function goOn<T>(
  job: string,
  work: (step: (share: number) => Promise<boolean>) => Promise<T>,
  onProgress: (share: number) => void,
): Promise<T> {
  going.add(job);
  try {
    return await work(async (share) => {
      onProgress(share);
      await breathe();
      return going.has(job);
    });
  } finally {
    going.delete(job);
  }
}

const tools: WallToolsApi = {
  cancel(job) {
    going.delete(job);
    jobs.cancel(job);
  },
  embed: (job, points, dimensions, seed, onProgress) => jobs.find(job, embedSteps(points, dimensions, seed), onProgress),
  difference(drawer, a, b, heightPx, overDeltaE) {
    const found = differencePicture(drawer, a, b, heightPx, overDeltaE);
    return Comlink.transfer(found, [found.picture.pixels.buffer]);
  },
  sheet(job, drawer, prints, typeface, options, onProgress) {
    return goOn(
      job,
      async (step) => {
        // The PDF library is large and seldom wanted.
        const { sheetPdf, sheetPng } = await import('../jobs/contact-sheet.ts');
        if (typeface === null) return sheetPng(drawer, prints, options, (done) => step(done / prints.length));
        const bytes = await sheetPdf(drawer, prints, options, typeface, (done) => step(done / prints.length));
        return bytes === null ? null : new Blob([bytes], { type: 'application/pdf' });
      },
      onProgress,
    );
  },
  print(job, drawer, pulls, size, onProgress) {
    return goOn(
      job,
      async (step) => {
        const { printPng } = await import('../jobs/print-png.ts');
        return printPng(drawer, pulls, size, step);
      },
      onProgress,
    );
  },
};

keepErrorFields();
Comlink.expose(tools);
