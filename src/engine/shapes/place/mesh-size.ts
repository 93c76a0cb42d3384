import type { Problem } from '../../base/error.ts';
import { THREAD_UM, THREADS_PER_CM, within } from '../../base/limits.ts';
import type { Mesh } from '../types.ts';
import { say } from '../../words/en/shapes/place.ts';

/**
 * Width of the holes of a mesh.
 * @returns µm; 0 or less when the threads leave no hole
 * Source: opening = pitch − thread, pitch = 10 000 µm / threads per cm (plain geometry).
 */
export function openingUm(mesh: Mesh): number {
  return 10_000 / mesh.threadsPerCm - mesh.threadUm;
}

/** What is wrong with a mesh as typed; no problems when ink can pass. */
export function checkMesh(mesh: Mesh): Problem[] {
  const { threadsPerCm, threadUm } = mesh;
  if (!within(THREADS_PER_CM, threadsPerCm)) {
    return [{ code: 'mesh.count', message: say.meshHasToThreads(THREADS_PER_CM.least, THREADS_PER_CM.most, threadsPerCm), where: 'threadsPerCm' }];
  }
  if (!within(THREAD_UM, threadUm)) {
    return [{ code: 'mesh.thread', message: say.threadIsToM(THREAD_UM.least, THREAD_UM.most, threadUm), where: 'threadUm' }];
  }
  if (openingUm(mesh) <= 0) {
    return [
      {
        code: 'mesh.closed',
        message: say.threadsOfMCentimetre(threadsPerCm, threadUm),
        where: 'threadUm',
      },
    ];
  }
  return [];
}
