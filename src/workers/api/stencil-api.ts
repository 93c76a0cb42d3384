import type { SheetCuts } from '../../engine/output/film/sections.ts';
import type { FilmScreen } from '../../engine/output/film/ways.ts';
import type { PlateAsked, PlatesFound } from '../../engine/output/plate/plates.ts';
import type { ThinAsked, ThinFound } from '../../engine/output/thin/thin-places.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { ShapeChange } from '../../engine/shapes/draw/change.ts';
import type { Grey } from '../../engine/shapes/trace/grey.ts';
import type { Traced, TraceSettings } from '../../engine/shapes/trace/trace.ts';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import type { Job } from './request.ts';

/** A screen that is looked over. */
export interface ThinRequest {
  screen: Pick<Screen, 'number' | 'placed'>;
  /** Those on the screen, at least. */
  shapes: readonly Shape[];
  asked: ThinAsked;
}

/** A picture that is to become outlines. */
export interface TraceRequest {
  grey: Grey;
  /** Of its file. */
  name: string;
  settings: TraceSettings;
}

/** A shape that is cut or joined. */
export interface ChangeRequest {
  shape: Shape;
  change: ShapeChange;
  /** Of the shape that it becomes. */
  head: { id: string; name: string };
}

/** A print that is cut into sections. */
export interface SectionsRequest {
  recipe: Recipe;
  cuts: SheetCuts;
  /** Ids of the recipes that the sections become, by section. */
  ids: readonly string[];
}

/** What is found of stencils before they are made; each call but `sections` is one step, and stopping it ends the worker. */
export interface StencilApi {
  /** @throws EngineError 'screen.unknown-shape', 'geometry.too-much-work' */
  thinPlaces(request: ThinRequest): ThinFound;
  /** @throws EngineError as `plates` */
  plates(films: readonly FilmScreen[], asked: PlateAsked): PlatesFound;
  traced(request: TraceRequest): Traced;
  /** @throws EngineError as `bladePieces` */
  pieces(shape: Shape, line: readonly number[]): Shape[];
  /** @throws EngineError as `changedShape` */
  changed(request: ChangeRequest): Shape;
  /**
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   * @throws EngineError as `sectionRecipes`
   */
  sections(request: Job<SectionsRequest>, onProgress: (share: number) => void): Promise<Recipe[] | null>;
  cancel(job: string): void;
}
