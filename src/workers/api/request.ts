import type { Studio } from '../../engine/studio/studio.ts';

/** Names a studio that a worker has: studios hold thousands of points, a request holds a few pulls. */
export type StudioKey = number;

/** A request about a studio, as it goes to the worker. */
export type Keyed<Request> = Request & { studio: StudioKey };

/** A request about a studio, as the page makes it. */
export type ForStudio<Request> = Request & { studio: Studio };

/** A request for work that may be cancelled, by its name. */
export type Job<Request> = Request & { job: string };
