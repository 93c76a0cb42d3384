import * as Comlink from 'comlink';
import type { Problem } from '../../engine/base/error.ts';
import type { Clash } from '../../engine/explore/search/clash.ts';
import type { OrderCount } from '../../engine/explore/types.ts';
import type { OverprintFit } from '../../engine/ink/fit/fit-overprints.ts';
import type { MatchResult } from '../../engine/ink/mix/match.ts';
import type { Lab } from '../../engine/ink/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import type { EngineApi } from '../api/engine-api.ts';
import type { MatchRequest, OverprintRequest } from '../api/ink-api.ts';
import type { LessonRequest, LessonResult, OverlapEdge, OverlapRequest, Picture, SheetRequest, ViewRequest } from '../api/picture-api.ts';
import type { FitRequest, PlanRequest } from '../api/plan-api.ts';
import type { ForStudio, Keyed } from '../api/request.ts';
import type { ExploreRequest, PinRequest, VeilFind, VeilRequest, WallBatch, WallEnd, WallRequest } from '../api/wall-api.ts';
import { type JobControl, runJob } from './job-control.ts';
import { KnownStudios } from './known-studios.ts';

/**
 * One engine worker as the page calls it: with studios, which it hands over once, and with signals to
 * cancel by. What each call gives and throws stands with the worker's own (src/workers/api).
 */
export class EngineClient {
  private readonly remote: Comlink.Remote<EngineApi>;
  private readonly studios: KnownStudios;

  constructor() {
    const worker = new Worker(new URL('../entry/engine.worker.ts', import.meta.url), { type: 'module' });
    this.remote = Comlink.wrap<EngineApi>(worker);
    this.studios = new KnownStudios(this.remote);
  }

  view(request: ForStudio<ViewRequest>): Promise<Picture> {
    return this.remote.view(this.keyed(request));
  }

  states(request: ForStudio<SheetRequest>): Promise<Picture[]> {
    return this.remote.states(this.keyed(request));
  }

  thumbnail(request: ForStudio<SheetRequest>): Promise<Picture> {
    return this.remote.thumbnail(this.keyed(request));
  }

  overlaps(request: ForStudio<OverlapRequest>): Promise<OverlapEdge[]> {
    return this.remote.overlaps(this.keyed(request));
  }

  lesson(request: ForStudio<LessonRequest>, control: JobControl<number>): Promise<LessonResult | null> {
    return this.run(control, (job, onProgress) => this.remote.lesson({ ...this.keyed(request), job }, onProgress));
  }

  wall(request: ForStudio<WallRequest>, control: JobControl<WallBatch>): Promise<WallEnd> {
    const keyed = this.keyed({ cores: navigator.hardwareConcurrency, ...request });
    return this.run(control, (job, onBatch) => this.remote.wall({ ...keyed, job }, onBatch));
  }

  pinTiles(request: ForStudio<PinRequest>): Promise<WallBatch> {
    return this.remote.pinTiles(this.keyed(request));
  }

  checkExplore(request: ForStudio<ExploreRequest>): Promise<Problem[]> {
    return this.remote.checkExplore(this.keyed(request));
  }

  printNotes(request: ForStudio<{ bench: readonly Pull[] }>): Promise<Problem[]> {
    return this.remote.printNotes(this.keyed(request));
  }

  countOrders(request: ForStudio<ExploreRequest>, control: JobControl<never>): Promise<OrderCount | null> {
    return this.run(control, (job) => this.remote.countOrders({ ...this.keyed(request), job }));
  }

  findClash(request: ForStudio<ExploreRequest>, control: JobControl<never>): Promise<Clash | null> {
    return this.run(control, (job) => this.remote.findClash({ ...this.keyed(request), job }));
  }

  veils(request: ForStudio<VeilRequest>, control: JobControl<number>): Promise<VeilFind | null> {
    return this.run(control, (job, onProgress) => this.remote.veils({ ...this.keyed(request), job }, onProgress));
  }

  readShapeFile(text: string, fileName: string, id: string) {
    return this.remote.readShapeFile(text, fileName, id);
  }

  inkCurves(overWhite: Lab, overBlack: Lab) {
    return this.remote.inkCurves(overWhite, overBlack);
  }

  readMeasurements(text: string, fileName: string) {
    return this.remote.readMeasurements(text, fileName);
  }

  matchInk(request: MatchRequest, control: JobControl<number>): Promise<MatchResult | null> {
    return this.run(control, (job, onProgress) => this.remote.matchInk({ ...request, job }, onProgress));
  }

  fitOverprints(request: OverprintRequest, control: JobControl<number>): Promise<OverprintFit | null> {
    return this.run(control, (job, onProgress) => this.remote.fitOverprints({ ...request, job }, onProgress));
  }

  plan(request: PlanRequest, control: JobControl<PressPlan>): Promise<PressPlan> {
    return this.run(control, (job, onBest) => this.remote.plan({ ...request, job }, onBest));
  }

  whatToDrop(request: FitRequest, control: JobControl<number>): Promise<FitChoice[] | null> {
    return this.run(control, (job, onProgress) => this.remote.whatToDrop({ ...request, job }, onProgress));
  }

  private keyed<Request>({ studio, ...rest }: ForStudio<Request>): Keyed<Request> {
    return { ...rest, studio: this.studios.key(studio) } as Keyed<Request>;
  }

  private run<Progress, Found>(
    control: JobControl<Progress>,
    work: (job: string, onProgress: (progress: Progress) => void) => Promise<Found>,
  ): Promise<Found> {
    return runJob(control, (job) => void this.remote.cancel(job), work);
  }
}
