/** Elements that draw nothing where they stand, or only say something about others. */
export const SILENT: ReadonlySet<string> = new Set([
  'defs', 'symbol', 'clipPath', 'mask', 'marker', 'linearGradient', 'radialGradient', 'pattern', 'filter',
  'title', 'desc', 'metadata', 'style', 'view', 'cursor', 'stop', 'hatch', 'mesh', 'meshgradient',
  'solidColor', 'font', 'font-face', 'glyph', 'color-profile',
  // Reported wherever they stand, by `EVERYWHERE`.
  'script', 'animate', 'animateTransform', 'animateMotion', 'animateColor', 'set', 'discard',
]);

interface Reason {
  code: string;
  rest: string;
}

const TEXT: Reason = { code: 'shape.text', rest: 'is text, which cannot be a stencil as it stands; turn it into outlines first.' };
const FOREIGN: Reason = { code: 'shape.foreign', rest: 'is not drawn in SVG and cannot be a stencil; draw it as a path.' };
const ANIMATION: Reason = { code: 'shape.animation', rest: 'is an animation, which is left out; the drawing is taken as it stands at rest.' };

/** What an element that would be seen is left out for. */
export const NOT_PRINTABLE: ReadonlyMap<string, Reason> = new Map([
  ['image', { code: 'shape.image', rest: 'cannot be a stencil; trace it to outlines first.' }],
  ...['text', 'tspan', 'textPath', 'tref', 'altGlyph', 'flowRoot', 'flowPara', 'flowRegion'].map((name) => [name, TEXT] as const),
  ...['foreignObject', 'video', 'audio', 'iframe', 'canvas'].map((name) => [name, FOREIGN] as const),
]);

/** What is left out wherever it stands, seen or not. */
export const EVERYWHERE: ReadonlyMap<string, Reason> = new Map([
  ['script', { code: 'shape.script', rest: 'is a script, which is never run; it is left out.' }],
  ...['animate', 'animateTransform', 'animateMotion', 'animateColor', 'set', 'discard'].map(
    (name) => [name, ANIMATION] as const,
  ),
]);

export const UNKNOWN: Reason = { code: 'shape.unknown', rest: 'is not an element of SVG and is left out; draw it as a path.' };

/** Sentences about how an element is painted. */
export const STROKE: Reason = {
  code: 'shape.stroke',
  rest: 'has a stroke, which is left out because only filled areas become a stencil; turn the stroke into an outline first.',
};
export const GRADIENT: Reason = { code: 'shape.gradient', rest: 'is filled with a gradient, which one ink cannot print; give it a flat fill.' };
export const PATTERN: Reason = { code: 'shape.pattern', rest: 'is filled with a pattern, which is not read; expand the pattern to paths first.' };
export const PAINT: Reason = { code: 'shape.paint', rest: 'is filled with something that is not in the file; give it a flat fill.' };
export const EXTERNAL: Reason = { code: 'shape.external', rest: 'refers to something outside the file, which is not fetched; copy it into the file.' };
export const USE: Reason = { code: 'shape.use', rest: 'refers to an element that is not in the file or cannot be drawn; check its href.' };
export const CYCLE: Reason = { code: 'shape.use-cycle', rest: 'refers to itself round a circle and is left out; break the circle.' };
export const CLIP: Reason = { code: 'shape.clip', rest: 'has a clipping path of a kind that is not read; cut the shape along it first.' };
export const MASK: Reason = { code: 'shape.mask', rest: 'has a mask, which cannot be a stencil; cut the shape to the mask first.' };
export const FILTER: Reason = { code: 'shape.filter', rest: 'has a filter, which is left out; its plain outline is used.' };
export const MARKER: Reason = { code: 'shape.marker', rest: 'has markers, which are left out; turn them into paths first.' };
export const ORIGIN: Reason = { code: 'shape.transform', rest: 'is transformed about an origin that is not read; apply the transform to its points first.' };

export type { Reason };
