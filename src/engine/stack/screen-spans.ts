import { entryAt } from '../base/at.ts';
import { rowSpans } from '../geometry/row-crossings.ts';
import type { RowSpans } from '../geometry/row-crossings.ts';
import { SpanRoom } from '../geometry/span-room.ts';
import type { Box } from '../geometry/types.ts';
import { screenOutline, screenRings } from '../shapes/place/placed.ts';
import type { SheetOutline } from '../shapes/place/placed.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { Studio } from '../studio/studio.ts';
import { unknownScreen } from '../studio/unknown-screen.ts';
import { edgesWith } from './map-limits.ts';
import { checkOffset } from './placement.ts';
import type { PlacedSpans, Pull, RowGrid, Stack } from './types.ts';

/** When the kept spans hold more values than this (about 6 MB), all are dropped and begun anew; turned outlines the same. */
const MAX_KEPT_VALUES = 500_000;
/** The same of spans where most of those asked for were new: of screens that lie anywhere few come again. */
const MAX_KEPT_WHERE_NEW = 100_000;
/** Lays downwards are told apart to this many parts of a millimetre. */
const PHASE_STEPS_PER_MM = 1e9;

interface TurnedScreen {
  screen: string;
  turnDeg: number;
  outline: SheetOutline;
  number: Screen['number'] | undefined;
  /** By row height, then by phase in billionths of a mm. */
  spans: Map<number, Map<number, RowSpans>>;
  /** At one row height, by how far down in tenths of a mm: a whole number finds what a fraction finds slowly. */
  rowHeightMm: number;
  byTenths: Map<number, Omit<PlacedSpans, 'dxMm'>>;
}

/**
 * The placed screens of a stack as row spans, scanned anew.
 * @throws EngineError 'stack.unknown-screen', 'stack.bad-offset', 'screen.unknown-shape', 'stack.too-many-edges'
 */
export function placedSpans(stack: Stack, studio: Studio, grid: RowGrid): PlacedSpans[] {
  return new SpanCache(studio).place(stack, grid);
}

/**
 * Keeps the spans of a studio's screens, by turn and by the part of a row that an offset moves them:
 * dx is only added to every x, and whole rows of dy only to the row numbers.
 */
export class SpanCache {
  private readonly shapes: readonly Shape[];
  private readonly screenList: readonly Screen[];
  private readonly paper: { widthMm: number; heightMm: number };
  private readonly screens: ReadonlyMap<string, Screen>;
  private readonly atRest = new Map<string, SheetOutline>();
  private readonly turned = new Map<string, Map<number, TurnedScreen>>();
  /** By pull the screen that was placed latest. */
  private latest: TurnedScreen[] = [];
  private room = new SpanRoom();
  private keptOutlines = 0;
  private keptSpans = 0;
  private maxSpans = MAX_KEPT_VALUES;
  /** How many lays were known, and how many were scanned, since spans were dropped. */
  private known = 0;
  private scanned = 0;

