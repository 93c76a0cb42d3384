import { OnwardPainter } from '../../engine/explore/onward/onward-painter.ts';
import { onwardSteps, type OnwardResult } from '../../engine/explore/onward/onward.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Picture } from '../api/picture-api.ts';
import type { OnwardFind, OnwardProgress, OnwardRequest } from '../api/wall-tools-api.ts';
import type { Jobs } from './jobs.ts';

/** Thousands of steps, of which a bar shows a hundred. */
const LEAST_PROGRESS = 0.01;

/**
 * Looks for what to pull next, and paints it: what is down once, then only what comes over it.
 * @param onProgress gets the share that is done, and what was found whenever one number of pulls was looked through
 * @returns null when the job was cancelled
 */
export async function runOnward(
  jobs: Jobs,
  job: string,
  request: OnwardRequest,
  onProgress: (progress: OnwardProgress) => void,
): Promise<OnwardFind | null> {
  const { studio, pulls, asked } = request;
  const paint = pictureMaker(request);
  const find = (result: OnwardResult): OnwardFind => ({
    result,
    now: paint([]),
    pictures: result.found.map((prints) => prints.map(({ more }) => paint(more))),
  });
  let shown = 0;
  const result = await jobs.find(job, onwardSteps(pulls, studio, asked), ({ share, whole, best }) => {
    if (!whole && share - shown < LEAST_PROGRESS) return;
    shown = share;
    onProgress(whole ? { share, find: find(best()) } : { share });
  });
  return result === null ? null : find(result);
}

/** Paints prints of one sheet, each once. */
function pictureMaker({ studio, pulls, heightPx, relative }: OnwardRequest): (more: readonly Pull[]) => Picture {
  let painter: OnwardPainter | null = null;
  const known = new Map<string, Picture>();
  return (more) => {
    const key = more.map(({ id }) => id).join('+');
    let picture = known.get(key);
    if (picture === undefined) {
      painter ??= new OnwardPainter(pulls, studio, { heightPx, relative });
      picture = { widthPx: painter.widthPx, heightPx, pixels: painter.paint(more).pixels };
      known.set(key, picture);
    }
    return picture;
  };
}
