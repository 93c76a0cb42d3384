import { EngineError } from '../../base/error.ts';
import { sameMesh } from '../../ink/film/mesh.ts';
import { baseOf, letDown, printInks } from '../../ink/mix/mix.ts';
import type { Ink } from '../../ink/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/veil.ts';
import { freeId } from './veil-areas.ts';
import type { VeilOptions } from './veil-types.ts';

/** An ink that a veil may be printed in. */
export interface VeilInk {
  ink: Ink;
  from: string;
  parts: number;
  /** What the drawer lacks of it: the base, the let-down ink, or nothing. */
  newInks: Ink[];
}

const LETDOWNS: readonly number[] = [0, 2, 6, 15];

/**
 * The inks that veils may be printed in: those of the options, as they are and let down.
 * @throws EngineError 'veil.unknown-ink', 'veil.letdown'
 */
export function veilInks(studio: Studio, options: VeilOptions): VeilInk[] {
  const base = options.base ?? baseOf(studio.inks);
  const letdowns = options.letdowns ?? LETDOWNS;
  const bad = letdowns.find((parts) => !(parts >= 0 && parts <= 1000));
  if (bad !== undefined) throw new EngineError('veil.letdown', say.letdownOf1To(bad));
  const inks = options.inks?.map((id) => {
    const ink = studio.inks.find((each) => each.id === id);
    if (ink === undefined) throw new EngineError('veil.unknown-ink', say.inkIsNotIn(id));
    return ink;
  });
  const newBase = base === undefined || studio.inks.some((ink) => ink.id === base.id) ? [] : [base];
  return (inks ?? printInks(studio.inks)).flatMap((ink) =>
    letdowns.flatMap((parts): VeilInk[] => {
      if (parts === 0) return [{ ink, from: ink.id, parts, newInks: [] }];
      if (base === undefined || ink.role === 'base') return [];
      const plain = letDown(ink, base, parts, { surface: studio.surface });
      const held = studio.inks.find((each) => each.id === plain.id && sameCurves(each, plain));
      if (held !== undefined) return [{ ink: held, from: ink.id, parts, newInks: [] }];
      const mixed = { ...plain, id: freeId(plain.id, studio.inks) };
      return [{ ink: mixed, from: ink.id, parts, newInks: [...newBase, mixed] }];
    }),
  );
}

function sameCurves(a: Ink, b: Ink): boolean {
  return sameMesh(a.mesh, b.mesh) && JSON.stringify([a.kx, a.sx]) === JSON.stringify([b.kx, b.sx]);
}
