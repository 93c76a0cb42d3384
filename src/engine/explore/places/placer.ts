import { f64, u32 } from '../../base/at.ts';
import { OFFSET_MM, within } from '../../base/limits.ts';
import type { Random } from '../../base/random.ts';
import { toOffsetGrid } from '../../base/units.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import { type RowSpans, rowSpans } from '../../geometry/row-crossings.ts';
import type { Box } from '../../geometry/types.ts';
import { type SheetOutline, screenOutline, screenRings } from '../../shapes/place/placed.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { unknownScreen } from '../../studio/unknown-screen.ts';
import { DEFAULT_PLACE_MM, type ExploreSettings } from '../types.ts';

/** Rows of the sheet at which a screen's share on it is taken. */
const ROWS = 256;
/** Places tried for a pull before it stays where it lay. */
const MOST_TRIES = 12;
/** Of so many places the one nearest to the aim is taken. */
const AIMED = 4;
/** Rounding of shares. */
const HAIR = 1e-6;

/** What the pulls of one print gather about, mm: a point, a column (x alone), a row (y alone), or nothing. */
export interface Aim {
  xMm?: number;
  yMm?: number;
}

/** A screen as it lies at some turn and no offset. */
interface Turned {
  box: Box;
  spans: RowSpans;
  /** Sum of its spans over all rows, mm. */
  lengthMm: number;
}

/** Finds places on the sheet for whole screens, so that enough of each stays on it. */
export class Placer {
  private readonly studio: Studio;
  private readonly paper: { widthMm: number; heightMm: number };
  private readonly reachMm: number;
  private readonly least: number;
  private readonly gridTenths: number;
  private readonly outlines = new Map<string, SheetOutline>();
  private readonly turned = new Map<string, Turned>();

  /** @param settings places, placeMm, onSheet, offsetSnapMm */
  constructor(studio: Studio, { places, placeMm = DEFAULT_PLACE_MM, onSheet = 1, offsetSnapMm = 0.1 }: PlaceSettings) {
    this.studio = studio;
    this.paper = studio.paper;
    this.reachMm = places === 'near' ? placeMm : Infinity;
    this.least = onSheet;
    this.gridTenths = Math.max(1, Math.round(offsetSnapMm * 10));
  }

  /** What the pulls of a print gather about: one time in four each a point, a column, a row, nothing. */
  aim(random: Random): Aim {
    const kind = random.int(4);
    const part = (length: number): number => (length * (15 + random.int(71))) / 100;
    const xMm = part(this.paper.widthMm);
    const yMm = part(this.paper.heightMm);
    return { ...(kind === 0 || kind === 1 ? { xMm } : {}), ...(kind === 0 || kind === 2 ? { yMm } : {}) };
  }

  /**
   * A pull at a drawn place on the sheet, its turn kept.
   * @param from where it was drawn: a place within reach of it is taken, and no more of it need stay on
   *   the sheet than did there
   * @returns the pull as it is where no place was found
   */
  place(pull: Pull, from: Pull, aim: Aim, random: Random): Pull {
    const turned = this.turnedOf(pull);
    const need = this.needed(from);
    const [across, down] = this.ranges(turned.box, pull);
    const aimed = aim.xMm !== undefined || aim.yMm !== undefined;
    let best: Pull | null = null;
    let nearest = Infinity;
    for (let tries = 0, found = 0; tries < MOST_TRIES && found < (aimed ? AIMED : 1); tries++) {
      const at = { ...pull, dxMm: this.within(across, random), dyMm: this.within(down, random) };
      if (this.shareOn(turned, at) < need - HAIR) continue;
      found++;
      const off = awayFrom(aim, turned.box, at);
      if (off < nearest) [best, nearest] = [at, off];
    }
    return best ?? pull;
  }

  /**
   * A turned pull moved as little as brings it on the sheet, where too much of it came to lie beside.
   * @param from the pull before it was turned
   * @returns null when it does not fit the sheet so turned
   */
  settle(pull: Pull, from: Pull): Pull | null {
    const turned = this.turnedOf(pull);
    const need = this.needed(from);
    if (this.shareOn(turned, pull) >= need - HAIR) return pull;
    const { box } = turned;
    const dxMm = pull.dxMm + backOn(box.xMm + pull.dxMm, box.widthMm, this.paper.widthMm);
    const dyMm = pull.dyMm + backOn(box.yMm + pull.dyMm, box.heightMm, this.paper.heightMm);
    const moved = { ...pull, dxMm: toOffsetGrid(dxMm), dyMm: toOffsetGrid(dyMm) };
    return this.shareOn(turned, moved) >= need - HAIR ? moved : null;
  }

  /** Whether a pull could lie elsewhere than it does: some other place keeps enough of it on the sheet. */
  hasRoom(pull: Pull): boolean {
    const [across, down] = this.ranges(this.turnedOf(pull).box, pull);
    return across.high - across.low >= this.gridTenths || down.high - down.low >= this.gridTenths;
  }

