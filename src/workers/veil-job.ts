import * as Comlink from 'comlink';
import { type VeilOptions, type VeilResult, veils } from '../engine/explore/index.ts';
import type { Drawer, Pull } from '../engine/stack/types.ts';
import type { Jobs } from './jobs.ts';
import { DrawerPictures } from './pictures.ts';
import type { Picture, VeilFind } from './wire.ts';

/**
 * Looks for veils and draws them.
 * @param onProgress gets the share that is done, 0–1
 * @returns null when the job was cancelled
 */
export async function runVeils(
  jobs: Jobs,
  job: string,
  pictures: DrawerPictures,
  pulls: readonly Pull[],
  options: VeilOptions,
  heightPx: number,
  relative: boolean,
  onProgress: (share: number) => void,
): Promise<VeilFind | null> {
  const { drawer } = pictures;
  let result: VeilResult | null = null;
  const drawn: Picture[] = [];
  function* steps(): Generator<number, void> {
    result = yield* veils({ pulls }, drawer, options);
    drawn.push(pictures.thumbnail(pulls, heightPx, relative));
    for (const { pulls: veiled, newInks, newShape, newScreen } of result.proposals) {
      yield 1;
      const more: Drawer = {
        ...drawer,
        shapes: newShape === null ? drawer.shapes : [...drawer.shapes, newShape],
        screens: newScreen === null ? drawer.screens : [...drawer.screens, newScreen],
        inks: [...drawer.inks, ...newInks],
      };
      drawn.push(new DrawerPictures(more, pictures).thumbnail(veiled, heightPx, relative));
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
    { result: result!, before: before!, after },
    drawn.map(({ pixels }) => pixels.buffer),
  );
}
