import type { Problem } from '../../engine/base/error.ts';
import type { Clash } from '../../engine/explore/search/clash.ts';
import type { OrderCount } from '../../engine/explore/types.ts';
import type { Grounds } from '../../engine/ink/characterise/card.ts';
import type { Surface } from '../../engine/ink/film/printing.ts';
import type { TargetFit, TargetFitInput } from '../../engine/ink/fit/fit-target.ts';
import type { MatchResult } from '../../engine/ink/mix/match.ts';
import type { Ink, Lab } from '../../engine/ink/types.ts';
import type { GoalVerdict } from '../../engine/lesson/check-goal.ts';
import type { WhatIf } from '../../engine/log/now/what-if.ts';
import type { Gap } from '../../engine/order/gaps.ts';
import type { MeetingPair } from '../../engine/order/overlaps.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Scattered } from '../../engine/shapes/compose/scatter.ts';
import type { PlaceReading } from '../../engine/stack/look/read-place.ts';
import type { PrintError } from '../../engine/stack/print-error.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Advice } from '../../engine/visit/advice/advice.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import type { EngineApi } from '../api/engine-api.ts';
import type { MatchRequest } from '../api/ink-api.ts';
import type {
  DifferenceRequest,
  DifferenceResult,
  GapsRequest,
  LoosePlaceRequest,
  GoalRequest,
  LessonRequest,
  LessonResult,
  OverlapEdge,
  OverlapsRequest,
  Picture,
  PlaceRequest,
  ScatterRequest,
  SheetRequest,
  ViewRequest,
} from '../api/picture-api.ts';
import type { AdviceProgress, AdviceRequest, FitRequest, PlanProgress, PlanRequest, RestsRequest } from '../api/plan-api.ts';
import type { ForStudio, Keyed } from '../api/request.ts';
import type {
  ExploreRequest,
  PinRequest,
  VeilFind,
  VeilProgress,
  VeilRequest,
  SentBatch,
  WallBatch,
  WallEnd,
  WallRequest,
} from '../api/wall-api.ts';
import { say } from '../words/en/client.ts';
import { runAtDesk } from './desk-job.ts';
import { Desk } from './desk.ts';
import type { JobControl } from './job-control.ts';
import { KnownStudios } from './known-studios.ts';
import { type Api as ApiOf, seat } from './seat.ts';
import { SharedNames } from './shared-names.ts';
import { unpackedBatch } from './unpacked-batch.ts';

/** So long without a sign, while something waits, and the worker counts as dead, ms. */
export const SILENCE_MS = 20_000;
/** The same where its death would be heard, ms. */
export const PATIENCE_MS = 120_000;

type Api = ApiOf<EngineApi>;

/** An engine worker, with the studios that it has. */
interface Seat {
  api: Api;
  studios: KnownStudios;
}

/**
 * One engine worker as the page calls it: with studios, which it hands over once, and with signals to
 * cancel by. What each call gives and throws stands with the worker's own (src/workers/api); besides, each
 * throws WorkerEnded when the worker dies, and the next call starts another. What has no progress is short,
 * and is asked once more before it throws.
 */
export class EngineClient {
  private readonly desk: Desk<Seat>;

  /** @param restMs after so long without work its worker is ended; absent = it stays */
  constructor(restMs?: number) {
    this.desk = new Desk<Seat>({
      start() {
        const { remote: api, ...seated } = seat<EngineApi>(
          new Worker(new URL('../entry/engine.worker.ts', import.meta.url), { type: 'module' }),
        );
        return { ...seated, remote: { api, studios: new KnownStudios(api) } };
      },
      ping: ({ api }) => api.ping(),
      silenceMs: SILENCE_MS,
      patienceMs: PATIENCE_MS,
      get what() {
        return say.partThatWorksOut;
      },
      restMs,
    });
  }

  /** As Desk has it. */
  restAfter(restMs: number | undefined): void {
    this.desk.restAfter(restMs);
  }

  view(request: ForStudio<ViewRequest>): Promise<Picture> {
    return this.ask(request, (api, keyed) => api.view(keyed));
  }

  printError(request: ForStudio<{ pulls: readonly Pull[] }>): Promise<PrintError> {
    return this.ask(request, (api, keyed) => api.printError(keyed));
  }

  readPlace(request: ForStudio<PlaceRequest>): Promise<PlaceReading> {
    return this.ask(request, (api, keyed) => api.readPlace(keyed));
  }

  states(request: ForStudio<SheetRequest>): Promise<Picture[]> {
    return this.ask(request, (api, keyed) => api.states(keyed));
  }

  thumbnail(request: ForStudio<SheetRequest>): Promise<Picture> {
    return this.ask(request, (api, keyed) => api.thumbnail(keyed));
  }

  overlaps(request: ForStudio<OverlapsRequest>): Promise<OverlapEdge[]> {
    return this.ask(request, (api, keyed) => api.overlaps(keyed));
  }

  meeting(request: ForStudio<OverlapsRequest>): Promise<MeetingPair[]> {
    return this.ask(request, (api, keyed) => api.meeting(keyed));
  }