  /** Share of what a screen prints that lies on the sheet, 0–1; 1 for a screen that prints nothing. */
  shareOf(pull: Pull): number {
    return this.shareOn(this.turnedOf(pull), pull);
  }

  private needed(from: Pull): number {
    return Math.min(this.least, this.shareOf(from));
  }

  /** From where to where offsets may go, tenths of a mm. */
  private ranges({ xMm, yMm, widthMm, heightMm }: Box, { dxMm, dyMm }: Pull): [Span, Span] {
    const { paper, reachMm, least } = this;
    const range = (from: number, length: number, sheet: number, at: number): Span => {
      const beyond = (1 - least) * Math.min(length, sheet);
      const low = Math.max(Math.min(0, sheet - length) - beyond - from, at - reachMm);
      const high = Math.min(Math.max(0, sheet - length) + beyond - from, at + reachMm);
      return { low: Math.ceil(low * 10 - HAIR), high: Math.floor(high * 10 + HAIR) };
    };
    return [range(xMm, widthMm, paper.widthMm, dxMm), range(yMm, heightMm, paper.heightMm, dyMm)];
  }

  /** A step of the grid within a span, mm; its lower end where it holds none. */
  private within({ low, high }: Span, random: Random): number {
    const first = Math.ceil(low / this.gridTenths);
    const steps = Math.floor(high / this.gridTenths) - first;
    return toOffsetGrid(((first + (steps > 0 ? random.int(steps + 1) : 0)) * this.gridTenths) / 10);
  }

  private turnedOf({ screen: id, turnDeg }: Pull): Turned {
    const turn = ((turnDeg % 360) + 360) % 360;
    const key = JSON.stringify([id, turn]);
    let found = this.turned.get(key);
    if (found === undefined) {
      const outline = screenOutline(this.outlineOf(id), { dxMm: 0, dyMm: 0, turnDeg: turn }, this.paper);
      const spans = rowSpans(outline, { rowHeightMm: this.paper.heightMm / ROWS });
      found = { box: shapeBounds(outline.rings), spans, lengthMm: lengthWithin(spans, -Infinity, Infinity, () => true) };
      this.turned.set(key, found);
    }
    return found;
  }

  private outlineOf(id: string): SheetOutline {
    let outline = this.outlines.get(id);
    if (outline === undefined) {
      const screen = this.studio.screens.find((each) => each.id === id);
      if (screen === undefined) throw unknownScreen({ screen: id }, 0);
      outline = screenRings(screen, this.studio.shapes);
      this.outlines.set(id, outline);
    }
    return outline;
  }

  private shareOn({ box, spans, lengthMm }: Turned, { dxMm, dyMm }: Pull): number {
    if (!within(OFFSET_MM, dxMm) || !within(OFFSET_MM, dyMm)) return 0;
    const { widthMm, heightMm } = this.paper;
    const inside =
      box.xMm + dxMm >= -HAIR &&
      box.yMm + dyMm >= -HAIR &&
      box.xMm + box.widthMm + dxMm <= widthMm + HAIR &&
      box.yMm + box.heightMm + dyMm <= heightMm + HAIR;
    if (inside || lengthMm <= 0) return 1;
    const rowMm = heightMm / ROWS;
    const onRow = (row: number): boolean => {
      const y = (row + 0.5) * rowMm + dyMm;
      return y >= 0 && y < heightMm;
    };
    return lengthWithin(spans, -dxMm, widthMm - dxMm, onRow) / lengthMm;
  }
}

/** The settings of a wall that say where whole screens may lie. */
export type PlaceSettings = Pick<ExploreSettings, 'places' | 'placeMm' | 'onSheet' | 'offsetSnapMm'>;

interface Span {
  low: number;
  high: number;
}

/** Length of spans between two places, summed over some rows, mm. */
function lengthWithin({ firstRow, rows, starts, xMm }: RowSpans, leftMm: number, rightMm: number, onRow: (row: number) => boolean): number {
  let sum = 0;
  for (let row = 0; row < rows; row++) {
    if (!onRow(firstRow + row)) continue;
    for (let at = u32(starts, row); at < u32(starts, row + 1); at += 2) {
      sum += Math.max(0, Math.min(rightMm, f64(xMm, at + 1)) - Math.max(leftMm, f64(xMm, at)));
    }
  }
  return sum;
}

function awayFrom({ xMm, yMm }: Aim, box: Box, { dxMm, dyMm }: Pull): number {
  const dx = xMm === undefined ? 0 : box.xMm + box.widthMm / 2 + dxMm - xMm;
  const dy = yMm === undefined ? 0 : box.yMm + box.heightMm / 2 + dyMm - yMm;
  return dx * dx + dy * dy;
}

/** How far a length must move to lie on the sheet, mm, on tenths inwards; where it is longer, to hang over on both sides alike. */
function backOn(from: number, length: number, sheet: number): number {
  if (length > sheet) return toOffsetGrid((sheet - length) / 2 - from);
  if (from < 0) return Math.ceil(-from * 10 - HAIR) / 10;
  if (from + length > sheet) return -Math.ceil((from + length - sheet) * 10 - HAIR) / 10;
  return 0;
}
