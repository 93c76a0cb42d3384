import * as Comlink from 'comlink';
import type {
  ContactSheetRequest,
  DifferencePicture,
  DifferenceRequest,
  EmbedRequest,
  PrintRequest,
  WallToolsApi,
} from '../api/wall-tools-api.ts';
import { runAtDesk } from './desk-job.ts';
import { Desk } from './desk.ts';
import type { JobControl } from './job-control.ts';

/** So long without a sign, while something waits, and the worker counts as dead, ms. */
const SILENCE_MS = 60_000;

type Api = Comlink.Remote<WallToolsApi>;

/** The worker for what is done with prints that hang, as the page calls it. */
export class WallToolsClient {
  private readonly desk = new Desk<Api>({
    start() {
      const worker = new Worker(new URL('../entry/wall-tools.worker.ts', import.meta.url), { type: 'module' });
      return { worker, remote: Comlink.wrap<WallToolsApi>(worker) };
    },
    ping: (api) => api.cancel(''),
    silenceMs: SILENCE_MS,
    what: 'The part of the app that works with the prints on the wall',
  });

  embed(request: EmbedRequest, control: JobControl<number>): Promise<Float32Array | null> {
    return this.run(control, (api, job, onProgress) => api.embed({ ...request, job }, onProgress));
  }

  difference(request: DifferenceRequest): Promise<DifferencePicture> {
    return this.desk.call((api) => api.difference(request));
  }

  /** @param request with a TrueType file for a PDF; null for a PNG */
  sheet(request: ContactSheetRequest & { typeface: Uint8Array | null }, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (api, job, onProgress) => api.sheet({ ...request, job }, onProgress));
  }

  print(request: PrintRequest, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (api, job, onProgress) => api.print({ ...request, job }, onProgress));
  }

  private run<Found>(
    control: JobControl<number>,
    work: (api: Api, job: string, onProgress: (share: number) => void) => Promise<Found>,
  ): Promise<Found> {
    return runAtDesk(this.desk, control, { cancel: (api, job) => api.cancel(job), work });
  }
}
