import type { Draft } from 'immer';
import type { ExploreSettings } from '../explore/types.ts';

/** Takes an ink that goes out of all that the wall is asked for, so that no condition lingers unseen. */
export function forgetInk(explore: Draft<ExploreSettings>, ink: string): void {
  explore.palette = explore.palette.filter((id) => id !== ink);
  for (const field of ['apart', 'neverOver'] as const) {
    const left = explore[field]?.filter((pair) => !pair.includes(ink));
    if (left?.length !== explore[field]?.length) explore[field] = someOf(left);
  }
  for (const field of ['inkFirst', 'inkLast'] as const) if (explore[field] === ink) explore[field] = undefined;
}

/** Takes a screen that goes out of what every print must or must not have. */
export function forgetScreen(explore: Draft<ExploreSettings>, screen: string): void {
  for (const field of ['mustScreens', 'notScreens'] as const) {
    if (explore[field]?.includes(screen) === true) explore[field] = someOf(explore[field].filter((id) => id !== screen));
  }
}

function someOf<T>(list: T[] | undefined): T[] | undefined {
  return list === undefined || list.length === 0 ? undefined : list;
}
