import type { ExploreSettings } from '../types.ts';

/** Whether whole screens may lie elsewhere than they were drawn. */
export function placed({ places }: ExploreSettings): boolean {
  return places === 'near' || places === 'anywhere';
}

/** Whether prints may be other compositions than the base stack, and are to be told apart as such. */
export function rearranged(settings: ExploreSettings): boolean {
  return placed(settings) || settings.turns === 'quarter' || settings.mirrored === true || (settings.repeats ?? 0) > 0;
}
