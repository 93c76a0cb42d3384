import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { MOST_PULLS } from '../../base/limits.ts';
import { roundTo } from '../../base/units.ts';
import type { LaidFilm } from '../../ink/film/laid-film.ts';
import { stackLayers } from '../../stack/layers.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { PlacedSpans, Pull, RowGrid } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/onward.ts';
import { meanDifference } from '../look/points.ts';
import { Ground, groundOf, type OnwardMeasures, Under } from './ground.ts';

/** What the prints that go on are ranked by: most change, least or most contrast of edges, nearest to a chosen print. */
export type OnwardBy = 'change' | 'softer' | 'sharper' | 'nearer';

/** What is asked of `onwardSteps`. */
export interface OnwardAsked {
  /** Ids of screens and inks that are there; each screen is tried in each ink. */
  screens: readonly string[];
  inks: readonly string[];
  /** Further pulls at most; every number up to it is answered. */
  most: number;
  by: OnwardBy;
  /** The print that is aimed at; needed by 'nearer'. */
  towards?: readonly Pull[] | undefined;
  /** Each screen is tried where it was drawn, and so far beside, above and below that, mm; 0 when left out. */
  movedMm?: number | undefined;
  /** Prints that are given for each number of pulls; 12 when left out. */
  count?: number | undefined;
  /** So many prints of a number of pulls are gone on from; 6 when left out. */
  width?: number | undefined;
  /** Rows of the map that all is measured on; 256 when left out. */
  rows?: number | undefined;
}

/** A print that begins with what is down and goes on. */
export interface OnwardPrint extends OnwardMeasures {
  /** The further pulls, first down first. */
  more: Pull[];
}

/** What was found. */
export interface OnwardResult {
  /** The sheet as it stands. */
  now: OnwardMeasures;
  /** By number of further pulls less 1: prints that differ to the eye, the best by what is asked first. */
  found: OnwardPrint[][];
  /** How many prints were looked at. */
  tried: number;
  /** Whether every print of so many pulls was looked at, by number of further pulls less 1. */
  all: boolean[];
}

/** How a search stands. */
export interface OnwardStep {
  share: number;
  best(): OnwardResult;
  /** True when all prints of one number of pulls were looked at. */
  whole: boolean;
}

/** Prints that differ by less in the mean look alike, ΔE00. */
const APART = [3, 1.5, 0.5];
/** At most so many of the prints given begin with one screen, while others have some. */
const MOST_OF_SCREEN = 0.25;
/** Prints of one number of pulls that are kept to choose from. */
const KEPT = 90;

/** One screen at one place, and the pull that it is in each ink. */
interface Place {
  placed: PlacedSpans;
  tries: { pull: Pull; film: LaidFilm }[];
}

interface Candidate extends OnwardPrint {
  score: number;
  points: Float64Array;
}

function checkAsked(down: number, { screens, inks, most, by, towards }: OnwardAsked): void {
  if (!Number.isInteger(most) || most < 1) {
    throw new EngineError('onward.most', say.numberOfFurtherPulls(most));
  }
  if (down + most > MOST_PULLS) {
    throw new EngineError(
      'onward.full',
      say.pullsAreDownAnd(down, MOST_PULLS, down >= MOST_PULLS ? say.nothingCanFollow : say.askForMoreAt(MOST_PULLS - down)),
    );
  }
  if (screens.length === 0) throw new EngineError('onward.screens', say.noScreenIsAt);
  if (inks.length === 0) throw new EngineError('onward.inks', say.noInkIsAt);
  if (by === 'nearer' && towards === undefined) throw new EngineError('onward.towards', say.choosePrintThatIt);
}

/**
 * What to pull next on a sheet: every screen that is there in every ink, one more pull, two, up to the most;
 * from the second pull on it goes on from the best prints of one less.
 * @param pulls what is down, as it was really pulled, first down first; none for bare paper
 * @param spans what is known of the studio's screens already
 * @yields how far it is, a few milliseconds apart
 * @throws EngineError 'onward.most', 'onward.full', 'onward.screens', 'onward.inks', 'onward.towards', and
 *   what stackLayers and SpanCache throw
 */
export function* onwardSteps(
  pulls: readonly Pull[],
  studio: Studio,
  asked: OnwardAsked,
  spans = new SpanCache(studio),
): Generator<OnwardStep, OnwardResult> {
  checkAsked(pulls.length, asked);
  const { most, width = 6 } = asked;
  const search = new Search(pulls, { studio, spans }, asked);
  const each = search.places.reduce((sum, { tries }) => sum + tries.length, 0);
  const total = each * (1 + width * (most - 1));
  let grounds: { ground: Ground; more: Pull[] }[] = [{ ground: search.ground, more: [] }];
  let whole = true;
  for (let depth = 0; depth < most; depth++) {
    for (const { ground, more } of grounds) {
      for (const place of search.places) {
        search.look(ground, more, place);
        yield { share: Math.min(0.99, search.tried / total), best: () => search.best(), whole: false };
      }
    }
    search.all.push(whole);
    yield { share: Math.min(0.99, search.tried / total), best: () => search.best(), whole: true };
    const next = search.chosen(depth, width);
    whole &&= next.length >= search.kept(depth);
    if (depth + 1 < most) grounds = next.map(({ more }) => ({ ground: search.groundAfter(more), more }));
  }
  return search.best();
}

