import type { Reason } from './faults.ts';

/** Elements that draw nothing where they stand, or only say something about others. */
export const SILENT: ReadonlySet<string> = new Set([
  'defs', 'symbol', 'clipPath', 'mask', 'marker', 'linearGradient', 'radialGradient', 'pattern', 'filter',
  'title', 'desc', 'metadata', 'style', 'view', 'cursor', 'stop', 'hatch', 'mesh', 'meshgradient',
  'solidColor', 'font', 'font-face', 'glyph', 'color-profile',
  // Reported wherever they stand, by `EVERYWHERE`.
  'script', 'animate', 'animateTransform', 'animateMotion', 'animateColor', 'set', 'discard',
]);

/** 'one text was', '3 texts were'. */
function were(count: number, one: string, more = `${one}s`): string {
  return count === 1 ? `one ${one} was` : `${count} ${more} were`;
}

const TEXT: Reason = { code: 'shape.text', said: (n) => `${were(n, 'text')} left out, since letters are not outlines yet; turn text into outlines first.` };
const FOREIGN: Reason = {
  code: 'shape.foreign',
  said: (n) => `${were(n, 'part that is no drawing', 'parts that are no drawing')} left out, such as film, sound or a web page; draw it as a path.`,
};
const ANIMATION: Reason = { code: 'shape.animation', said: (n) => `${were(n, 'movement')} left out; the drawing is taken as it stands at rest.` };
const SCRIPT: Reason = { code: 'shape.script', said: (n) => `${were(n, 'script')} left out, as none is ever run.` };
const PICTURE: Reason = { code: 'shape.image', said: (n) => `${were(n, 'picture')} left out, since a picture has no outlines; trace it to outlines first.` };

/** What an element that would be seen is left out for. */
export const NOT_PRINTABLE: ReadonlyMap<string, Reason> = new Map([
  ['image', PICTURE],
  ...['text', 'tspan', 'textPath', 'tref', 'altGlyph', 'flowRoot', 'flowPara', 'flowRegion'].map((name) => [name, TEXT] as const),
  ...['foreignObject', 'video', 'audio', 'iframe', 'canvas'].map((name) => [name, FOREIGN] as const),
]);

/** What is left out wherever it stands, seen or not. */
export const EVERYWHERE: ReadonlyMap<string, Reason> = new Map([
  ['script', SCRIPT],
  ...['animate', 'animateTransform', 'animateMotion', 'animateColor', 'set', 'discard'].map((name) => [name, ANIMATION] as const),
]);

export const UNKNOWN: Reason = { code: 'shape.unknown', said: (n) => `${were(n, 'part of an unknown kind', 'parts of an unknown kind')} left out; draw it as a path.` };

/** Sentences about how something is painted. */
export const GRADIENT: Reason = {
  code: 'shape.gradient',
  said: (n) => `${were(n, 'area that fades from colour to colour', 'areas that fade from colour to colour')} taken by the outline, since one ink prints flat.`,
};
export const PATTERN: Reason = { code: 'shape.pattern', said: (n) => `${were(n, 'area filled with a pattern', 'areas filled with a pattern')} taken by the outline; expand the pattern to paths to print it.` };
export const FADES_OUT: Reason = { code: 'shape.gradient', said: (n) => `${were(n, 'area that fades from colour to colour', 'areas that fade from colour to colour')} left out.` };
export const PATTERN_OUT: Reason = { code: 'shape.pattern', said: (n) => `${were(n, 'area filled with a pattern', 'areas filled with a pattern')} left out.` };
export const PAINT: Reason = { code: 'shape.paint', said: (n) => `${were(n, 'area whose fill is not in the file', 'areas whose fill is not in the file')} left out; give it a flat fill.` };
export const EXTERNAL: Reason = { code: 'shape.external', said: (n) => `${were(n, 'thing in another file', 'things in other files')} left out, since nothing outside the file is fetched; copy it into the file.` };
export const USE: Reason = { code: 'shape.use', said: (n) => `${were(n, 'copy of something', 'copies of something')} left out that is not in the file or cannot be drawn; draw it in the file.` };
export const CYCLE: Reason = { code: 'shape.use-cycle', said: (n) => `${were(n, 'part')} left out that is made of itself round a circle; break the circle.` };
export const CLIP: Reason = { code: 'shape.clip', said: (n) => `${were(n, 'part')} left out whose cutting outline is of a kind that is not read; cut the shape along it first.` };
export const MASK: Reason = { code: 'shape.mask', said: (n) => `${were(n, 'masked part')} left out, since a stencil is only open or shut; cut the shape to the mask first.` };
export const FILTER: Reason = { code: 'shape.filter', said: (n) => `${were(n, 'effect, such as a blur or a shadow,', 'effects, such as blurs or shadows,')} left out; the plain outline is used.` };
export const MARKER: Reason = { code: 'shape.marker', said: (n) => `arrowheads or other marks of ${n === 1 ? 'one line' : `${n} lines`} were left out; turn them into paths first.` };
export const ORIGIN: Reason = { code: 'shape.transform', said: (n) => `${were(n, 'part')} left out that is turned or scaled about a point that is not read; apply the transform to it first.` };
export const NEGATIVE: Reason = { code: 'shape.negative', said: (n) => `${were(n, 'side or radius below zero', 'sides or radii below zero')} taken as none; give it a size above zero.` };
