import type { Problem } from '../../base/error.ts';
import type { Mesh } from '../types.ts';

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
  if (!(threadsPerCm >= 5 && threadsPerCm <= 200)) {
    return [{ code: 'mesh.count', message: `A mesh has 5 to 200 threads a centimetre, not ${threadsPerCm}.`, where: 'threadsPerCm' }];
  }
  if (!(threadUm >= 10 && threadUm <= 500)) {
    return [{ code: 'mesh.thread', message: `A thread is 10 to 500 µm thick, not ${threadUm}.`, where: 'threadUm' }];
  }
  if (openingUm(mesh) <= 0) {
    return [
      {
        code: 'mesh.closed',
        message: `${threadsPerCm} threads of ${threadUm} µm a centimetre leave no opening; give fewer or thinner threads.`,
        where: 'threadUm',
      },
    ];
  }
  return [];
}
