import * as Comlink from 'comlink';
import { EngineError } from '../engine/base/error.ts';
import { checkExplore, findClash } from '../engine/explore/index.ts';
import { printNotes } from '../engine/explore/notes.ts';
import { countOrders } from '../engine/explore/order-count.ts';
import { CARD_BLACK, CARD_WHITE, checkInk, fitOverprintSteps, inkCurvesFromColours, matchInkSteps, readCgats } from '../engine/ink/index.ts';
import { planRest } from '../engine/log/rest.ts';
import { groupOrders, overlapsOf } from '../engine/order/index.ts';
import { OVERLAP_TOLERANCE_MM } from '../engine/output/visit-problem.ts';
import { planVisit, type PressPlan } from '../engine/output/visit.ts';
import { whatToDrop } from '../engine/output/what-to-drop.ts';
import { drawerShape } from '../engine/shapes/drawer-shape.ts';
import { readShapes } from '../engine/shapes/read-shapes.ts';
import type { Drawer } from '../engine/stack/types.ts';
import { keepErrorFields } from './errors.ts';
import { Jobs } from './jobs.ts';
import { DrawerPictures } from './pictures.ts';
import { pinTiles } from './pin-tiles.ts';
import { runVeils } from './veil-job.ts';
import { wallHands } from './wall-hand-workers.ts';
import { runWall } from './wall-job.ts';
import type { EngineApi, Picture } from './wire.ts';

const drawers = new Map<number, DrawerPictures>();
const jobs = new Jobs();

function of(key: number): DrawerPictures {
  const found = drawers.get(key);
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

const engine: EngineApi = {
  loadDrawer(key, drawer, like) {
    const before = like === null ? undefined : drawers.get(like);
    const whole: Drawer =
      before === undefined ? (drawer as Drawer) : { ...drawer, shapes: before.drawer.shapes, screens: before.drawer.screens };
    drawers.set(key, new DrawerPictures(whole, before));
  },
  dropDrawers(keys) {
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
      found.orders.map((order) => order.map((at) => pulls[at]!)),
      heightPx,
      relative,
    );
    return Comlink.transfer(
      { ...found, pictures: drawn },
      drawn.map((picture) => picture.pixels.buffer),
    );
  },
  wall: (key, job, bench, explore, rows, onBatch, from) => runWall(jobs, job, of(key), bench, explore, rows, onBatch, from, () => wallHands(from?.cores ?? 1)),
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
  fitOverprints: (job, squares, inks, paper, onRound) => jobs.find(job, fitOverprintSteps(squares, inks, paper), ({ rounds }) => onRound(rounds)),
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