class Search {
  readonly places: readonly Place[];
  readonly ground: Ground;
  readonly all: boolean[] = [];
  tried = 0;
  private readonly studio: Studio;
  private readonly spans: SpanCache;
  private readonly grid: RowGrid;
  private readonly asked: OnwardAsked;
  private readonly byDepth: Candidate[][] = [];
  private readonly seen: number[] = [];
  private readonly now: OnwardMeasures;

  constructor(pulls: readonly Pull[], { studio, spans }: { studio: Studio; spans: SpanCache }, asked: OnwardAsked) {
    const { widthMm, heightMm } = studio.paper;
    this.studio = studio;
    this.asked = asked;
    this.spans = spans;
    this.grid = { widthMm, heightMm, rows: asked.rows ?? 256 };
    this.ground = groundOf(pulls, studio, { spans: this.spans, grid: this.grid, towards: asked.towards });
    this.now = this.ground.measures;
    this.places = this.placesOf();
  }

  private placesOf(): Place[] {
    const { screens, inks, movedMm = 0 } = this.asked;
    const beside =
      movedMm > 0
        ? [
            [0, 0],
            [movedMm, 0],
            [-movedMm, 0],
            [0, movedMm],
            [0, -movedMm],
          ]
        : [[0, 0]];
    return screens.flatMap((screen) =>
      beside.map(([dxMm = 0, dyMm = 0]): Place => {
        const at = { screen, dxMm, dyMm, turnDeg: 0, strokes: 1 };
        const pulls = inks.map((ink): Pull => ({ id: `${screen} ${ink} ${dxMm} ${dyMm}`, ink, ...at }));
        const [first] = pulls;
        const layers = stackLayers({ pulls }, this.studio);
        return {
          placed: entryAt(this.spans.place({ pulls: first === undefined ? [] : [first] }, this.grid), 0),
          tries: pulls.map((pull, i) => ({ pull, film: entryAt(layers, i).laid })),
        };
      }),
    );
  }

  /** Looks at one more pull through a screen, in every ink. */
  look(ground: Ground, more: readonly Pull[], { placed, tries }: Place): void {
    const under = new Under(ground, placed);
    this.tried += tries.length;
    if (under.nothing) return;
    const depth = more.length;
    const list = (this.byDepth[depth] ??= []);
    this.seen[depth] = (this.seen[depth] ?? 0) + tries.length;
    for (const { pull, film } of tries) {
      under.lay(film);
      const { measures } = under;
      const score = this.scoreOf(measures);
      if (list.length >= KEPT && score >= entryAt(list, list.length - 1).score) continue;
      list.push({ ...measures, more: [...more, pull], score, points: under.pointLab });
      // A stable sort, so that equals stay in the order of screens and inks.
      list.sort((a, b) => a.score - b.score);
      list.length = Math.min(list.length, KEPT);
    }
  }

  /** Least first. */
  private scoreOf({ change, edgeContrast, distance }: OnwardMeasures): number {
    const score = { change: -change, softer: edgeContrast, sharper: -edgeContrast, nearer: distance ?? 0 }[this.asked.by];
    return roundTo(score, 9);
  }

  /** How many prints of so many pulls were looked at. */
  kept(depth: number): number {
    return this.seen[depth] ?? 0;
  }

  /** The best that differ to the eye and, as far as there are enough, in their first further screen. */
  chosen(depth: number, count: number): Candidate[] {
    const chosen: Candidate[] = [];
    const take = (apart: number, mostOfScreen: number): void => {
      for (const candidate of this.byDepth[depth] ?? []) {
        if (chosen.length >= count) return;
        const [first] = candidate.more;
        if (chosen.filter(({ more }) => more[0]?.screen === first?.screen).length >= mostOfScreen) continue;
        if (chosen.every(({ points }) => meanDifference(points, candidate.points) >= apart)) chosen.push(candidate);
      }
    };
    for (const apart of APART) take(apart, Math.ceil(count * MOST_OF_SCREEN));
    for (const apart of APART) take(apart, count);
    return chosen.sort((a, b) => a.score - b.score);
  }

  /** The sheet after further pulls, painted over what is known already. */
  groundAfter(more: readonly Pull[]): Ground {
    return more.reduce((ground, pull) => new Under(ground, this.placedOf(pull)).with(this.filmOf(pull)), this.ground);
  }

  private placedOf(pull: Pull): PlacedSpans {
    return entryAt(this.spans.place({ pulls: [pull] }, this.grid), 0);
  }

  private filmOf(pull: Pull): LaidFilm {
    return entryAt(stackLayers({ pulls: [pull] }, this.studio), 0).laid;
  }

  best(): OnwardResult {
    const { count = 12 } = this.asked;
    const found = this.byDepth.map((_, depth) => this.chosen(depth, count).map(({ score: _score, points: _points, ...print }) => print));
    return { now: this.now, found, tried: this.tried, all: [...this.all] };
  }
}
