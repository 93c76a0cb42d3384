import { plates } from '../../engine/output/plate/plates.ts';
import { thinPlaces } from '../../engine/output/thin/thin-places.ts';
import { bladePieces } from '../../engine/shapes/draw/blade.ts';
import { changedShape } from '../../engine/shapes/draw/change.ts';
import { screenRings } from '../../engine/shapes/place/placed.ts';
import { trace } from '../../engine/shapes/trace/trace.ts';
import { serve } from '../api/serve.ts';
import type { StencilApi } from '../api/stencil-api.ts';
import { Jobs } from '../jobs/jobs.ts';
import { runSections } from '../jobs/section-job.ts';

const jobs = new Jobs();

const api: StencilApi = {
  thinPlaces: ({ screen, shapes, asked }) => thinPlaces(screenRings(screen, shapes), asked),
  plates,
  traced: ({ grey, name, settings }) => trace(grey, name, settings),
  pieces: bladePieces,
  changed: ({ shape, change, head }) => changedShape(shape, change, head),
  sections: (request, onProgress) => runSections(jobs, request, onProgress),
  cancel: (job) => jobs.cancel(job),
};

serve(api);
