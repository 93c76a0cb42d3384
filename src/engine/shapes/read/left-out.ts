import type { Reason } from './faults.ts';
import { say } from '../../words/en/shapes/read.ts';

/** Elements that draw nothing where they stand, or only say something about others. */
export const SILENT: ReadonlySet<string> = new Set([
  'defs', 'symbol', 'clipPath', 'mask', 'marker', 'linearGradient', 'radialGradient', 'pattern', 'filter',
  'title', 'desc', 'metadata', 'style', 'view', 'cursor', 'stop', 'hatch', 'mesh', 'meshgradient',
  'solidColor', 'font', 'font-face', 'glyph', 'color-profile',
  // Reported wherever they stand, by `EVERYWHERE`.
  'script', 'animate', 'animateTransform', 'animateMotion', 'animateColor', 'set', 'discard',
]);

const TEXT: Reason = { code: 'shape.text', said: (n) => say.textsLeftOutSince(n) };
const FOREIGN: Reason = {
  code: 'shape.foreign',
  said: (n) => say.partsThatAreNo(n),
};
const ANIMATION: Reason = { code: 'shape.animation', said: (n) => say.movementsLeftOutDrawing(n) };
const SCRIPT: Reason = { code: 'shape.script', said: (n) => say.scriptsLeftOutAs(n) };
const PICTURE: Reason = { code: 'shape.image', said: (n) => say.picturesLeftOutSince(n) };

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

export const UNKNOWN: Reason = { code: 'shape.unknown', said: (n) => say.partsOfUnknownKind(n) };

/** Sentences about how something is painted. */
export const GRADIENT: Reason = {
  code: 'shape.gradient',
  said: (n) => say.areasThatFadeFrom(n),
};
export const PATTERN: Reason = { code: 'shape.pattern', said: (n) => say.areasFilledWithPattern(n) };
export const FADES_OUT: Reason = { code: 'shape.gradient', said: (n) => say.areasThatFadeFromColour(n) };
export const PATTERN_OUT: Reason = { code: 'shape.pattern', said: (n) => say.areasFilledWithPatternLeft(n) };
export const PAINT: Reason = { code: 'shape.paint', said: (n) => say.areasWhoseFillIs(n) };
export const EXTERNAL: Reason = { code: 'shape.external', said: (n) => say.thingsInOtherFiles(n) };
export const USE: Reason = { code: 'shape.use', said: (n) => say.copiesOfSomethingLeft(n) };
export const CYCLE: Reason = { code: 'shape.use-cycle', said: (n) => say.partsLeftOutThat(n) };
export const CLIP: Reason = { code: 'shape.clip', said: (n) => say.partsLeftOutWhose(n) };
export const MASK: Reason = { code: 'shape.mask', said: (n) => say.maskedPartsLeftOut(n) };
export const FILTER: Reason = { code: 'shape.filter', said: (n) => say.effectsSuchAsBlurs(n) };
export const MARKER: Reason = { code: 'shape.marker', said: (n) => say.arrowheadsOrOtherMarks(n === 1 ? say.oneLine : say.lines(n)) };
export const ORIGIN: Reason = { code: 'shape.transform', said: (n) => say.partsLeftOutThatIs(n) };
export const NEGATIVE: Reason = { code: 'shape.negative', said: (n) => say.sidesOrRadiiBelow(n) };
