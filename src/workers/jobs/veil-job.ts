import { defined } from '../../engine/base/at.ts';
import type { VeilProposal, VeilResult } from '../../engine/explore/veil/veil-types.ts';
import { type VeilStep, veilSteps } from '../../engine/explore/veil/veil.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture } from '../api/picture-api.ts';
import type { Job } from '../api/request.ts';
import type { VeilFind, VeilProgress, VeilRequest } from '../api/wall-api.ts';
import type { Jobs } from './jobs.ts';
import { StudioPictures } from './pictures.ts';

/** Thousands of steps, of which a bar shows a hundred. */
const LEAST_PROGRESS = 0.01;
/** What is best so far is shown after so long, and then each time after half as long again: drawing it takes time, too. */
const FIRST_SHOWN_MS = 1000;
const LATER = 1.5;

/** A search for the veils of a stack, and the drawing of each. */
class VeilJob {
  private readonly pictures: StudioPictures;
  private readonly request: VeilRequest;
  private found: VeilFind | null = null;
  private readonly drawn = new Map<VeilProposal, Picture>();
  private shown = 0;
  private showAt = performance.now() + FIRST_SHOWN_MS;
  private wait = FIRST_SHOWN_MS;
  private told = '';

  constructor(pictures: StudioPictures, request: VeilRequest) {
    this.pictures = pictures;
    this.request = request;
  }

  async run(jobs: Jobs, job: string, onProgress: (progress: VeilProgress) => void): Promise<VeilFind | null> {
    const cancelled = await jobs.run(job, this.steps(), (step) => {
      const find = this.due(step);
      if (find === null && step.share - this.shown < LEAST_PROGRESS) return;
      this.shown = step.share;
      onProgress(find === null ? { share: step.share } : { share: step.share, find });
    });
    return cancelled ? null : defined(this.found);
  }

  /** What is best so far, when it is time to show it and it is other than what was shown last. */
  private due(step: VeilStep): VeilFind | null {
    if (performance.now() < this.showAt) return null;
    const find = this.draw(step.best());
    const { proposals } = find.result;
    const told = proposals.map(({ veil, at }) => `${veil.screen} ${veil.ink} ${at}`).join();
    if (proposals.length > 0) this.wait *= LATER;
    this.showAt = performance.now() + this.wait;
    if (told === this.told) return null;
    this.told = told;
    return find;
  }

  private draw(result: VeilResult): VeilFind {
    const { pictures } = this;
    const { options: _, ...sheet } = this.request;
    // Whoever looks for a veil would rather not flood the sheet, though floods soften most.
    const proposals = result.proposals.toSorted((a, b) => Number(a.newScreen !== null) - Number(b.newScreen !== null));
    const after = proposals.map((proposal) => {
      const known = this.drawn.get(proposal);
      if (known !== undefined) return known;
      const more = new StudioPictures(withNew(pictures.studio, proposal), pictures);
      const picture = more.thumbnail({ ...sheet, pulls: proposal.pulls });
      this.drawn.set(proposal, picture);
      return picture;
    });
    return { result: { ...result, proposals }, before: pictures.thumbnail(sheet), after };
  }

  private *steps(): Generator<VeilStep, void> {
    const { pictures, request } = this;
    const { options, pulls } = request;
    const result = yield* veilSteps({ pulls }, pictures.studio, options);
    for (const proposal of result.proposals) {
      yield { share: 1, best: () => result };
      this.draw({ ...result, proposals: [proposal] });
    }
    this.found = this.draw(result);
  }
}

/** A studio that also holds what a veil brings in. */
function withNew(studio: Studio, { newInks, newShape, newScreen }: VeilProposal): Studio {
  return {
    ...studio,
    shapes: newShape === null ? studio.shapes : [...studio.shapes, newShape],
    screens: newScreen === null ? studio.screens : [...studio.screens, newScreen],
    inks: [...studio.inks, ...newInks],
  };
}

/**
 * Looks for veils and draws them.
 * @param onProgress gets the share that is done, 0–1, and now and then what is best so far
 * @returns null when the job was cancelled
 */
export function runVeils(
  { jobs, pictures }: { jobs: Jobs; pictures: StudioPictures },
  { job, ...request }: Job<VeilRequest>,
  onProgress: (progress: VeilProgress) => void,
): Promise<VeilFind | null> {
  return new VeilJob(pictures, request).run(jobs, job, onProgress);
}
