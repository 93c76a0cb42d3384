import * as Comlink from 'comlink';
import { defined, entryAt, num } from '../../engine/base/at.ts';
import { checkGoal } from '../../engine/lesson/check-goal.ts';
import { type Gap, gapSteps } from '../../engine/order/gaps.ts';
import { groupOrderSteps } from '../../engine/order/groups/group-orders.ts';
import { type MeetingPair, OVERLAP_TOLERANCE_MM, overlapSteps, pairSteps } from '../../engine/order/overlaps.ts';
import { offeredNames } from '../../engine/recipe/chest/offered-names.ts';
import { scatter } from '../../engine/shapes/compose/scatter.ts';
import type {
  GapsRequest,
  GoalRequest,
  LessonRequest,
  LessonResult,
  OverlapEdge,
  OverlapsRequest,
  ScatterRequest,
} from '../api/picture-api.ts';
import type { Job } from '../api/request.ts';
import type { Jobs } from './jobs.ts';
import type { StudioPictures } from './pictures.ts';

type OnProgress = (share: number) => void;

/** Stacks whose overlaps were asked for, in this worker. */
let measured = 0;

/** Work on a stack that no first print needs, so that it is loaded when it is asked for. */
export const stackJobs = (jobs: Jobs) => ({
  async overlaps({ studio }: StudioPictures, { pulls, minDeltaE }: OverlapsRequest): Promise<OverlapEdge[]> {
    const steps = overlapSteps({ pulls }, studio, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
    return defined(await jobs.find(`overlaps ${++measured}`, steps));
  },
  async meeting({ studio }: StudioPictures, { pulls, minDeltaE }: OverlapsRequest): Promise<MeetingPair[]> {
    const steps = pairSteps({ pulls }, studio, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
    return defined(await jobs.find(`overlaps ${++measured}`, steps)).mattering;
  },
  gaps({ studio }: StudioPictures, { job, pulls, toleranceMm }: Job<GapsRequest>, onProgress: OnProgress): Promise<Gap[] | null> {
    return jobs.find(job, gapSteps({ pulls }, studio, toleranceMm), onProgress);
  },
  offeredNames: ({ studio }: StudioPictures, { pulls }: Pick<GapsRequest, 'pulls'>) => offeredNames({ pulls }, studio),
  scatter({ studio }: StudioPictures, { shapes, ...ask }: ScatterRequest) {
    const chosen = studio.shapes.filter(({ id }) => shapes.includes(id));
    return scatter({ ...ask, shapes: chosen, printable: studio.paper.printable });
  },
  goal: ({ studio }: StudioPictures, { kind, ...question }: GoalRequest) => checkGoal(kind, { ...question, studio }),
  async lesson(
    painter: StudioPictures,
    { job, pulls, minDeltaE, minAreaMm2, ...look }: Job<LessonRequest>,
    onProgress: OnProgress,
  ): Promise<LessonResult | null> {
    const steps = groupOrderSteps({ pulls }, painter.studio, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE, minAreaMm2 });
    const found = await jobs.find(job, steps, onProgress);
    if (found === null) return null;
    const { orders, groups, pairs, count } = found;
    const firsts = groups.map((group) => entryAt(orders, num(group, 0)).map((at) => entryAt(pulls, at)));
    const drawn = painter.reordered(firsts, look);
    return Comlink.transfer(
      { orders, groups, pairs, count, pictures: drawn },
      drawn.map((picture) => picture.pixels.buffer),
    );
  },
});
