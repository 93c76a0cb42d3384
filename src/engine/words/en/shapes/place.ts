import { speak } from '../../language.ts';

export const say = speak('engine/shapes/place', {
  meshHasToThreads: (least: number, most: number, threadsPerCm: number) => `A mesh has ${least} to ${most} threads a centimetre, not ${threadsPerCm}.`,
  threadIsToM: (least: number, most: number, threadUm: number) => `A thread is ${least} to ${most} µm thick, not ${threadUm}.`,
  threadsOfMCentimetre: (threadsPerCm: number, threadUm: number) => `${threadsPerCm} threads of ${threadUm} µm a centimetre leave no opening; give fewer or thinner threads.`,
  mirrored: (name: string) => `${name}, mirrored`,
  screenUsesShapeWhich: (number: number, shape: string) => `Screen ${number} uses the shape '${shape}', which is not in the drawer; add it or take it off the screen.`,
  shapesOnScreenHave: (number: number) => `The shapes on screen ${number} have too many corners side by side, or cross each other too often; simplify them or spread them over several screens.`,
  pullIsLaidMm: (dxMm: number, dyMm: number, turnDeg: number) => `A pull is laid ${dxMm} mm across and ${dyMm} mm down, turned ${turnDeg}°; give three finite numbers.`,
});
