import { defined } from '../../base/at.ts';
import { compose } from '../../geometry/rings.ts';
import type { Affine } from '../../geometry/rings.ts';
import { SHAPE_ELEMENTS, shapeSegments } from './basic-shapes.ts';
import type { Specified } from './css.ts';
import { boxClip, type Clip, type Drawn } from './drawn.ts';
import type { FaultList } from './faults.ts';
import { placeText, quote, type Reason } from './faults.ts';
import * as why from './left-out.ts';
import { lengthOf, numbersOf, viewBoxAffine, viewBoxOf } from './lengths.ts';
import type { Viewport } from './lengths.ts';
import { MAX_DEPTH, MAX_DRAWN, MAX_SEGMENTS } from './limits.ts';
import { hasMarkers, inheritLook, isSet, isVisible, isZero, paintOf, ruleOf } from './look.ts';
import type { Look } from './look.ts';
import { paintsOf } from './paint/painted.ts';
import { transformOf } from './transform.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** Where the walk stands. */
export interface Context {
  look: Look;
  to: Affine;
  /** What percentages refer to; null when the file gives no size. */
  viewport: Viewport | null;
  clips: readonly Clip[];
  /** Elements that <use> has led through. */
  trail: readonly SvgNode[];
  /** Inside a clipping path: outlines count whatever their paint. */
  clipping: boolean;
  /** Which of the drawing's groups this is in. */
  layer?: number;
}

/** What the walk needs of the file. */
export interface Source {
  specified: (node: SvgNode) => Specified;
  byId: ReadonlyMap<string, SvgNode>;
  faults: FaultList;
  /** The groups that lie side by side in the drawing, numbered. */
  groups: ReadonlyMap<SvgNode, number>;
  /** Whether fades and patterns fill their outlines; else they are left out. */
  fades: boolean;
}

/** Walks a file and gathers its filled outlines. */
export class Collector {
  readonly drawn: Drawn[] = [];
  private readonly source: Source;
  private readonly reported = new Map<SvgNode, Set<string>>();
  private visits = 0;
  private segments = 0;

  constructor(source: Source) {
    this.source = source;
  }

  /**
   * Draws an element and all inside it.
   * @throws FileFault for unreadable coordinates and past the caps
   */
  draw(node: SvgNode, parent: Context, out: Drawn[] = this.drawn): void {
    const { faults } = this.source;
    if (++this.visits > MAX_DRAWN) {
      throw faults.refuse('shape.too-many', say.itDrawsMoreThan(MAX_DRAWN));
    }
    if (why.SILENT.has(node.name)) return;
    const own = this.source.specified(node);
    if (own.get('display')?.toLowerCase() === 'none') return;
    if (isZero(own.get('opacity') ?? '1')) return;
    const look = inheritLook(parent.look, own);
    const notPrintable = why.NOT_PRINTABLE.get(node.name);
    if (notPrintable !== undefined) {
      if (isVisible(look)) this.report(node, notPrintable);
      return;
    }
    const layer = parent.layer ?? this.source.groups.get(node);
    const context = this.enter(node, own, { ...parent, look, ...(layer === undefined ? {} : { layer }) });
    if (context === null) return;
    if (SHAPE_ELEMENTS.has(node.name)) this.drawShape(node, context, out);
    else if (node.name === 'use') this.drawUse(node, context, out);
    else if (node.name === 'svg') this.drawViewport(node, context, null, out);
    else if (node.name === 'switch') this.drawSwitch(node, context, out);
    else if (node.name === 'g' || node.name === 'a') this.drawChildren(node, context, out);
    else this.report(node, why.UNKNOWN);
  }

  drawChildren(node: SvgNode, context: Context, out: Drawn[] = this.drawn): void {
    for (const child of node.children) this.draw(child, context, out);
  }

  /** Leaves a sentence, once an element and reason. */
  private report(node: SvgNode, reason: Reason): void {
    let codes = this.reported.get(node);
    if (codes === undefined) this.reported.set(node, (codes = new Set()));
    if (codes.has(reason.code)) return;
    codes.add(reason.code);
    this.source.faults.leftOut(reason, node.name, node);
  }

