import type { Affine } from '../../../geometry/rings.ts';
import type { Pen } from '../drawn.ts';
import type { Reason } from '../faults.ts';
import * as why from '../left-out.ts';
import { MM_PER_PX, type Viewport } from '../lengths.ts';
import { hasStroke, isZero, type Look, type Paint, paintOf } from '../look.ts';
import { penOf } from './pen.ts';
import type { SvgNode } from '../xml-tree.ts';

/** One thing that an element paints. */
interface Painted {
  white: boolean;
  colour: string;
  /** Along its outline; inside it when absent. */
  pen?: Pen;
}

/** What the painting of one element needs of the walk. */
interface Hands {
  /** Whether its pen keeps its width however the drawing is scaled. Source: SVG 2 §8.13 (vector-effect) */
  still: boolean;
  /** Whether fades and patterns fill their outlines; else they are left out. */
  fades: boolean;
  /** An element by '#id'; null after a sentence. */
  find: (href: string) => SvgNode | undefined | null;
  report: (reason: Reason) => void;
}

/**
 * What an element paints, in its order: its inside, then its line, or the other way about.
 * Source: SVG 2 §13.3 (fill), §13.5 (stroke), §13.8 (paint-order)
 */
export function paintsOf(node: SvgNode, { look, viewport, to }: { look: Look; viewport: Viewport | null; to: Affine }, hands: Hands): Painted[] {
  const inside = node.name === 'line' || isZero(look['fill-opacity']) ? null : paintFor(look.fill, look, hands);
  const line = hasStroke(look) ? paintFor(look.stroke, look, hands) : null;
  const painted = inside === null ? [] : [inside];
  if (line === null) return painted;
  const frame: Affine = hands.still ? [MM_PER_PX, 0, 0, MM_PER_PX, 0, 0] : to;
  const drawn = { ...line, pen: penOf(look, { to: frame, viewport, pathLength: node.attributes.get('pathLength') }) };
  return /^\s*stroke\b/iu.test(look['paint-order']) ? [drawn, ...painted] : [...painted, drawn];
}

/** What a paint comes to; null for none, and after a sentence where it is left out. */
function paintFor(text: string, { color }: Look, { fades, find, report }: Hands): Painted | null {
  const paint = paintOf(text, color);
  if (paint.kind !== 'server') return flat(paint);
  const server = find(paint.href);
  if (server === null) return null;
  if (server === undefined && paint.fallback !== '') return flat(paintOf(paint.fallback, color));
  const gradient = server !== undefined && /gradient$/iu.test(server.name);
  if (!gradient && server?.name !== 'pattern') {
    report(why.PAINT);
    return null;
  }
  if (gradient) report(fades ? why.GRADIENT : why.FADES_OUT);
  else report(fades ? why.PATTERN : why.PATTERN_OUT);
  return fades ? { white: false, colour: gradient ? 'fades' : 'pattern' } : null;
}

function flat(paint: Paint): Painted | null {
  if (paint.kind === 'solid') return { white: paint.white, colour: paint.colour };
  // A fallback that is a paint server again is seen as any colour.
  return paint.kind === 'none' ? null : { white: false, colour: 'pattern' };
}
