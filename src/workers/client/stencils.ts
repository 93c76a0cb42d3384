import type { FilmScreen } from '../../engine/output/film/ways.ts';
import type { PlateAsked, PlatesFound } from '../../engine/output/plate/plates.ts';
import type { ThinFound } from '../../engine/output/thin/thin-places.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Traced } from '../../engine/shapes/trace/trace.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import type { ChangeRequest, SectionsRequest, StencilApi, ThinRequest, TraceRequest } from '../api/stencil-api.ts';
import { say } from '../words/en/client.ts';
import { runAtDesk } from './desk-job.ts';
import { Desk } from './desk.ts';
import type { JobControl } from './job-control.ts';
import { type Api, seat } from './seat.ts';

/** A large drawing takes many seconds in one go, and it can be stopped by hand, ms. */
const SILENCE_MS = 60_000;

const desk = new Desk<Api<StencilApi>>({
  start: () => seat<StencilApi>(new Worker(new URL('../entry/stencil.worker.ts', import.meta.url), { type: 'module' })),
  ping: (api) => api.ping(),
  silenceMs: SILENCE_MS,
  get what() {
    return say.partThatLooksStencils;
  },
});

/**
 * Looks for thin places of a screen away from the page.
 * @throws WorkerEnded when it was stopped, or the worker died; what `StencilApi.thinPlaces` throws
 */
export function findThinPlaces(request: ThinRequest, control: JobControl<number>): Promise<ThinFound> {
  return run(control, (api) => api.thinPlaces(request) as Promise<ThinFound>);
}

/** Lays out what is cut of screens away from the page; throws as `findThinPlaces` does, and as `plates`. */
export function layPlates(films: readonly FilmScreen[], asked: PlateAsked, control: JobControl<number>): Promise<PlatesFound> {
  return run(control, (api) => api.plates(films, asked) as Promise<PlatesFound>);
}

/** Cuts, joins or repeats a shape away from the page; throws as `findThinPlaces` does, and as `changedShape`. */
export function changeShape(request: ChangeRequest, control: JobControl<number>): Promise<Shape> {
  return run(control, (api) => api.changed(request) as Promise<Shape>);
}

/** Cuts a shape to pieces along a line away from the page; throws as `findThinPlaces` does, and as `bladePieces`. */
export function cutAlong(shape: Shape, line: readonly number[], control: JobControl<number>): Promise<Shape[]> {
  return run(control, (api) => api.pieces(shape, line) as Promise<Shape[]>);
}

/**
 * Cuts a print into sections away from the page.
 * @returns null when it was stopped
 * @throws WorkerEnded when the worker died; what `sectionRecipes` throws
 */
export function cutToSections(request: SectionsRequest, control: JobControl<number>): Promise<Recipe[] | null> {
  return runAtDesk(desk, control, {
    cancel: (api, job) => api.cancel(job),
    work: (api, job, onProgress: (share: number) => void) => api.sections({ ...request, job }, onProgress) as Promise<Recipe[] | null>,
  });
}

function run<Found>(control: JobControl<number>, work: (api: Api<StencilApi>) => Promise<Found>): Promise<Found> {
  return runAtDesk(desk, control, {
    // Nothing else is done there, so a stop ends the worker, in the midst of whatever it does.
    cancel: () => desk.end('it was told to'),
    work: (api) => work(api),
  });
}

/**
 * Traces a picture away from the page; what it comes to is told, faults too.
 * @throws WorkerEnded when it was stopped, or the worker died
 */
export function tracePicture(request: TraceRequest, control: JobControl<number>): Promise<Traced> {
  return runAtDesk(desk, control, {
    cancel: () => desk.end('it was told to'),
    work: (api) => api.traced(request) as Promise<Traced>,
  });
}
