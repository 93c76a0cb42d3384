import { receivedDraws, sentDraws } from '../../src/workers/helpers/sent-draws.ts';
import { WallHelper } from '../../src/workers/helpers/wall-helper.ts';
import type { RemoteHelper } from '../../src/workers/helpers/wall-helpers.ts';
import { breathe } from '../../src/workers/jobs/jobs.ts';
import type { DrawnTile } from '../../src/workers/jobs/wall-painter.ts';

/**
 * A helper in this thread that answers after some steps of the search, each time others.
 * @param delays steps that it waits before its first answer, its second and so on, and round again
 * @param broken whether it throws after its second answer
 */
export function slowHelper(delays: readonly number[], broken = false): RemoteHelper & { calls: number } {
  const helper = new WallHelper();
  let at = 0;
  const later = async <T>(action: () => T): Promise<T> => {
    for (let wait = delays[at++ % delays.length]!; wait > 0; wait--) await breathe();
    remote.calls++;
    if (broken && remote.calls > 2) throw new Error('the helper is gone');
    return structuredClone(action());
  };
  const remote = {
    calls: 0,
    begin: (order: Parameters<WallHelper['begin']>[0]) => later(() => helper.begin(order)),
    draw: async (from: number, count: number) => receivedDraws(await later(() => sentDraws(helper.draw(from, count)))),
    paint: (variants: Parameters<WallHelper['paint']>[0]) => later((): DrawnTile[] => helper.paint(variants)),
  };
  return remote;
}
