import * as Comlink from 'comlink';
import { takerSteps } from '../../engine/explore/onward/takers.ts';
import { prepareSteps } from '../../engine/explore/prepare/prepare.ts';
import { tasteOfWall } from '../../engine/explore/taste/taste-of-wall.ts';
import { serve } from '../api/serve.ts';
import type { WallToolsApi } from '../api/wall-tools-api.ts';
import { differencePicture } from '../jobs/difference-picture.ts';
import { embedSteps } from '../jobs/embed.ts';
import { Jobs } from '../jobs/jobs.ts';
import { runOnward } from '../jobs/onward/onward-job.ts';

const jobs = new Jobs();
/** Work that asks between two of its own steps whether to go on. */
const going = new Set<string>();

function breathe(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

/** Tells the share that is done, and hears whether to go on. */
type Step = (share: number) => Promise<boolean>;

/** Runs work that hears after each step whether it goes on. */
async function goOn<T>(job: string, work: (step: Step) => Promise<T>, onProgress: (share: number) => void): Promise<T> {
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
  embed: ({ job, points, dimensions, seed }, onProgress) => jobs.find(job, embedSteps(points, dimensions, seed), onProgress),
  prepare: ({ job, ...asked }, onProgress) => jobs.find(job, prepareSteps(asked), onProgress),
  onward: ({ job, ...request }, onProgress) => runOnward(jobs, job, request, onProgress),
  taste: (request) => tasteOfWall(request),
  takers: ({ job, sheets, ...look }, onProgress) => jobs.find(job, takerSteps(sheets, look), onProgress),
  difference(request) {
    const found = differencePicture(request);
    return Comlink.transfer(found, [found.picture.pixels.buffer]);
  },
  sheet({ job, typeface, ...request }, onProgress) {
    const onPrint = (step: Step) => (done: number) => step(done / request.prints.length);
    return goOn(
      job,
      async (step) => {
        // The PDF library is large and seldom wanted.
        const { sheetPdf, sheetPng } = await import('../jobs/contact-sheet.ts');
        if (typeface === null) return sheetPng(request, onPrint(step));
        const bytes = await sheetPdf({ ...request, typeface }, onPrint(step));
        return bytes === null ? null : new Blob([bytes], { type: 'application/pdf' });
      },
      onProgress,
    );
  },
  print({ job, ...request }, onProgress) {
    return goOn(
      job,
      async (step) => {
        const { printPng } = await import('../jobs/print-png.ts');
        return printPng(request, step);
      },
      onProgress,
    );
  },
};

serve(tools);
