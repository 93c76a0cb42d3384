import type { OutPage } from '../../engine/output/film/page.ts';
import { runAtDesk } from '../../workers/client/desk-job.ts';
import { Desk } from '../../workers/client/desk.ts';
import type { JobControl } from '../../workers/client/job-control.ts';
import { type Api, seat } from '../../workers/client/seat.ts';
import { say } from '../words/en/output/room.ts';
import type { FilmPictureRequest, FilmsFile, FilmsRequest } from './films/films-file.ts';
import type { HandoutOptions } from './handout-pdf.ts';
import type { EditionRequest, PdfApi, PullSheetRequest } from './pdf-api.ts';
import type { PdfFile } from './pull-sheet-pdf.ts';

/** A page with many states takes long in one go, and it can be stopped by hand, ms. */
const SILENCE_MS = 60_000;

const desk = new Desk<Api<PdfApi>>({
  start: () => seat<PdfApi>(new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' })),
  ping: (api) => api.ping(),
  silenceMs: SILENCE_MS,
  what: say.partOfAppThat,
});

function run<Found>(
  control: JobControl<number>,
  work: (api: Api<PdfApi>, onProgress: (share: number) => void) => Promise<Found>,
): Promise<Found> {
  return runAtDesk(desk, control, {
    // Nothing else is done there, so a stop ends the worker, in the midst of whatever it does.
    cancel: () => desk.end(say.itWasToldTo),
    work: (api, _, onProgress) => work(api, onProgress),
  });
}

/**
 * Makes a pull sheet away from the page.
 * @throws WorkerEnded when it was stopped, or the worker died; what making it throws
 */
export function makePullSheet(request: PullSheetRequest, control: JobControl<number>): Promise<PdfFile> {
  return run(control, (api, onProgress) => api.pullSheet(request, onProgress));
}

/** Makes the documentation of an edition away from the page; throws as `makePullSheet` does. */
export function makeEdition(request: EditionRequest, control: JobControl<number>): Promise<PdfFile> {
  return run(control, (api) => api.edition(request));
}

/** Makes a lesson's handout away from the page; throws as `makePullSheet` does. */
export function makeHandout(request: HandoutOptions, control: JobControl<number>): Promise<PdfFile> {
  return run(control, (api) => api.handout(request));
}

/** Makes film positives away from the page; throws as `makePullSheet` does. */
export function makeFilms(request: FilmsRequest, control: JobControl<number>): Promise<FilmsFile> {
  return run(control, (api, onProgress) => api.films(request, onProgress));
}

/** Draws one film away from the page, to be looked at; throws as `makePullSheet` does. */
export function filmPicture(request: FilmPictureRequest, control: JobControl<number>): Promise<OutPage[]> {
  return run(control, (api) => api.filmPicture(request));
}
