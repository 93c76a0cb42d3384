import { entryAt, f64, num } from '../../base/at.ts';
import { cutText } from '../../base/bounds.ts';
import { EngineError } from '../../base/error.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/mix.ts';
import { fixed } from '../../words/language.ts';
import { CARD_WHITE } from '../characterise/card.ts';
import { filmFactor } from '../film/film-factor.ts';
import type { Mesh } from '../film/mesh.ts';
import type { Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';
import type { Fitted } from './fit-shares.ts';
import { searchMixes } from './match-search.ts';
import { isColour, MixColour } from './mix-colour.ts';
import { weighed } from './weigh.ts';

/** A mix further from its target than this is said to miss it, ΔE00. */
const MATCH_DELTA_E = 3;

// Answers closer to each other than this in ΔE00 are told apart by how many inks they take.
const SAME_DELTA_E = 0.1;
const MOST_INKS = 4;
const MOST_STOCKS = 60;

/** What a mix is matched for. */
export interface MatchOptions {
  /** What it is printed over, 36 bands: the paper, or another ink on it; the invented card's white by default. */
  ground?: ArrayLike<number>;
  /** Of the film, in strokes (filmThickness of strokes and stroke gain, times trappingOn over an ink); 1 by default. */
  thickness?: number;
  /** That ground and print are seen through; left out, there is none. */
  surface?: Surface | undefined;
  /** Of the screen it goes through; by default that on which each ink's curves were found. */
  mesh?: Mesh;
  /** At most so many stock inks beside the base, 1–4; 4 by default. */
  maxInks?: number;
  /** At most so many answers; 6 by default. */
  answers?: number;
  /** How much is to be mixed, g; 100 by default. */
  grams?: number;
  /** What the balance reads to, g; 0.1 by default. */
  balanceG?: number;
}

/** One stock ink in an answer. */
interface MatchPart {
  ink: Ink;
  /** By volume, 0–1. */
  share: number;
  /** To weigh, a multiple of what the balance reads to, above 0. */
  grams: number;
}

/** A mix that comes near the target. */
export interface MatchAnswer {
  /** Base first if there is any, then the most first. */
  parts: MatchPart[];
  /** How many stock inks beside the base. */
  inks: number;
  /** ΔE00 from the target as weighed. */
  deltaE: number;
  /** ΔE00 of the same inks if the balance were perfect. */
  exactDeltaE: number;
  /** What it shows over the ground, D50/2°, as weighed, and its curve there. */
  lab: Lab;
  reflectance: Float64Array;
}

/** What was found for a target. */
export interface MatchResult {
  /** Nearest first by steps of ΔE 0.1, then fewest stock inks; at least one. */
  answers: MatchAnswer[];
  /** Whether some answer is within MATCH_DELTA_E. */
  matched: boolean;
  /** When none is: a sentence that says so and how near the nearest comes; else ''. */
  reason: string;
}

/**
 * Mixes of stock inks that come nearest a colour.
 * @param target what the print shall show, D50/2°
 * @param stocks inks to mix; those with role 'base' do not count towards the four
 * @returns several answers, none of which only adds an ink to another for nothing
 * @throws EngineError 'match.target', 'match.no-stocks', 'match.option', 'ink.bad-mesh'
 * Every choice of up to three inks is fitted, and the best are tried with a fourth.
 */
export function matchInk(target: Readonly<Lab>, stocks: readonly Ink[], options: MatchOptions = {}): MatchResult {
  const steps = matchInkSteps(target, stocks, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * matchInk in steps of a few milliseconds, so that whoever runs it can stop between two.
 * @yields the share of the work that is done, 0–1
 */
export function* matchInkSteps(target: Readonly<Lab>, stocks: readonly Ink[], options: MatchOptions = {}): Generator<number, MatchResult> {
  check(target, stocks, options);
  const { thickness = 1, mesh, grams = 100, balanceG = 0.1 } = options;
  const printed = stocks.map((ink) => {
    const factor = thickness * filmFactor(ink, mesh);
    return { k: Float64Array.from(ink.kx, (k) => k * factor), s: Float64Array.from(ink.sx, (s) => s * factor) };
  });
  const colour = new MixColour(printed, options.ground ?? CARD_WHITE, target, options.surface);
  const isBase = stocks.map((ink) => ink.role === 'base');
  const found = yield* searchMixes(colour, isBase, Math.min(MOST_INKS, options.maxInks ?? MOST_INKS));

  const density = stocks.map((ink) => ink.densityGPerCm3);
  const answers = found.map((fitted) => {
    const { amounts, shares, inks, deltaE } = weighed(colour, fitted, { density, grams, balanceG });
    return { inks, shares, amounts, deltaE, exactDeltaE: fitted.deltaE };
  });
  const countOf = (inks: readonly number[]): number => inks.filter((ink) => !isBase[ink]).length;
  answers.sort(
    (a, b) =>
      Math.round(a.deltaE / SAME_DELTA_E) - Math.round(b.deltaE / SAME_DELTA_E) || countOf(a.inks) - countOf(b.inks) || a.deltaE - b.deltaE,
  );
  const chosen = distinct(answers).slice(0, options.answers ?? 6);
  const result = chosen.map(({ inks, shares, amounts, deltaE, exactDeltaE }): MatchAnswer => {
    const reflectance = colour.reflectance(inks, shares);
    const parts = inks
      .map((ink, i) => ({ ink: entryAt(stocks, ink), share: f64(shares, i), grams: num(amounts, i) }))
      .sort((a, b) => Number(b.ink.role === 'base') - Number(a.ink.role === 'base') || b.grams - a.grams);
    return { parts, inks: countOf(inks), deltaE, exactDeltaE, lab: labD50(reflectance), reflectance };
  });
  const nearest = Math.min(...result.map((answer) => answer.deltaE));
  const matched = nearest <= MATCH_DELTA_E;
  return { answers: result, matched, reason: matched ? '' : missedReason(nearest) };
}

/** Leaves out answers that have all inks of a better one and more, or the same inks. */
function distinct<T extends Pick<Fitted, 'inks' | 'deltaE'>>(answers: readonly T[]): T[] {
  const kept: T[] = [];
  for (const answer of answers) {
    if (!kept.some((other) => other.inks.every((ink) => answer.inks.includes(ink)))) kept.push(answer);
  }
  return kept;
}

function missedReason(nearest: number): string {
  return say.noMixOfThese(MATCH_DELTA_E) + say.nearestIsDeltaEAway(fixed(nearest, 1));
}

function check(target: Readonly<Lab>, stocks: readonly Ink[], options: MatchOptions): void {
  const { ground, thickness = 1, maxInks = 1, answers = 1, grams = 1, balanceG = 0.1 } = options;
  if (!Array.isArray(target) || !isColour(target)) {
    throw new EngineError('match.target', say.targetNeedsLFrom(cutText(String(target ?? 'nothing').replaceAll(',', ', '))));
  }
  if (!Array.isArray(stocks) || stocks.length === 0 || stocks.length > MOST_STOCKS) {
    throw new EngineError('match.no-stocks', say.matchNeeds1To(MOST_STOCKS, stocks?.length ?? say.none));
  }
  const short = stocks.find((ink: Ink | null) => ink?.kx?.length !== BANDS || ink?.sx?.length !== BANDS);
  if (short !== undefined) {
    throw new EngineError('match.no-stocks', say.inkHasBandsAre(short?.name, short?.kx?.length ?? say.no, BANDS));
  }
  const wrong = (what: string, found: unknown, allowed: string): never => {
    throw new EngineError('match.option', say.ofMatchIsGive(what, found, allowed));
  };
  if (ground !== undefined && (ground.length !== BANDS || !Array.from(ground).every((r) => r >= 0 && r <= 1.2))) {
    wrong('ground', say.values(ground.length), say.reflectancesFrom0To(BANDS));
  }
  if (!(thickness > 0 && thickness < 1000)) wrong(say.filmThickness, thickness, say.moreThan0Strokes);
  if (!(Number.isInteger(maxInks) && maxInks >= 1 && maxInks <= MOST_INKS)) wrong(say.numberOfInks, maxInks, say.n1To(MOST_INKS));
  if (!(Number.isInteger(answers) && answers >= 1)) wrong(say.numberOfAnswers, answers, say.n1OrMore);
  if (!(balanceG > 0 && balanceG < Infinity)) wrong('balance', balanceG, say.moreThan0G);
  if (!(grams >= balanceG && grams < 1e7)) wrong('amount', grams, say.atLeastWhatBalance);
}
