import type { Taken } from '../../engine/explore/onward/takers.ts';
import type { PrepareAsked, PrepareStep } from '../../engine/explore/prepare/prepare.ts';
import type { TasteAsked, TasteOfWall } from '../../engine/explore/taste/taste-of-wall.ts';
import type {
  ContactSheetRequest,
  DifferencePicture,
  DifferenceRequest,
  EmbedRequest,
  OnwardFind,
  OnwardProgress,
  OnwardRequest,
  PrintRequest,
  TakersRequest,
  WallToolsApi,
} from '../api/wall-tools-api.ts';
import { say } from '../words/en/client.ts';
import { runAtDesk } from './desk-job.ts';
import { Desk } from './desk.ts';
import { PATIENCE_MS, SILENCE_MS } from './engine-client.ts';
import type { JobControl } from './job-control.ts';
import { type Api as ApiOf, seat } from './seat.ts';

type Api = ApiOf<WallToolsApi>;

/** The worker for what is done with prints that hang, as the page calls it. */
export class WallToolsClient {
  private readonly desk = new Desk<Api>({
    start: () => seat<WallToolsApi>(new Worker(new URL('../entry/wall-tools.worker.ts', import.meta.url), { type: 'module' })),
    ping: (api) => api.ping(),
    silenceMs: SILENCE_MS,
    patienceMs: PATIENCE_MS,
    get what() {
      return say.partThatWorksWithPrints;
    },
  });

  /** As Desk has it. */
  restAfter(restMs: number | undefined): void {
    this.desk.restAfter(restMs);
  }

  embed(request: EmbedRequest, control: JobControl<number>): Promise<Float32Array | null> {
    return this.run(control, (api, job, onProgress) => api.embed({ ...request, job }, onProgress));
  }

  prepare(request: PrepareAsked, control: JobControl<number>): Promise<PrepareStep[] | null> {
    return this.run(control, (api, job, onProgress) => api.prepare({ ...request, job }, onProgress));
  }

  onward(request: OnwardRequest, control: JobControl<OnwardProgress>): Promise<OnwardFind | null> {
    return this.run(control, (api, job, onProgress) => api.onward({ ...request, job }, onProgress));
  }

  takers(request: TakersRequest, control: JobControl<number>): Promise<Taken[] | null> {
    return this.run(control, (api, job, onProgress) => api.takers({ ...request, job }, onProgress));
  }

  difference(request: DifferenceRequest): Promise<DifferencePicture> {
    return this.desk.callAgain((api) => api.difference(request));
  }

  taste(request: TasteAsked): Promise<TasteOfWall> {
    return this.desk.callAgain((api) => api.taste(request));
  }

  /** @param request with a TrueType file for a PDF; null for a PNG */
  sheet(request: ContactSheetRequest & { typeface: Uint8Array | null }, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (api, job, onProgress) => api.sheet({ ...request, job }, onProgress));
  }

  print(request: PrintRequest, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (api, job, onProgress) => api.print({ ...request, job }, onProgress));
  }

  private run<Progress, Found>(
    control: JobControl<Progress>,
    work: (api: Api, job: string, onProgress: (progress: Progress) => void) => Promise<Found>,
  ): Promise<Found> {
    return runAtDesk(this.desk, control, { cancel: (api, job) => api.cancel(job), work });
  }
}
