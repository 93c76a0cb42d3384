import * as Comlink from 'comlink';
import { entryAt } from '../../engine/base/at.ts';
import { EngineError } from '../../engine/base/error.ts';
import { findClash } from '../../engine/explore/search/clash.ts';
import { countOrders } from '../../engine/explore/search/order-count.ts';
import { checkExplore } from '../../engine/explore/settings/check.ts';
import { printNotes } from '../../engine/explore/settings/notes.ts';
import { readCgats } from '../../engine/ink/cgats/read-cgats.ts';
import { CARD_BLACK, CARD_WHITE } from '../../engine/ink/characterise/card.ts';
import { inkCurvesFromColours } from '../../engine/ink/characterise/characterise.ts';
import { checkInk } from '../../engine/ink/characterise/check-ink.ts';
import { fitOverprintSteps } from '../../engine/ink/fit/fit-overprints.ts';
import { matchInkSteps } from '../../engine/ink/mix/match.ts';
import { planRest } from '../../engine/log/rest.ts';
import { groupOrders } from '../../engine/order/group-orders.ts';
import { overlapsOf } from '../../engine/order/overlaps.ts';
import { drawerShape } from '../../engine/shapes/place/drawer-shape.ts';
import { readShapes } from '../../engine/shapes/read/read-shapes.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { OVERLAP_TOLERANCE_MM } from '../../engine/visit/visit-problem.ts';
import { planVisit, type PressPlan } from '../../engine/visit/visit.ts';
import { whatToDrop } from '../../engine/visit/what-to-drop.ts';
import type { EngineApi, Picture } from '../api/engine-api.ts';
import { keepErrorFields } from '../api/errors.ts';
import { wallHelpers } from '../helpers/wall-helper-workers.ts';
import { Jobs } from '../jobs/jobs.ts';
import { StudioPictures } from '../jobs/pictures.ts';
import { pinTiles } from '../jobs/pin-tiles.ts';
import { runVeils } from '../jobs/veil-job.ts';
import { runWall } from '../jobs/wall-job.ts';

const drawers = new Map<number, StudioPictures>();
const jobs = new Jobs();

function of(key: number): StudioPictures {
  const found = drawers.get(key);
  if (found === undefined) throw new EngineError('worker.drawer', 'The drawer is no longer at helper; try again.');
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

const engine: EngineApi = {
  loadStudio(key, drawer, like) {
    const before = like === null ? undefined : drawers.get(like);
    const whole: Studio =
      before === undefined ? (drawer as Studio) : { ...drawer, shapes: before.drawer.shapes, screens: before.drawer.screens };
    drawers.set(key, new StudioPictures(whole, before));
  },
  dropStudios(keys) {
    for (const key of keys) drawers.delete(key);
  },
  cancel(job) {
    jobs.cancel(job);
  },
  view: (key, request) => handOver(of(key).view(request)),
  states: (key, pulls, heightPx, relative) => handOverAll(of(key).allStates(pulls, heightPx, relative)),
  thumbnail: (key, pulls, heightPx, relative) => handOver(of(key).thumbnail(pulls, heightPx, relative)),
  overlaps(key, pulls, minDeltaE) {
    return overlapsOf({ pulls }, of(key).drawer, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
  },
  lesson(key, pulls, minDeltaE, heightPx, relative) {
    const pictures = of(key);
    const found = groupOrders({ pulls }, pictures.drawer, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
    const drawn = pictures.reordered(
      found.orders.map((order) => order.map((at) => entryAt(pulls, at))),
      heightPx,
      relative,
    );
    return Comlink.transfer(
      { ...found, pictures: drawn },
      drawn.map((picture) => picture.pixels.buffer),
    );
  },
  wall: (key, job, bench, explore, rows, onBatch, from) =>
    runWall(jobs, job, of(key), bench, explore, rows, onBatch, from, () => wallHelpers(from?.cores ?? 1)),
  pinTiles: (key, pins, at, rows, relative) => pinTiles(of(key), pins, at, rows, relative),
  checkExplore: (key, bench, explore) => checkExplore(explore, of(key).drawer, bench),
  printNotes: (key, bench) => printNotes(of(key).drawer, bench),
  countOrders: (key, job, bench, explore) => jobs.find(job, countOrders({ drawer: of(key).drawer, bench, explore })),
  findClash: (key, job, bench, explore) => jobs.find(job, findClash({ drawer: of(key).drawer, bench, explore })),
  readShapeFile(text, fileName, id) {
    const { shapes, problems } = readShapes(text, fileName);
    const [read] = shapes;
    return { shape: read === undefined ? null : drawerShape(read, id), page: read?.page ?? null, problems };
  },
  inkCurves(overWhite, overBlack) {
    const problems = checkInk({ id: 'edited', name: 'this ink', basis: 'drawdown', overWhite, overBlack });
    if (problems.some((problem) => problem.code !== 'ink.colour-missed')) return { kx: [], sx: [], adjusted: [], problems };
    const { kx, sx, adjusted } = inkCurvesFromColours(overWhite, overBlack, CARD_WHITE, CARD_BLACK);
    return { kx: [...kx], sx: [...sx], adjusted: [...adjusted], problems };
  },
  readMeasurements: (text, fileName) => readCgats(text, fileName),
  matchInk: (job, target, stocks, options, onProgress) => jobs.find(job, matchInkSteps(target, stocks, options), onProgress),
  fitOverprints: (job, squares, inks, paper, onRound) =>
    jobs.find(job, fitOverprintSteps(squares, inks, paper), ({ rounds }) => onRound(rounds)),
  veils: (key, job, pulls, options, heightPx, relative, onProgress) =>
    runVeils(jobs, job, of(key), pulls, options, heightPx, relative, onProgress),
  whatToDrop: (job, input, plan, onProgress) => jobs.find(job, whatToDrop(input, plan), onProgress),
  async plan(job, input, budgetMs, onBest) {
    let last: PressPlan | null = null;
    const clock = (): number => performance.now();
    const steps = 'rest' in input ? planRest(input, budgetMs, clock) : planVisit(input, budgetMs, clock);
    await jobs.run(job, steps, (plan) => {
      last = plan;
      onBest(plan);
    });
    if (last === null) throw new EngineError('plan.stopped', 'The planning was stopped before it found an order; start it again.');
    return last;
  },
};

keepErrorFields();
Comlink.expose(engine);
