import { SpanCache } from '../../../engine/stack/screen-spans.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

/** A studio with what is known of its screens. */
export interface StudioKnown {
  studio: Studio;
  spans: SpanCache;
}

/**
 * Keeps the last studio that was asked about: each request brings a copy of its own, whose screens would be joined
 * and whose films would be worked out anew.
 */
export class StudioAtHand {
  private kept: StudioKnown | null = null;

  /** The studio that is kept where this one is its copy, else this one. */
  of(studio: Studio): StudioKnown {
    if (this.kept === null || !sameData(this.kept.studio, studio)) this.kept = { studio, spans: new SpanCache(studio) };
    return this.kept;
  }
}

/** Whether two plain values, as messages carry them, hold the same. */
function sameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || ArrayBuffer.isView(one)) {
    const [a, b] = [one as ArrayLike<unknown>, other as ArrayLike<unknown>];
    if (Array.isArray(one) !== Array.isArray(other) || a.length !== b.length) return false;
    for (let i = 0; i < a.length; i++) if (!sameData(a[i], b[i])) return false;
    return true;
  }
  const [names, others] = [Object.keys(one), Object.keys(other)];
  return (
    names.length === others.length &&
    names.every((name) => Object.hasOwn(other, name) && sameData(Reflect.get(one, name), Reflect.get(other, name)))
  );
}
