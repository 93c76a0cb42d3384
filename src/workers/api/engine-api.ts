import type { Studio } from '../../engine/studio/studio.ts';
import type { InkApi } from './ink-api.ts';
import type { PictureApi } from './picture-api.ts';
import type { PlanApi } from './plan-api.ts';
import type { StudioKey } from './request.ts';
import type { WallApi } from './wall-api.ts';

/** A studio on its way to a worker. */
export interface StudioLoad {
  key: StudioKey;
  /** Whole, or without shapes and screens when `like` names a studio that has the same. */
  studio: Studio | Omit<Studio, 'shapes' | 'screens'>;
  like: StudioKey | null;
}

/** What an engine worker does. */
export interface EngineApi extends PictureApi, WallApi, InkApi, PlanApi {
  loadStudio(load: StudioLoad): void;
  /** Forgets studios that are no longer needed. */
  dropStudios(keys: readonly StudioKey[]): void;
  /** Stops a running job between two of its steps; unknown jobs are ignored. */
  cancel(job: string): void;
}
