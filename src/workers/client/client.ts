import * as Comlink from 'comlink';
import type { Studio } from '../../engine/studio/studio.ts';
import type { EngineApi, StorageApi } from '../api/engine-api.ts';
import type { WallToolsApi } from '../api/wall-tools-api.ts';

export const onMessage: <T extends (...args: never[]) => void>(callback: T) => T = (callback) => Comlink.proxy(callback);

const drawerKeys = new WeakMap<Studio, number>();
let nextKey = 1;
let nextJob = 1;

/** A fresh name for work that may be cancelled. */
export function newJob(): string {
  return `job-${nextJob++}`;
}

/** Drawers that a worker keeps at most; recipes have drawers of their own. */
const MAX_KNOWN = 80;

/** One engine worker, with the drawers that it already has. */
class Desk {
  private readonly remote: Comlink.Remote<EngineApi>;
  /** In order of use, the last used last. */
  private readonly known = new Map<number, Studio>();

  constructor() {
    const worker = new Worker(new URL('../entry/engine.worker.ts', import.meta.url), { type: 'module' });
    this.remote = Comlink.wrap<EngineApi>(worker);
  }

  /** Calls that need no drawer. */
  get engine(): Comlink.Remote<EngineApi> {
    return this.remote;
  }

  /** Sees to it that the worker has the drawer, and gives the key to name it by. */
  key(drawer: Studio): number {
    let key = drawerKeys.get(drawer);
    if (key === undefined) {
      key = nextKey++;
      drawerKeys.set(drawer, key);
    }
    if (!this.known.has(key)) this.load(key, drawer);
    this.known.delete(key);
    this.known.set(key, drawer);
    return key;
  }

  /** Messages arrive in order, so the call that needs the drawer need not wait for this one. */
  private load(key: number, drawer: Studio): void {
    const like = [...this.known].find(([, other]) => other.shapes === drawer.shapes && other.screens === drawer.screens);
    if (like === undefined) void this.remote.loadStudio(key, drawer, null);
    else {
      const { inks, paper, strokeGain } = drawer;
      void this.remote.loadStudio(key, { inks, paper, strokeGain }, like[0]);
    }
    const old = [...this.known.keys()].slice(0, Math.max(0, this.known.size - MAX_KNOWN));
    if (old.length > 0) {
      for (const each of old) this.known.delete(each);
      void this.remote.dropStudios(old);
    }
  }
}

const desks = new Map<string, Desk>();

/**
 * The worker for a kind of work. Each kind has its own, so that a long wall never holds up the
 * picture on the Bench.
 */
export function desk(kind: 'picture' | 'wall' | 'plan' | 'lesson'): Desk {
  let found = desks.get(kind);
  if (found === undefined) {
    found = new Desk();
    desks.set(kind, found);
  }
  return found;
}

/** The worker that saves. */
export function openStorage(): Comlink.Remote<StorageApi> {
  return Comlink.wrap<StorageApi>(new Worker(new URL('../entry/storage.worker.ts', import.meta.url), { type: 'module' }));
}

let tools: Comlink.Remote<WallToolsApi> | undefined;

/** The worker for what is done with prints that hang; it starts when first asked. */
export function wallTools(): Comlink.Remote<WallToolsApi> {
  tools ??= Comlink.wrap<WallToolsApi>(new Worker(new URL('../entry/wall-tools.worker.ts', import.meta.url), { type: 'module' }));
  return tools;
}

/** What an error that came from a worker says to the user. */
export function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
