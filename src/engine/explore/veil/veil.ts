import { defined } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { filmFactor } from '../../ink/film/film-factor.ts';
import type { Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/veil.ts';
import { meanDifference } from '../look/points.ts';
import { measureVariant } from '../measure/measures.ts';
import { isTranslucent } from './translucent.ts';
import { veilAreas, type VeilArea } from './veil-areas.ts';
import { veilInks, type VeilInk } from './veil-inks.ts';
import { BarePrint, swatchesOf } from './veil-map.ts';
import type { VeilOptions, VeilProposal, VeilResult } from './veil-types.ts';

/** A veil softens when it takes away at least this share of the contrast of edges. */
const LEAST_SOFTER = 0.01;
/** Proposals differ from each other by this ΔE00 in the mean over the sheet, or by less when too few do. */
const APART_DELTA_E = [4, 2, 1, 0.5];
/** Small areas change the mean little, so one area takes at most this share while others have veils. */
const MOST_OF_AREA = 0.5;

/** How a search for veils stands. */
export interface VeilStep {
  /** Share of the work that is done, 0–1. */
  share: number;
  /** The best of what was tried so far. */
  best(): VeilResult;
}

interface Candidate {
  area: VeilArea;
  ink: VeilInk;
  at: number;
  edgeContrast: number;
  lab: Float64Array;
}

/**
 * Translucent pulls that soften a print: of every ink let down, over every area, those that lower
 * the contrast of edges (edge length × ΔE00) most while the largest colours keep their lightness order, each
 * with at least ΔL 1 left between two that differed by ΔL 2.
 * @param stack the pulls, first down first, at least one
 * @yields the share of the work that is done, a few milliseconds apart
 * @returns proposals that differ to the eye, softest first; none when no veil softens the print
 * @throws EngineError 'veil.empty-stack', 'veil.unknown-ink', 'veil.unknown-screen', 'veil.letdown',
 *   'veil.option', and what stackLayers and placedSpans throw
 */
export function* veils(stack: Stack, studio: Studio, options: VeilOptions = {}): Generator<number, VeilResult> {
  const steps = veilSteps(stack, studio, options);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield step.value.share;
  }
}

/**
 * As `veils`, in steps that can tell what is best so far. Areas with most contrast come first, those that
 * flood the sheet last, so that what is best so far is of use soon.
 * @throws as `veils`
 */
export function* veilSteps(stack: Stack, studio: Studio, options: VeilOptions = {}): Generator<VeilStep, VeilResult> {
  const { count = 6, largest = 6, rows = 256, places = 'end' } = options;
  checkCounts({ proposals: count, colours: largest, rows });
  if (stack.pulls.length === 0) {
    throw new EngineError('veil.empty-stack', say.stackHasNoPulls);
  }
  const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows };
  const inks = veilInks(studio, options);
  const bare = new BarePrint(stack, { studio, inks, grid, largest });
  const slots = places === 'any' ? stack.pulls.map((_, i) => i).concat(stack.pulls.length) : [stack.pulls.length];
  const areas = bare.mostFirst(veilAreas(studio, options));
  const tries = new Tries(stack, bare, count);
  const total = areas.length * inks.length * slots.length;
  let seen = 0;
  for (const area of areas) {
    const ground = bare.ground(area);
    for (const ink of inks) {
      seen += slots.length;
      if (!isTranslucent(ink.ink, filmFactor(ink.ink, area.screen.mesh))) continue;
      for (const at of slots) {
        tries.tried++;
        yield { share: (seen - slots.length + at / stack.pulls.length) / total, best: () => tries.best() };
        const shown = ground.with(ink.ink, at);
        if (!ground.keepsOrder(shown)) continue;
        const edgeContrast = ground.contrast(shown, at === stack.pulls.length, bare.before.edgeContrast * (1 - LEAST_SOFTER));
        if (edgeContrast !== null) tries.found.push({ area, ink, at, edgeContrast, lab: ground.pointLab(shown) });
      }
    }
  }
  return tries.best();
}

function checkCounts(counts: Record<string, number>): void {
  for (const [what, value] of Object.entries(counts)) {
    if (!(Number.isInteger(value) && value >= 1 && value <= 4096)) {
      throw new EngineError('veil.option', say.numberOfIsGive(what, value));
    }
  }
}

/** What was tried of the veils of a print. */
class Tries {
  tried = 0;
  readonly found: Candidate[] = [];
  private readonly stack: Stack;
  private readonly bare: BarePrint;
  private readonly count: number;
  private readonly proposals = new Map<Candidate, VeilProposal>();

  constructor(stack: Stack, bare: BarePrint, count: number) {
    this.stack = stack;
    this.bare = bare;
    this.count = count;
  }

  /** The softest so far. */
  best(): VeilResult {
    const sorted = this.found.toSorted((a, b) => a.edgeContrast - b.edgeContrast);
    const proposals = spread(sorted, this.count).map((candidate) => this.proposalOf(candidate));
    return { before: this.bare.before, proposals, tried: this.tried, kept: this.found.length };
  }

  private proposalOf(candidate: Candidate): VeilProposal {
    const known = this.proposals.get(candidate);
    if (known !== undefined) return known;
    const { bare, stack } = this;
    const { area, ink, at } = candidate;
    const ground = bare.ground(area);
    const veil = bare.veil(area, ink.ink.id);
    const pulls = [...stack.pulls.slice(0, at), veil, ...stack.pulls.slice(at)];
    const { map, figures } = ground.parts;
    const after = measureVariant(map, ground.with(ink.ink, at), swatchesOf({ pulls }, bare.extended(area)), figures);
    const proposal: VeilProposal = {
      pulls,
      veil,
      at,
      ink: ink.ink,
      from: ink.from,
      parts: ink.parts,
      newInks: ink.newInks,
      newShape: area.newShape,
      newScreen: area.newShape === null ? null : area.screen,
      after,
      softens: 1 - after.edgeContrast / bare.before.edgeContrast,
    };
    this.proposals.set(candidate, proposal);
    return proposal;
  }
}

/** The softest that differ from each other to the eye and in area, as far as there are enough. */
function spread(sorted: readonly Candidate[], count: number): Candidate[] {
  const chosen: Candidate[] = [];
  const take = (apart: number, mostOfArea: number): void => {
    for (const candidate of sorted) {
      if (chosen.length >= count) return;
      if (chosen.filter(({ area }) => area === candidate.area).length >= mostOfArea) continue;
      if (chosen.every((other) => meanDifference(other.lab, candidate.lab) >= apart)) chosen.push(candidate);
    }
  };
  for (const apart of APART_DELTA_E) take(apart, Math.ceil(count * MOST_OF_AREA));
  take(defined(APART_DELTA_E.at(-1)), count);
  return chosen.sort((a, b) => a.edgeContrast - b.edgeContrast);
}
