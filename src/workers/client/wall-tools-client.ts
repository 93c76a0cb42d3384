import * as Comlink from 'comlink';
import type {
  ContactSheetRequest,
  DifferencePicture,
  DifferenceRequest,
  EmbedRequest,
  PrintRequest,
  WallToolsApi,
} from '../api/wall-tools-api.ts';
import { type JobControl, runJob } from './job-control.ts';

/** The worker for what is done with prints that hang, as the page calls it. */
export class WallToolsClient {
  private readonly remote: Comlink.Remote<WallToolsApi>;

  constructor() {
    const worker = new Worker(new URL('../entry/wall-tools.worker.ts', import.meta.url), { type: 'module' });
    this.remote = Comlink.wrap<WallToolsApi>(worker);
  }

  embed(request: EmbedRequest, control: JobControl<number>): Promise<Float32Array | null> {
    return this.run(control, (job, onProgress) => this.remote.embed({ ...request, job }, onProgress));
  }

  difference(request: DifferenceRequest): Promise<DifferencePicture> {
    return this.remote.difference(request);
  }

  /** @param request with a TrueType file for a PDF; null for a PNG */
  sheet(request: ContactSheetRequest & { typeface: Uint8Array | null }, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (job, onProgress) => this.remote.sheet({ ...request, job }, onProgress));
  }

  print(request: PrintRequest, control: JobControl<number>): Promise<Blob | null> {
    return this.run(control, (job, onProgress) => this.remote.print({ ...request, job }, onProgress));
  }

  private run<Found>(
    control: JobControl<number>,
    work: (job: string, onProgress: (share: number) => void) => Promise<Found>,
  ): Promise<Found> {
    return runJob(control, (job) => void this.remote.cancel(job), work);
  }
}
