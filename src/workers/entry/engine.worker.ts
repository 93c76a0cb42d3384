import * as Comlink from 'comlink';
import { defined, entryAt, num } from '../../engine/base/at.ts';
import { EngineError } from '../../engine/base/error.ts';
import { findClash } from '../../engine/explore/search/clash.ts';
import { countOrders } from '../../engine/explore/search/order-count.ts';
import { checkExplore } from '../../engine/explore/settings/check.ts';
import { printNotes } from '../../engine/explore/settings/notes.ts';
import { CARD } from '../../engine/ink/characterise/card.ts';
import { inkCurvesOn } from '../../engine/ink/characterise/characterise.ts';
import { checkInk } from '../../engine/ink/characterise/check-ink.ts';
import { checkGoal } from '../../engine/lesson/check-goal.ts';
import { gapSteps } from '../../engine/order/gaps.ts';
import { groupOrderSteps } from '../../engine/order/groups/group-orders.ts';
import { OVERLAP_TOLERANCE_MM, overlapSteps } from '../../engine/order/overlaps.ts';
import { offeredNames } from '../../engine/recipe/chest/offered-names.ts';
import { scatter } from '../../engine/shapes/compose/scatter.ts';
import { printError } from '../../engine/stack/print-error.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { PairMemory } from '../../engine/visit/problem/pair-memory.ts';
import type { EngineApi } from '../api/engine-api.ts';
import type { InkApi } from '../api/ink-api.ts';
import type { Picture, PictureApi } from '../api/picture-api.ts';
import type { PlanApi } from '../api/plan-api.ts';
import type { StudioKey } from '../api/request.ts';
import { serve } from '../api/serve.ts';
import type { WallApi } from '../api/wall-api.ts';
import { wallHelpers } from '../helpers/wall-helper-workers.ts';
import { Jobs } from '../jobs/jobs.ts';
import { loosePlace } from '../jobs/loose-place.ts';
import { StudioPictures } from '../jobs/pictures.ts';
import { pinTiles } from '../jobs/pin-tiles.ts';
import { runVeils } from '../jobs/veil-job.ts';
import { runWall } from '../jobs/wall-job.ts';

/** The overlaps of so many pulls are found by exact clipping also where a picture waits for them. */
const EXACT_TO = 24;

const studios = new Map<StudioKey, StudioPictures>();
const jobs = new Jobs();
const memory = new PairMemory();
/** Stacks whose overlaps were asked for. */
let measured = 0;

const inkJobs = async () => (await import('../jobs/ink-jobs.ts')).inkJobs(jobs);
const planJobs = async () => (await import('../jobs/plan-jobs.ts')).planJobs(jobs, memory);

function of(key: StudioKey): StudioPictures {
  const found = studios.get(key);
  if (found === undefined) throw new EngineError('worker.drawer', 'The drawer is no longer at hand; try again.');
  return found;
}

function handOver(picture: Picture): Picture {
  return Comlink.transfer(picture, [picture.pixels.buffer]);
}

function handOverAll(pictures: Picture[]): Picture[] {
  return Comlink.transfer(
    pictures,
    pictures.map((picture) => picture.pixels.buffer),
  );
}

