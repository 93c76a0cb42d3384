import * as Comlink from 'comlink';
import { EngineError } from '../../engine/base/error.ts';
import { checkExplore } from '../../engine/explore/settings/check.ts';
import { printNotes } from '../../engine/explore/settings/notes.ts';
import { CARD } from '../../engine/ink/characterise/card.ts';
import { inkCurvesOn } from '../../engine/ink/characterise/characterise.ts';
import { checkInk } from '../../engine/ink/characterise/check-ink.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { EngineApi } from '../api/engine-api.ts';
import type { InkApi } from '../api/ink-api.ts';
import type { Picture, PictureApi } from '../api/picture-api.ts';
import type { PlanApi } from '../api/plan-api.ts';
import type { StudioKey } from '../api/request.ts';
import { serve } from '../api/serve.ts';
import type { WallApi } from '../api/wall-api.ts';
import { wallHelpers } from '../helpers/wall-helper-workers.ts';
import { Jobs } from '../jobs/jobs.ts';
import { StudioPictures } from '../jobs/pictures.ts';
import { pinTiles } from '../jobs/pin-tiles.ts';
import { runWall } from '../jobs/wall-job.ts';
import { say } from '../words/en/jobs.ts';

/** The overlaps of so many pulls are found by exact clipping also where a picture waits for them. */
const EXACT_TO = 24;

const studios = new Map<StudioKey, StudioPictures>();
const jobs = new Jobs();

const inkJobs = async () => (await import('../jobs/ink-jobs.ts')).inkJobs(jobs);
const planJobs = async () => (await import('../jobs/plan-jobs.ts')).planJobs(jobs);
const stackJobs = async () => (await import('../jobs/stack-jobs.ts')).stackJobs(jobs);

function of(key: StudioKey): StudioPictures {
  const found = studios.get(key);
  if (found === undefined) throw new EngineError('worker.drawer', say.drawerIsGone);
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
  printError: async ({ studio, pulls }) => (await import('../../engine/stack/print-error.ts')).printError({ pulls }, of(studio).studio),
  readPlace: ({ studio, ...request }) => of(studio).readPlace(request),
  states: ({ studio, ...request }) => handOverAll(of(studio).allStates(request)),
  thumbnail: ({ studio, ...request }) => handOver(of(studio).thumbnail(request)),
  async overlaps({ studio, pulls, minDeltaE }) {
    const pictures = of(studio);
    if (pulls.length > EXACT_TO) return pictures.mapOverlaps(pulls).filter(({ deltaE }) => deltaE >= minDeltaE);
    return (await stackJobs()).overlaps(pictures, { pulls, minDeltaE });
  },
  async meeting({ studio, ...request }) {
    const pictures = of(studio);
    return (await stackJobs()).meeting(pictures, request);
  },
  // The studio is looked up at once: by the time that the work is loaded, it may be dropped.
  async gaps({ studio, ...request }, onProgress) {
    const pictures = of(studio);
    return (await jobs.loading(request.job, stackJobs)).gaps(pictures, request, onProgress);
  },
  async loosePlace({ studio, ...request }) {
    const pictures = of(studio);
    return (await import('../jobs/loose-place.ts')).loosePlace(pictures, request);
  },
  async offeredNames({ studio, ...request }) {
    const pictures = of(studio);
    return (await stackJobs()).offeredNames(pictures, request);
  },
  async scatter({ studio, ...request }) {
    const pictures = of(studio);
    return (await stackJobs()).scatter(pictures, request);
  },
  async goal({ studio, ...request }) {
    const pictures = of(studio);
    return (await stackJobs()).goal(pictures, request);
  },
  difference({ studio, ...request }) {
    const found = of(studio).difference(request);
    return Comlink.transfer(found, [found.outline.pixels.buffer]);
  },
  async lesson({ studio, ...request }, onProgress) {
    const pictures = of(studio);
    return (await jobs.loading(request.job, stackJobs)).lesson(pictures, request, onProgress);
  },
};

const walls: WallApi = {
  wall: ({ studio, ...request }, onBatch) =>
    runWall({ jobs, pictures: of(studio), helpers: wallHelpers(request.cores ?? 1) }, request, onBatch),
  pinTiles: ({ studio, ...request }) => pinTiles(of(studio), request),
  checkExplore: ({ studio, bench, explore }) => checkExplore(explore, of(studio).studio, bench),
  printNotes: ({ studio, bench }) => printNotes(of(studio).studio, bench),
  async countOrders({ studio, job, bench, explore }) {
    const drawer = of(studio).studio;
    const { countOrders } = await jobs.loading(job, () => import('../../engine/explore/search/order-count.ts'));
    return jobs.find(job, countOrders({ drawer, bench, explore }));
  },
  async findClash({ studio, job, bench, explore }) {
    const drawer = of(studio).studio;
    const { findClash } = await jobs.loading(job, () => import('../../engine/explore/search/clash.ts'));
    return jobs.find(job, findClash({ drawer, bench, explore }));
  },
  async veils({ studio, ...request }, onProgress) {
    const pictures = of(studio);
    const { runVeils } = await jobs.loading(request.job, () => import('../jobs/veil-job.ts'));
    return runVeils({ jobs, pictures }, request, onProgress);
  },
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
  compareRests: async (request, tell) => (await jobs.loading(request.job, planJobs)).compareRests(request, tell),
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
