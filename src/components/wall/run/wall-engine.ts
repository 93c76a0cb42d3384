import type { Clash } from '../../../engine/explore/search/clash.ts';
import type { Pin } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { WallBatch, WallEnd, WallFrom } from '../../../workers/api/engine-api.ts';
import { desk, onMessage } from '../../../workers/client/client.ts';
import type { WallInputs } from './wall-search.ts';

/** The work of a wall, in its worker. */
export interface WallEngine {
  wall(request: { job: string; inputs: WallInputs; rows: number; from: WallFrom }, onBatch: (batch: WallBatch) => void): Promise<WallEnd>;
  pinTiles(inputs: WallInputs, request: { pins: readonly Pin[]; at: number; rows: number }): Promise<WallBatch>;
  findClash(job: string, inputs: WallInputs): Promise<Clash | null>;
  cancel(job: string): void;
}

export const wallEngine: WallEngine = {
  wall({ job, inputs: { drawer, bench, explore }, rows, from }, onBatch) {
    const { engine, key } = deskFor(drawer);
    return engine.wall(key, job, bench, explore, rows, onMessage(onBatch), { ...from, cores: navigator.hardwareConcurrency });
  },
  pinTiles({ drawer, relative }, { pins, at, rows }) {
    const { engine, key } = deskFor(drawer);
    return engine.pinTiles(key, pins, at, rows, relative);
  },
  findClash(job, { drawer, bench, explore }) {
    const { engine, key } = deskFor(drawer);
    return engine.findClash(key, job, bench, explore);
  },
  cancel(job) {
    void desk('wall').engine.cancel(job);
  },
};

function deskFor(drawer: WallInputs['drawer']) {
  const wall = desk('wall');
  return { engine: wall.engine, key: wall.key(drawer) };
}