const pictures: PictureApi = {
  view: ({ studio, ...request }) => handOver(of(studio).view(request)),
  printError: ({ studio, pulls }) => printError({ pulls }, of(studio).studio),
  readPlace: ({ studio, ...request }) => of(studio).readPlace(request),
  states: ({ studio, ...request }) => handOverAll(of(studio).allStates(request)),
  thumbnail: ({ studio, ...request }) => handOver(of(studio).thumbnail(request)),
  async overlaps({ studio, pulls, minDeltaE, exact = pulls.length <= EXACT_TO }) {
    const pictures = of(studio);
    if (!exact) return pictures.mapOverlaps(pulls).filter(({ deltaE }) => deltaE >= minDeltaE);
    const steps = overlapSteps({ pulls }, pictures.studio, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
    return defined(await jobs.find(`overlaps ${++measured}`, steps));
  },
  gaps: ({ studio, job, pulls, toleranceMm }, onProgress) =>
    jobs.find(job, gapSteps({ pulls }, of(studio).studio, toleranceMm), onProgress),
  loosePlace: ({ studio, ...request }) => loosePlace(of(studio), request),
  offeredNames: ({ studio, pulls }) => offeredNames({ pulls }, of(studio).studio),
  scatter({ studio: key, shapes, ...ask }) {
    const { studio } = of(key);
    const chosen = studio.shapes.filter(({ id }) => shapes.includes(id));
    return scatter({ ...ask, shapes: chosen, printable: studio.paper.printable });
  },
  goal: ({ studio, kind, ...question }) => checkGoal(kind, { ...question, studio: of(studio).studio }),
  difference({ studio, ...request }) {
    const found = of(studio).difference(request);
    return Comlink.transfer(found, [found.outline.pixels.buffer]);
  },
  async lesson({ studio, job, pulls, minDeltaE, minAreaMm2, ...look }, onProgress) {
    const painter = of(studio);
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
};

const walls: WallApi = {
  wall: ({ studio, ...request }, onBatch) =>
    runWall({ jobs, pictures: of(studio), helpers: wallHelpers(request.cores ?? 1) }, request, onBatch),
  pinTiles: ({ studio, ...request }) => pinTiles(of(studio), request),
  checkExplore: ({ studio, bench, explore }) => checkExplore(explore, of(studio).studio, bench),
  printNotes: ({ studio, bench }) => printNotes(of(studio).studio, bench),
  countOrders: ({ studio, job, bench, explore }) => jobs.find(job, countOrders({ drawer: of(studio).studio, bench, explore })),
  findClash: ({ studio, job, bench, explore }) => jobs.find(job, findClash({ drawer: of(studio).studio, bench, explore })),
  veils: ({ studio, ...request }, onProgress) => runVeils({ jobs, pictures: of(studio) }, request, onProgress),
};

const inks: InkApi = {
  inkCurves(overWhite, overBlack, grounds = CARD) {
    const problems = checkInk({ id: 'edited', name: 'this ink', basis: 'drawdown', overWhite, overBlack, grounds });
    if (problems.some((problem) => problem.code !== 'ink.colour-missed')) return { kx: [], sx: [], adjusted: [], problems };
    const { kx, sx, adjusted } = inkCurvesOn(overWhite, overBlack, grounds);
    return { kx: [...kx], sx: [...sx], adjusted: [...adjusted], problems };
  },
  matchInk: async (request, tell) => (await jobs.loading(request.job, inkJobs)).matchInk(request, tell),
  driftedRecipes: async (...asked) => (await inkJobs()).driftedRecipes(...asked),
  fitTarget: async (request, tell) => (await jobs.loading(request.job, inkJobs)).fitTarget(request, tell),
};

const plans: PlanApi = {
  measure: async (request, tell) => (await jobs.loading(request.job, planJobs)).measure(request, tell),
  advise: async (request, tell) => (await jobs.loading(request.job, planJobs)).advise(request, tell),
  whatToDrop: async (request, tell) => (await jobs.loading(request.job, planJobs)).whatToDrop(request, tell),
  plan: async (request, tell) => (await jobs.loading(request.job, planJobs)).plan(request, tell),
};

const engine: EngineApi = {
  ...pictures,
  ...walls,
  ...inks,
  ...plans,
  loadStudio({ key, studio, like }) {
    const before = like === null ? undefined : studios.get(like);
    const whole: Studio =
      before === undefined ? (studio as Studio) : { ...studio, shapes: before.studio.shapes, screens: before.studio.screens };
    studios.set(key, new StudioPictures(whole, before));
  },
  dropStudios(keys) {
    for (const key of keys) studios.delete(key);
  },
  cancel(job) {
    jobs.cancel(job);
  },
};

serve(engine);