  constructor(studio: Studio) {
    this.shapes = studio.shapes;
    this.screenList = studio.screens;
    this.paper = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm };
    this.screens = new Map(studio.screens.map((screen) => [screen.id, screen]));
  }

  /** Whether this cache holds for a studio: the same shapes, screens and sheet; inks may differ. */
  serves(studio: Studio): boolean {
    return (
      studio.shapes === this.shapes &&
      studio.screens === this.screenList &&
      studio.paper.widthMm === this.paper.widthMm &&
      studio.paper.heightMm === this.paper.heightMm
    );
  }

  /**
   * The placed screens of a stack on a grid that is the whole sheet.
   * @param out receives one entry a pull; its entries are used again, so that nothing is allocated
   *   for screens, turns and phases that were seen before
   * @returns out
   * @throws EngineError 'stack.unknown-screen', 'stack.bad-offset', 'screen.unknown-shape', 'stack.too-many-edges'
   */
  place(stack: Stack, grid: RowGrid, out: PlacedSpans[] = []): PlacedSpans[] {
    const rowHeightMm = grid.heightMm / grid.rows;
    const { pulls } = stack;
    let edges = 0;
    for (let i = 0; i < pulls.length; i++) {
      const pull = entryAt(pulls, i);
      const screen = this.turnedScreen(pull, i);
      const { spans, rowShift } = this.laid(screen, rowHeightMm, pull.dyMm);
      edges = edgesWith(edges, spans, i, screen.number);
      const entry = out[i];
      if (entry === undefined) {
        out[i] = { spans, dxMm: pull.dxMm, rowShift };
      } else {
        entry.spans = spans;
        entry.dxMm = pull.dxMm;
        entry.rowShift = rowShift;
      }
    }
    if (out.length !== pulls.length) out.length = pulls.length;
    return out;
  }

  /**
   * The placed screens of a stack on a grid that is a part of the sheet; only its rows are scanned.
   * @param box the part, mm from the sheet's top left; the grid's x and rows begin at its corner
   */
  placeInBox(stack: Stack, box: Box, rows: number): PlacedSpans[] {
    const rowHeightMm = box.heightMm / rows;
    let edges = 0;
    return stack.pulls.map((pull, i) => {
      const lattice = { rowHeightMm, topMm: box.yMm - pull.dyMm, firstRow: 0, endRow: rows };
      const { outline, number } = this.turnedScreen(pull, i);
      const spans = rowSpans(outline, lattice);
      edges = edgesWith(edges, spans, i, number);
      return { spans, dxMm: pull.dxMm - box.xMm, rowShift: 0 };
    });
  }

  private turnedScreen(pull: Pull, index: number): TurnedScreen {
    checkOffset(pull, index);
    const turnDeg = pull.turnDeg % 360;
    const latest = this.latest[index];
    if (latest !== undefined && latest.screen === pull.screen && latest.turnDeg === turnDeg) return latest;
    let turns = this.turned.get(pull.screen);
    if (turns === undefined) this.turned.set(pull.screen, (turns = new Map()));
    let found = turns.get(turnDeg);
    if (found === undefined) {
      const atRest = this.outlineAtRest(pull, index);
      const lay = { dxMm: 0, dyMm: 0, turnDeg };
      const outline = turnDeg === 0 ? atRest : screenOutline(atRest, lay, this.paper);
      const number = this.screens.get(pull.screen)?.number;
      found = { screen: pull.screen, turnDeg, outline, number, spans: new Map(), rowHeightMm: 0, byTenths: new Map() };
      turns.set(turnDeg, found);
      if (turnDeg !== 0) this.keepOutline(outline.rings.reduce((sum, ring) => sum + ring.length, 0));
    }
    this.latest[index] = found;
    return found;
  }

  private laid(screen: TurnedScreen, rowHeightMm: number, dyMm: number): Omit<PlacedSpans, 'dxMm'> {
    const tenths = Math.round(dyMm * 10);
    if (screen.rowHeightMm !== rowHeightMm) {
      screen.rowHeightMm = rowHeightMm;
      screen.byTenths.clear();
    }
    const known = tenths / 10 === dyMm ? screen.byTenths.get(tenths) : undefined;
    if (known !== undefined) {
      this.known++;
      return known;
    }
    const rowShift = Math.floor(dyMm / rowHeightMm);
    const phase = Math.round((dyMm - rowShift * rowHeightMm) * PHASE_STEPS_PER_MM);
    const laid = { spans: this.phasedSpans(screen, rowHeightMm, phase), rowShift };
    if (tenths / 10 === dyMm) screen.byTenths.set(tenths, laid);
    return laid;
  }

  private outlineAtRest(pull: Pull, index: number): SheetOutline {
    let outline = this.atRest.get(pull.screen);
    if (outline === undefined) {
      const screen = this.screens.get(pull.screen);
      if (screen === undefined) throw unknownScreen(pull, index);
      outline = screenRings(screen, this.shapes);
      this.atRest.set(pull.screen, outline);
    }
    return outline;
  }

  private phasedSpans(screen: TurnedScreen, rowHeightMm: number, phase: number): RowSpans {
    let phases = screen.spans.get(rowHeightMm);
    if (phases === undefined) screen.spans.set(rowHeightMm, (phases = new Map()));
    let spans = phases.get(phase);
    if (spans === undefined) {
      spans = rowSpans(screen.outline, { rowHeightMm, topMm: -phase / PHASE_STEPS_PER_MM }, this.room);
      phases.set(phase, spans);
      this.keepSpans(spans.xMm.length + spans.starts.length);
    } else this.known++;
    return spans;
  }

  /** Counts values that were kept; above the most, all are dropped, and callers go on with those they hold. */
  private keepOutline(values: number): void {
    this.keptOutlines += values;
    if (this.keptOutlines <= MAX_KEPT_VALUES) return;
    this.turned.clear();
    this.keptOutlines = 0;
    this.dropSpans();
  }

  /** The same of spans; outlines stay, as to turn them takes longer than to scan them. */
  private keepSpans(values: number): void {
    this.scanned++;
    this.keptSpans += values;
    if (this.keptSpans > this.maxSpans) this.dropSpans();
  }

  private dropSpans(): void {
    for (const turns of this.turned.values())
      for (const { spans, byTenths } of turns.values()) {
        spans.clear();
        byTenths.clear();
      }
    this.latest = [];
    this.room = new SpanRoom();
    this.maxSpans = this.known < this.scanned ? MAX_KEPT_WHERE_NEW : MAX_KEPT_VALUES;
    this.keptSpans = this.known = this.scanned = 0;
  }
}