  gaps(request: ForStudio<GapsRequest>, control: JobControl<number>): Promise<Gap[] | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.gaps({ ...keyed(seat, request), job }, onProgress));
  }

  loosePlace(request: ForStudio<LoosePlaceRequest>): Promise<{ xMm: number; yMm: number } | null> {
    return this.ask(request, (api, keyed) => api.loosePlace(keyed));
  }

  offeredNames(request: ForStudio<{ pulls: readonly Pull[] }>): Promise<string[]> {
    return this.ask(request, (api, keyed) => api.offeredNames(keyed));
  }

  scatter(request: ForStudio<ScatterRequest>): Promise<Scattered> {
    return this.ask(request, (api, keyed) => api.scatter(keyed));
  }

  goal(request: ForStudio<GoalRequest>): Promise<GoalVerdict> {
    return this.ask(request, (api, keyed) => api.goal(keyed) as Promise<GoalVerdict>);
  }

  difference(request: ForStudio<DifferenceRequest>): Promise<DifferenceResult> {
    return this.ask(request, (api, keyed) => api.difference(keyed));
  }

  lesson(request: ForStudio<LessonRequest>, control: JobControl<number>): Promise<LessonResult | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.lesson({ ...keyed(seat, request), job }, onProgress));
  }

  wall(request: ForStudio<WallRequest>, { signal, onProgress }: JobControl<WallBatch>): Promise<WallEnd> {
    const cores = navigator.hardwareConcurrency;
    const names = new SharedNames();
    const take = (batch: SentBatch): void => {
      names.share(batch.pulls.names);
      onProgress?.(unpackedBatch(batch));
    };
    return this.run({ signal, onProgress: take }, (seat, job, onBatch) => seat.api.wall({ cores, ...keyed(seat, request), job }, onBatch));
  }

  async pinTiles(request: ForStudio<PinRequest>): Promise<WallBatch> {
    return unpackedBatch(await this.ask(request, (api, keyed) => api.pinTiles(keyed)));
  }

  checkExplore(request: ForStudio<ExploreRequest>): Promise<Problem[]> {
    return this.ask(request, (api, keyed) => api.checkExplore(keyed));
  }

  printNotes(request: ForStudio<{ bench: readonly Pull[] }>): Promise<Problem[]> {
    return this.ask(request, (api, keyed) => api.printNotes(keyed));
  }

  countOrders(request: ForStudio<ExploreRequest>, control: JobControl<never>): Promise<OrderCount | null> {
    return this.run(control, (seat, job) => seat.api.countOrders({ ...keyed(seat, request), job }));
  }

  findClash(request: ForStudio<ExploreRequest>, control: JobControl<never>): Promise<Clash | null> {
    return this.run(control, (seat, job) => seat.api.findClash({ ...keyed(seat, request), job }));
  }

  veils(request: ForStudio<VeilRequest>, control: JobControl<VeilProgress>): Promise<VeilFind | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.veils({ ...keyed(seat, request), job }, onProgress));
  }

  inkCurves(overWhite: Lab, overBlack: Lab, grounds?: Grounds) {
    return this.desk.callAgain(({ api }) => api.inkCurves(overWhite, overBlack, grounds));
  }

  matchInk(request: MatchRequest, control: JobControl<number>): Promise<MatchResult | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.matchInk({ ...request, job }, onProgress));
  }

  driftedRecipes(recipes: readonly Recipe[], ink: Ink, surface?: Surface) {
    return this.desk.callAgain(({ api }) => api.driftedRecipes(recipes, ink, surface));
  }

  fitTarget(request: TargetFitInput, control: JobControl<number>): Promise<TargetFit | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.fitTarget({ ...request, job }, onProgress));
  }

  compareRests(request: RestsRequest, control: JobControl<number>): Promise<WhatIf | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.compareRests({ ...request, job }, onProgress));
  }

  plan(request: PlanRequest, control: JobControl<PlanProgress>): Promise<PressPlan> {
    return this.run(control, (seat, job, onProgress) => seat.api.plan({ ...request, job }, onProgress));
  }

  advise(request: AdviceRequest, control: JobControl<AdviceProgress>): Promise<Advice[] | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.advise({ ...request, job }, onProgress));
  }

  whatToDrop(request: FitRequest, control: JobControl<number>): Promise<FitChoice[] | null> {
    return this.run(control, (seat, job, onProgress) => seat.api.whatToDrop({ ...request, job }, onProgress));
  }

  private ask<Request, Found>(request: ForStudio<Request>, work: (api: Api, request: Keyed<Request>) => Promise<Found>): Promise<Found> {
    return this.desk.callAgain((seat) => work(seat.api, keyed(seat, request)));
  }

  private run<Progress, Found>(
    control: JobControl<Progress>,
    work: (seat: Seat, job: string, onProgress: (progress: Progress) => void) => Promise<Found>,
  ): Promise<Found> {
    return runAtDesk(this.desk, control, { cancel: ({ api }, job) => api.cancel(job), work });
  }
}

function keyed<Request>({ studios }: Seat, { studio, ...rest }: ForStudio<Request>): Keyed<Request> {
  return { ...rest, studio: studios.key(studio) } as Keyed<Request>;
}
