import * as Comlink from 'comlink';
import { defined, entryAt } from '../../engine/base/at.ts';
import type { VeilOptions, VeilResult } from '../../engine/explore/veil/veil-types.ts';
import { veils } from '../../engine/explore/veil/veil.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture, VeilFind } from '../api/engine-api.ts';
import type { Jobs } from './jobs.ts';
import { StudioPictures } from './pictures.ts';

/**
 * Looks for veils and draws them.
 * @param onProgress gets the share that is done, 0–1
 * @returns null when the job was cancelled
 */
export async function runVeils(
  jobs: Jobs,
  job: string,
  pictures: StudioPictures,
  pulls: readonly Pull[],
  options: VeilOptions,
  heightPx: number,
  relative: boolean,
  onProgress: (share: number) => void,
): Promise<VeilFind | null> {
  const { drawer } = pictures;
  const results: VeilResult[] = [];
  const drawn: Picture[] = [];
  function* steps(): Generator<number, void> {
    const result = yield* veils({ pulls }, drawer, options);
    results.push(result);
    drawn.push(pictures.thumbnail(pulls, heightPx, relative));
    for (const { pulls: veiled, newInks, newShape, newScreen } of result.proposals) {
      yield 1;
      const more: Studio = {
        ...drawer,
        shapes: newShape === null ? drawer.shapes : [...drawer.shapes, newShape],
        screens: newScreen === null ? drawer.screens : [...drawer.screens, newScreen],
        inks: [...drawer.inks, ...newInks],
      };
      drawn.push(new StudioPictures(more, pictures).thumbnail(veiled, heightPx, relative));
    }
  }
  let told = 0;
  // Thousands of steps, of which a bar shows a hundred.
  const onStep = (share: number): void => {
    if (share - told < 0.01) return;
    told = share;
    onProgress(share);
  };
  if (await jobs.run(job, steps(), onStep)) return null;
  const [before, ...after] = drawn;
  return Comlink.transfer(
    { result: entryAt(results, 0), before: defined(before), after },
    drawn.map(({ pixels }) => pixels.buffer),
  );
}
