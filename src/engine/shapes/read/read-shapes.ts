import { defined } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import { ringArea, shapeBounds } from '../../geometry/rings.ts';
import type { FillRule } from '../../geometry/types.ts';
import type { PageSize } from '../place/lay-out.ts';
import { Collector, type Context } from './collect.ts';
import { forEachNode, readStyles } from './css.ts';
import { boxClip, type Drawn } from './drawn.ts';
import { FaultList, FileFault, quote } from './faults.ts';
import { EVERYWHERE } from './left-out.ts';
import { isOnPaper, MM_PER_PX } from './lengths.ts';
import { MAX_POINTS, MAX_REACH_MM, MAX_TEXT, MIN_SIDE_MM } from './limits.ts';
import { inheritLook, isZero, PLAIN_LOOK } from './look.ts';
import { type Page, pageOf } from './page.ts';
import { groupsOf, type Part, type Parts, partsOf, type ShapeOf } from './parts.ts';
import { Regions, toleranceFor } from './regions.ts';
import { inkOf, type WhiteAs } from './white.ts';
import { parseTree } from './xml-tree.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** A shape as read from a file. */
export interface ReadShape {
  /** The file's name without its ending. */
  name: string;
  /** Closed outlines that never overlap, mm from the page's top left, y down; holes run the other way. */
  rings: Float64Array[];
  fillRule: FillRule;
  /** Extent of the outlines, mm. */
  widthMm: number;
  heightMm: number;
  /** Size of the page it was drawn on, mm; null when the file gives none. */
  page: PageSize | null;
  /** Whether the file gives its size in a unit of length, not in px or bare numbers: then mm are those it means. */
  sized: boolean;
}

export interface ReadResult {
  /** One shape, or one a part where that was asked; none when the file cannot be used. */
  shapes: ReadShape[];
  /** What the drawing could become apart. */
  parts: Parts;
  /** What was left out and why, a sentence each; one when the file cannot be used. */
  problems: Problem[];
}

/** Cut off at the edge of the page without a word, share of the area. */
const UNSAID_CUT = 0.001;

/** How what can be taken in several ways is taken. */
export interface Reading {
  /** White areas beside others; paper when left out. */
  white?: WhiteAs;
  /** What becomes a shape; the whole drawing when left out. */
  each?: ShapeOf;
  /** Whether fades and patterns fill their outlines, as they do when this is left out. */
  fades?: boolean;
}

/**
 * Reads an SVG file: all that is painted on its page, strokes by what their pen covers. Any paint that
 * would be seen fills alike, half-transparent ones too, since a stencil only knows open and shut; white
 * is paper (`inkOf`).
 * Curves flatten to `FLATTEN_TOLERANCE_MM`, small drawings finer. Nothing outside the text is fetched.
 * @param text the whole file
 * @param fileName for the names of the shapes and the sentences
 * @returns never throws; faults come back as sentences
 * Source: SVG 1.1 (second edition), with `auto` radii, plain href, paint order and CSS transforms of SVG 2.
 */
export function readShapes(text: string, fileName: string, reading: Reading = {}): ReadResult {
  const file = quote(String(fileName ?? 'file'), 80) || 'file';
  const faults = new FaultList(file);
  try {
    checkText(text, faults);
    return { ...readDrawing(text, { name: nameOf(file), ...reading }, faults), problems: faults.all() };
  } catch (error) {
    const fault = faultOf(error, faults);
    return { shapes: [], parts: NO_PARTS, problems: [{ code: fault.code, message: fault.message, where: fault.where }] };
  }
}

/** A reading, and what its shapes are called. */
type Wanted = Reading & { name: string };

const NO_PARTS: Parts = { groups: [], colours: [] };

/** What the geometry refuses, as it concerns a file. */
const REFUSED: Readonly<Record<string, readonly [code: string, rest: string]>> = {
  'geometry.too-far': ['shape.size', say.itsOutlinesReachMore(MAX_REACH_MM / 1000)],
  'geometry.too-many-points': ['shape.too-many', say.itsOutlinesHaveMoreThan(MAX_POINTS)],
  'geometry.too-much-work': [
    'shape.too-many',
    say.itsOutlinesHaveToo,
  ],
};

function faultOf(error: unknown, faults: FaultList): FileFault {
  if (error instanceof FileFault) return error;
  const refused = error instanceof EngineError ? REFUSED[error.code] : undefined;
  if (refused !== undefined) return faults.refuse(...refused);
  return faults.refuse('shape.unreadable', say.fileCannotBeRead(quote(String(error), 60)));
}

function nameOf(file: string): string {
  const base = defined(file.split(/[/\\]/u).at(-1));
  return base.replace(/\.[^.]*$/u, '') || base;
}

