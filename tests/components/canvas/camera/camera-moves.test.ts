import { afterEach, describe, expect, it, vi } from 'vitest';
import { CameraMoves } from '../../../../src/components/canvas/camera/camera-moves.ts';
import { Camera } from '../../../../src/components/canvas/camera/camera.ts';

const START = 5000;

function moving(reduced: boolean): { camera: Camera; moves: CameraMoves; drawn: () => number } {
  vi.stubGlobal('matchMedia', () => ({ matches: reduced }));
  vi.spyOn(performance, 'now').mockReturnValue(START);
  const camera = new Camera();
  camera.keeps = 'place';
  camera.fit({ width: 100, height: 100 }, { width: 10_000, height: 10_000 }, { width: 74, height: 100 });
  camera.set({ scale: 1, x: -1000, y: -1000 });
  let drawn = 0;
  const moves = new CameraMoves(camera, () => drawn++);
  return { camera, moves, drawn: () => drawn };
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('CameraMoves', () => {
  it('should set out quickly and arrive gently, exactly, after less than a fifth of a second', () => {
    const { camera, moves } = moving(false);
    moves.goTo({ scale: 1, x: -2000, y: -1000 });
    expect(camera.x).toBe(-1000);
    moves.step(START + 85);
    // Half of the time is over: all but an eighth of the way is, as a movement that slows down by the cube has it.
    expect(camera.x).toBeCloseTo(-1875, 6);
    moves.step(START + 170);
    expect(camera.x).toBe(-2000);
    moves.step(START + 500);
    expect(camera.x).toBe(-2000);
  });

  it('should be there at once for those who want nothing to move', () => {
    const { camera, moves } = moving(true);
    moves.goTo({ scale: 1, x: -2000, y: -1000 });
    expect(camera.x).toBe(-2000);
  });

  it('should add up quick steps from where the one before will end', () => {
    const { camera, moves } = moving(false);
    moves.goTo({ scale: 1, x: -2000, y: -1000 });
    const next = moves.fromGoal(() => ({ scale: camera.scale, x: camera.x - 500, y: camera.y }));
    expect(next.x).toBe(-2500);
    expect(camera.x).toBe(-1000);
  });
});
