import type { Studio } from '../../engine/studio/studio.ts';
import type { StudioLoad } from '../api/engine-api.ts';
import type { StudioKey } from '../api/request.ts';

/** Studios that a worker keeps at most, some 0.8 MB each with what was worked out for their pictures; recipes have studios of their own. */
const MAX_KNOWN = 16;

const keys = new WeakMap<Studio, StudioKey>();
let nextKey = 1;

/** What keeps studios: the worker. */
export interface StudioKeeper {
  loadStudio(load: StudioLoad): unknown;
  dropStudios(keys: readonly StudioKey[]): unknown;
}

/** Which studios a worker has, so that each goes over once. */
export class KnownStudios {
  private readonly keeper: StudioKeeper;
  /** In order of use, the last used last. */
  private readonly known = new Map<StudioKey, Studio>();

  constructor(keeper: StudioKeeper) {
    this.keeper = keeper;
  }

  /** Sees to it that the worker has the studio, and gives the key to name it by. */
  key(studio: Studio): StudioKey {
    let key = keys.get(studio);
    if (key === undefined) {
      key = nextKey++;
      keys.set(studio, key);
    }
    if (!this.known.has(key)) this.load(key, studio);
    this.known.delete(key);
    this.known.set(key, studio);
    return key;
  }

  /** Messages arrive in order, so the call that needs the studio need not wait for this one. */
  private load(key: StudioKey, studio: Studio): void {
    const like = [...this.known].find(([, other]) => other.shapes === studio.shapes && other.screens === studio.screens);
    if (like === undefined) void this.keeper.loadStudio({ key, studio, like: null });
    else {
      const { shapes: _, screens: __, ...rest } = studio;
      void this.keeper.loadStudio({ key, studio: rest, like: like[0] });
    }
    const old = [...this.known.keys()].slice(0, Math.max(0, this.known.size - MAX_KNOWN));
    if (old.length === 0) return;
    for (const each of old) this.known.delete(each);
    void this.keeper.dropStudios(old);
  }
}