function checkText(text: string, faults: FaultList): void {
  if (typeof text !== 'string') throw faults.refuse('shape.binary', say.fileIsNotText);
  if (text.length > MAX_TEXT) {
    throw faults.refuse('shape.too-large', say.fileHasMillionCharacters(Math.round(text.length / 1e6), MAX_TEXT / 1e6));
  }
  const start = text.slice(0, 1000).replace(/^\uFEFF/u, '').trimStart();
  if (start === '' && text.trim() === '') throw faults.refuse('shape.empty', say.fileIsEmptyChoose);
  if (text.includes('\0') || (start !== '' && !start.startsWith('<'))) {
    throw faults.refuse('shape.binary', say.fileIsNotSVG);
  }
}

function readDrawing(text: string, file: Wanted, faults: FaultList): Omit<ReadResult, 'problems'> {
  const root = parseTree(text, faults);
  const byId = new Map<string, SvgNode>();
  let elements = 0;
  forEachNode(root, (node) => {
    elements++;
    const id = node.attributes.get('id');
    if (id !== undefined && !byId.has(id)) byId.set(id, node);
    const reason = EVERYWHERE.get(node.name);
    if (reason !== undefined) faults.leftOut(reason, node.name, node);
  });
  const specified = readStyles(root, elements, faults);
  const own = specified(root);
  const groups = groupsOf(root);
  const page = pageOf(root, faults);
  const collector = new Collector({ specified, byId, faults, groups, fades: file.fades ?? true });
  const context: Context = {
    look: inheritLook(PLAIN_LOOK, own),
    to: page.to,
    viewport: page.viewport,
    clips: [],
    trail: [],
    clipping: false,
  };
  const hidden = own.get('display')?.toLowerCase() === 'none' || isZero(own.get('opacity') ?? '1');
  if (!hidden) collector.drawChildren(root, context);
  const { drawn } = collector;
  const { white = 'paper', each = 'drawing' } = file;
  const { group, colour } = partsOf(drawn, groups, white !== 'ink' && !drawn.every((one) => one.white === true));
  const chosen: Part[] = each === 'group' ? group : each === 'colour' ? colour : [];
  const shapes = (chosen.length === 0 ? [null] : chosen).flatMap((part) => {
    const inside = part === null ? drawn : drawn.filter(part.holds);
    const name = part === null ? file.name : `${file.name}, ${part.name}`;
    const shape = toShape(inside, page, { name, white }, faults);
    return shape === null ? [] : [shape];
  });
  // What was left out already says why there is nothing.
  if (shapes.length === 0 && faults.empty) throw faults.refuse('shape.no-area', say.nothingInItIs);
  return { shapes, parts: { groups: group.map(({ name }) => name), colours: colour.map(({ name }) => name) } };
}

function toShape(drawn: readonly Drawn[], page: Page, { name, white }: { name: string; white: WhiteAs }, faults: FaultList): ReadShape | null {
  const paper = page.size === null ? null : { widthMm: page.size.width * MM_PER_PX, heightMm: page.size.height * MM_PER_PX };
  let rings: Float64Array[] = [];
  if (drawn.length > 0) {
    const clips = new Set(drawn.flatMap((one) => one.clips));
    toleranceFor([...clips].flatMap((clip) => clip.drawn), faults);
    const regions = new Regions(toleranceFor(drawn, faults));
    rings = inkOf(drawn, { page: paper, white }, regions, faults);
    if (page.size !== null) {
      const window = boxClip(page.size.width, page.size.height, [MM_PER_PX, 0, 0, MM_PER_PX, 0, 0]);
      const inside = regions.cut(rings, window);
      if (inside !== rings) sayCut(rings, inside, page.root, faults);
      rings = inside;
    }
  }
  const { widthMm, heightMm } = shapeBounds(rings);
  if (rings.length > 0 && Math.max(widthMm, heightMm) < MIN_SIDE_MM) {
    throw faults.refuse('shape.size', say.itsFilledAreaIs(MIN_SIDE_MM));
  }
  if (rings.length === 0) return null;
  const sized = ['width', 'height'].some((side) => isOnPaper(page.root.attributes.get(side)));
  return { name, rings, fillRule: 'nonzero', widthMm, heightMm, page: paper, sized };
}

function sayCut(all: Float64Array[], inside: Float64Array[], root: SvgNode, faults: FaultList): void {
  const before = areaOf(all);
  const after = areaOf(inside);
  if (before - after <= UNSAID_CUT * before) return;
  const share = Math.max(1, Math.round((1 - after / before) * 100));
  faults.leftOut({ code: 'shape.outside', said: () => say.edgeOfItsPage(share) }, 'svg', root);
}

/** Area of rings that never overlap, mm². */
function areaOf(rings: readonly Float64Array[]): number {
  return rings.reduce((sum, ring) => sum + ringArea(ring), 0);
}