  /** Transform, clipping path, mask and filter; null when the element is left out. */
  private enter(node: SvgNode, own: Specified, context: Context): Context | null {
    const to = this.transformed(node, own, context.to);
    if (to === null) return null;
    if (isSet(own.get('mask'))) {
      this.report(node, why.MASK);
      return null;
    }
    if (isSet(own.get('filter'))) this.report(node, why.FILTER);
    const inside = { ...context, to };
    const clipPath = own.get('clip-path');
    if (!isSet(clipPath)) return inside;
    const clip = this.clipOf(node, defined(clipPath), inside);
    return clip === null ? null : { ...inside, clips: [...context.clips, clip] };
  }

  private transformed(node: SvgNode, own: Specified, to: Affine): Affine | null {
    const text = own.get('transform');
    if (text === undefined) return to;
    const transform = transformOf(text);
    if (transform === null) {
      throw this.source.faults.refuse(
        'shape.transform',
        say.atLineHasTransform(node.name, node.line, quote(text)),
        say.at(node.name, placeText(node)),
      );
    }
    const origin = numbersOf((own.get('transform-origin') ?? '0 0').replaceAll('px', ''));
    const boxed = /fill-box|content-box|stroke-box/u.test(own.get('transform-box') ?? '');
    if (origin === null || origin.length < 2 || boxed) {
      this.report(node, why.ORIGIN);
      return null;
    }
    const [x, y] = origin as [number, number];
    return compose(to, compose([1, 0, 0, 1, x, y], compose(transform, [1, 0, 0, 1, -x, -y])));
  }

  private clipOf(node: SvgNode, value: string, context: Context): Clip | null {
    const paint = paintOf(value, '');
    const target = paint.kind === 'server' ? this.find(node, paint.href) : undefined;
    if (target === null) return null;
    if (target?.name !== 'clipPath' || target.attributes.get('clipPathUnits') === 'objectBoundingBox') {
      this.report(node, why.CLIP);
      return null;
    }
    if (context.trail.includes(target) || context.trail.length > MAX_DEPTH) {
      this.report(node, why.CYCLE);
      return null;
    }
    const own = this.source.specified(target);
    const inside = this.enter(target, own, {
      ...context,
      look: inheritLook(context.look, own),
      clips: [],
      trail: [...context.trail, target],
      clipping: true,
    });
    const drawn: Drawn[] = [];
    if (inside !== null) this.drawChildren(target, inside, drawn);
    return { drawn };
  }

  /** An element by '#id'; null after a sentence about a place outside the file. */
  private find(node: SvgNode, href: string): SvgNode | undefined | null {
    if (href.startsWith('#')) return this.source.byId.get(href.slice(1));
    if (href === '') return undefined;
    this.report(node, why.EXTERNAL);
    return null;
  }

  private drawShape(node: SvgNode, context: Context, out: Drawn[]): void {
    const { look, clips, to } = context;
    const { faults } = this.source;
    const segments = shapeSegments(node, context.viewport, faults);
    this.segments += segments.length;
    if (this.segments > MAX_SEGMENTS) {
      throw faults.refuse('shape.too-many', say.itsOutlinesHaveMore(MAX_SEGMENTS));
    }
    if (segments.length === 0 || !isVisible(look)) return;
    if (context.clipping) {
      out.push({ segments, to, clips, fillRule: ruleOf(look['clip-rule']) });
      return;
    }
    const { specified, fades } = this.source;
    const painted = paintsOf(node, context, {
      still: specified(node).get('vector-effect')?.includes('non-scaling-stroke') === true,
      fades,
      find: (href) => this.find(node, href),
      report: (reason) => this.report(node, reason),
    });
    const layer = context.layer === undefined ? {} : { layer: context.layer };
    for (const one of painted) out.push({ segments, to, clips, fillRule: one.pen === undefined ? ruleOf(look['fill-rule']) : 'nonzero', ...one, ...layer });
    if (node.name !== 'rect' && node.name !== 'circle' && node.name !== 'ellipse' && hasMarkers(look)) {
      this.report(node, why.MARKER);
    }
  }

