import { OnwardPainter } from '../../../engine/explore/onward/onward-painter.ts';
import { onwardSteps, type OnwardResult } from '../../../engine/explore/onward/onward.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Picture } from '../../api/picture-api.ts';
import type { OnwardFind, OnwardProgress, OnwardRequest } from '../../api/wall-tools-api.ts';
import type { Jobs } from '../jobs.ts';
import { StudioAtHand, type StudioKnown } from './studio-at-hand.ts';

/** Thousands of steps, of which a bar shows a hundred. */
const LEAST_PROGRESS = 0.01;

const atHand = new StudioAtHand();

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
  const { pulls, asked } = request;
  const known = atHand.of(request.studio);
  const paint = pictureMaker(pulls, request, known);
  const paintAim = asked.by === 'nearer' && asked.towards !== undefined ? pictureMaker(asked.towards, request, known) : () => null;
  const find = (result: OnwardResult): OnwardFind => ({
    result,
    now: paint([]),
    aim: paintAim([]),
    pictures: result.found.map((prints) => prints.map(({ more }) => paint(more))),
  });
  let shown = 0;
  const result = await jobs.find(job, onwardSteps(pulls, known.studio, asked, known.spans), ({ share, whole, best }) => {
    if (!whole && share - shown < LEAST_PROGRESS) return;
    shown = share;
    onProgress(whole ? { share, find: find(best()) } : { share });
  });
  return result === null ? null : find(result);
}

/** Paints prints that begin with the same pulls, each once. */
function pictureMaker(
  pulls: readonly Pull[],
  { heightPx, relative }: OnwardRequest,
  { studio, spans }: StudioKnown,
): (more: readonly Pull[]) => Picture {
  let painter: OnwardPainter | null = null;
  const known = new Map<string, Picture>();
  return (more) => {
    const key = more.map(({ id }) => id).join('+');
    let picture = known.get(key);
    if (picture === undefined) {
      painter ??= new OnwardPainter(pulls, studio, { heightPx, relative }, spans);
      picture = { widthPx: painter.widthPx, heightPx, pixels: painter.paint(more).pixels };
      known.set(key, picture);
    }
    return picture;
  };
}
