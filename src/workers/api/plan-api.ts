import type { WhatIf } from '../../engine/log/now/what-if.ts';
import type { RestInput } from '../../engine/log/rest.ts';
import type { Advice, AdviceStep } from '../../engine/visit/advice/advice.ts';
import type { Edit } from '../../engine/visit/advice/edits.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { PressPlan, VisitInput } from '../../engine/visit/visit.ts';
import type { Job } from './request.ts';

/** A visit, or what is left of one, to be planned. */
export interface PlanRequest {
  input: VisitInput | RestInput;
  /** Work allowed for an order, ms. */
  budgetMs: number;
}

/** What is left of a visit, as it stands and with a choice. */
export interface RestsRequest {
  before: RestInput;
  after: RestInput;
}

/** How far the search for an order is. */
export interface PlanProgress {
  /** The best order so far, where a reader would see it change; null while nothing better is found, as a long one takes a while to cross. */
  plan: PressPlan | null;
  /** Share of the work that is done, 0–1. */
  worked: number;
  /** Share of the pulls that are looked at for which of them meet, which comes first and takes a while for long stacks, 0–1. */
  measured: number;
}

/** A plan whose visit is too short. */
export interface FitRequest {
  input: VisitInput;
  plan: PressPlan;
}

/** A plan that is to take less; with edits only these are tried. */
export interface AdviceRequest extends FitRequest {
  edits?: Edit[];
}

/** How far the search for advice is, and what was found since. */
export interface AdviceProgress extends Pick<AdviceStep, 'share' | 'found' | 'before'> {
  /** The best order known of the visit as it stands, where that is another than the last time. */
  standing: PressPlan | null;
}

/** Pull orders of a visit. */
export interface PlanApi {
  /**
   * Plans what is left of a visit as it stands and as it would stand; only figures cross.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  compareRests(request: Job<RestsRequest>, onProgress: (share: number) => void): Promise<WhatIf | null>;
  /** @throws EngineError 'plan.stopped' when the job was cancelled before any order was found */
  plan(request: Job<PlanRequest>, onProgress: (progress: PlanProgress) => void): Promise<PressPlan>;
  /**
   * What to change in a visit so that it takes less.
   * @returns null when the job was cancelled
   */
  advise(request: Job<AdviceRequest>, onProgress: (progress: AdviceProgress) => void): Promise<Advice[] | null>;
  /**
   * What to leave out of a visit, or how much longer to stay, so that it fits.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  whatToDrop(request: Job<FitRequest>, onProgress: (share: number) => void): Promise<FitChoice[] | null>;
}
