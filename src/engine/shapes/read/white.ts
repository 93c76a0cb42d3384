import { outlineArea } from '../../geometry/booleans.ts';
import type { PageSize } from '../place/lay-out.ts';
import type { Drawn } from './drawn.ts';
import type { FaultList } from './faults.ts';
import type { Regions } from './regions.ts';
import { say } from '../../words/en/shapes/read.ts';

/** A fill that covers this share of the page is the page; no source, lets the hair of a rounded size go. */
const PAGE_SHARE = 0.995;

/** What white areas over or beside others are taken for: holes in them, ink like any other colour, or not there at all. */
export type WhiteAs = 'paper' | 'ink' | 'nothing';

const SAID: Readonly<Record<WhiteAs, string>> = {
  paper: say.itsWhiteAreasAre,
  ink: say.itsWhiteAreasAreTaken,
  nothing: say.itsWhiteAreasAreLeft,
};

/** Areas in the order they were painted: `ink` lies over `white`, and both over all that came before. */
interface Layer {
  ink: Float64Array[];
  white: Float64Array[];
}

/**
 * What of a drawing is ink. White is paper, as it looks on white paper: it cuts a hole in what lies
 * beneath it and prints nothing where nothing does. A white fill as large as the page is the paper
 * itself. Where nothing else is filled, white is the ink. Each is said in one sentence a file.
 * @param drawn in the order painted
 * @param how the page, null when the file gives none, and what else white may be taken for
 * @throws EngineError 'geometry.…' past the caps
 */
export function inkOf(
  drawn: readonly Drawn[],
  { page, white: as }: { page: PageSize | null; white: WhiteAs },
  regions: Regions,
  faults: FaultList,
): Float64Array[] {
  const seen = page === null ? drawn : drawn.filter((one) => one.white !== true || !regions.covers(one, page, PAGE_SHARE));
  if (seen.length < drawn.length) {
    faults.say('shape.page', say.whiteRectangleAsLarge);
  }
  const white = seen.some((one) => one.white === true);
  if (white && seen.every((one) => one.white === true)) {
    faults.say('shape.all-white', say.allThatIsFilled);
    return regions.union(seen);
  }
  if (white) {
    faults.say('shape.white', SAID[as]);
  }
  const rings = as === 'paper' ? painted(drawn, regions) : regions.union(as === 'ink' ? seen : drawn.filter((one) => one.white !== true));
  if (page !== null && drawn.length > 1 && isWhole(rings, page)) {
    faults.say('shape.sheet', say.fillCoversWholePage);
  }
  return rings;
}

function isWhole(rings: Float64Array[], page: PageSize): boolean {
  return rings.length === 1 && outlineArea({ rings, fillRule: 'nonzero' }) >= page.widthMm * page.heightMm * PAGE_SHARE;
}

/** Folds the runs of one kind in halves, so that many turns between white and ink stay cheap. */
function painted(drawn: readonly Drawn[], regions: Regions): Float64Array[] {
  const runs: Drawn[][] = [];
  let last: Drawn[] = [];
  for (const one of drawn) {
    if (last[0]?.white !== one.white || last.length === 0) runs.push((last = []));
    last.push(one);
  }
  let layers = runs.map((run): Layer => {
    const rings = regions.union(run);
    return run[0]?.white === true ? { ink: [], white: rings } : { ink: rings, white: [] };
  });
  while (layers.length > 1) {
    const next: Layer[] = [];
    for (let i = 0; i < layers.length; i += 2) next.push(over(layers[i], layers[i + 1], regions));
    layers = next;
  }
  return layers[0]?.ink ?? [];
}

function over(below: Layer | undefined, above: Layer | undefined, regions: Regions): Layer {
  if (below === undefined || above === undefined) return below ?? above ?? { ink: [], white: [] };
  return {
    ink: regions.join(regions.minus(below.ink, above.white), above.ink),
    white: regions.join(below.white, above.white),
  };
}