  private drawUse(node: SvgNode, context: Context, out: Drawn[]): void {
    const target = this.find(node, node.attributes.get('href')?.trim() ?? '');
    if (target === null) return;
    if (target === undefined || (why.SILENT.has(target.name) && target.name !== 'symbol')) {
      this.report(node, why.USE);
      return;
    }
    const trail = [...context.trail, node, target];
    if (context.trail.includes(target) || isInside(node, target) || trail.length > 2 * MAX_DEPTH) {
      this.report(node, why.CYCLE);
      return;
    }
    const { faults } = this.source;
    const x = lengthOf(node, 'x', context.viewport?.width ?? null, faults) ?? 0;
    const y = lengthOf(node, 'y', context.viewport?.height ?? null, faults) ?? 0;
    const inside: Context = { ...context, trail, to: compose(context.to, [1, 0, 0, 1, x, y]) };
    if (target.name !== 'symbol' && target.name !== 'svg') {
      this.draw(target, inside, out);
      return;
    }
    const own = this.source.specified(target);
    if (own.get('display')?.toLowerCase() === 'none' || isZero(own.get('opacity') ?? '1')) return;
    const entered = this.enter(target, own, { ...inside, look: inheritLook(inside.look, own) });
    if (entered !== null) this.drawViewport(target, entered, node, out);
  }

  /** A nested <svg>, or a <symbol> as big as the <use> that draws it says. */
  private drawViewport(node: SvgNode, context: Context, use: SvgNode | null, out: Drawn[]): void {
    const { faults } = this.source;
    const outer = context.viewport;
    const side = (name: 'width' | 'height'): number | null => {
      const all = outer?.[name] ?? null;
      const fromUse = use === null ? null : lengthOf(use, name, all, faults);
      return fromUse ?? (node.name === 'symbol' ? null : lengthOf(node, name, all, faults)) ?? all;
    };
    const at = (name: 'x' | 'y', all: number | null): number =>
      node.name === 'symbol' ? 0 : (lengthOf(node, name, all, faults) ?? 0);
    const shift: Affine = [1, 0, 0, 1, at('x', outer?.width ?? null), at('y', outer?.height ?? null)];
    let to = compose(context.to, shift);
    const [width, height] = [side('width'), side('height')];
    if (width === null || height === null) {
      this.drawChildren(node, { ...context, to }, out);
      return;
    }
    const viewBox = viewBoxOf(node, faults);
    if (width <= 0 || height <= 0 || (viewBox !== null && (viewBox.width <= 0 || viewBox.height <= 0))) return;
    const overflow = this.source.specified(node).get('overflow') ?? 'hidden';
    let clips = context.clips;
    if (!/visible|auto/iu.test(overflow)) clips = [...clips, boxClip(width, height, to)];
    if (viewBox !== null) {
      to = compose(to, viewBoxAffine(viewBox, { width, height }, node.attributes.get('preserveAspectRatio')));
    }
    this.drawChildren(node, { ...context, to, clips, viewport: viewBox ?? { width, height } }, out);
  }

  /** The first child that asks for nothing unknown. Source: SVG 1.1 §5.8. */
  private drawSwitch(node: SvgNode, context: Context, out: Drawn[]): void {
    const first = node.children.find((child) => {
      if (why.SILENT.has(child.name)) return false;
      if (child.attributes.has('requiredExtensions')) return false;
      const languages = child.attributes.get('systemLanguage');
      return languages === undefined || languages.split(',').some((one) => /^en\b/iu.test(one.trim()));
    });
    if (first !== undefined) this.draw(first, context, out);
  }
}

function isInside(node: SvgNode, ancestor: SvgNode): boolean {
  for (let at: SvgNode | null = node; at !== null; at = at.parent) if (at === ancestor) return true;
  return false;
}
