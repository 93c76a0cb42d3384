import * as Comlink from 'comlink';
import { defined, entryAt } from '../../engine/base/at.ts';
import type { VeilResult } from '../../engine/explore/veil/veil-types.ts';
import { veils } from '../../engine/explore/veil/veil.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture } from '../api/picture-api.ts';
import type { Job } from '../api/request.ts';
import type { VeilFind, VeilRequest } from '../api/wall-api.ts';
import type { Jobs } from './jobs.ts';
import { StudioPictures } from './pictures.ts';

/** Thousands of steps, of which a bar shows a hundred. */
const LEAST_PROGRESS = 0.01;

/** A search for the veils of a stack, and the drawing of each. */
class VeilJob {
  private readonly pictures: StudioPictures;
  private readonly request: VeilRequest;
  private readonly results: VeilResult[] = [];
  private readonly drawn: Picture[] = [];
  private shown = 0;

  constructor(pictures: StudioPictures, request: VeilRequest) {
    this.pictures = pictures;
    this.request = request;
  }

  async run(jobs: Jobs, job: string, onProgress: (share: number) => void): Promise<VeilFind | null> {
    const cancelled = await jobs.run(job, this.steps(), (share) => {
      if (share - this.shown < LEAST_PROGRESS) return;
      this.shown = share;
      onProgress(share);
    });
    if (cancelled) return null;
    const [before, ...after] = this.drawn;
    return Comlink.transfer(
      { result: entryAt(this.results, 0), before: defined(before), after },
      this.drawn.map(({ pixels }) => pixels.buffer),
    );
  }

  private *steps(): Generator<number, void> {
    const { pictures, request } = this;
    const { options, ...sheet } = request;
    const result = yield* veils({ pulls: sheet.pulls }, pictures.studio, options);
    this.results.push(result);
    this.drawn.push(pictures.thumbnail(sheet));
    for (const proposal of result.proposals) {
      yield 1;
      const more = new StudioPictures(withNew(pictures.studio, proposal), pictures);
      this.drawn.push(more.thumbnail({ ...sheet, pulls: proposal.pulls }));
    }
  }
}

/** A studio that also holds what a veil brings in. */
function withNew(studio: Studio, { newInks, newShape, newScreen }: VeilResult['proposals'][number]): Studio {
  return {
    ...studio,
    shapes: newShape === null ? studio.shapes : [...studio.shapes, newShape],
    screens: newScreen === null ? studio.screens : [...studio.screens, newScreen],
    inks: [...studio.inks, ...newInks],
  };
}

/**
 * Looks for veils and draws them.
 * @param onProgress gets the share that is done, 0–1
 * @returns null when the job was cancelled
 */
export function runVeils(
  { jobs, pictures }: { jobs: Jobs; pictures: StudioPictures },
  { job, ...request }: Job<VeilRequest>,
  onProgress: (share: number) => void,
): Promise<VeilFind | null> {
  return new VeilJob(pictures, request).run(jobs, job, onProgress);
}
