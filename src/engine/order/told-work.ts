import { entryAt } from '../base/at.ts';
import { cutText } from '../base/bounds.ts';
import { EngineError } from '../base/error.ts';
import type { Stack } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/order/order.ts';

/**
 * Compares outlines of pulls; where that is too much work, says of which shapes.
 * @param pulls places in the stack
 * @throws EngineError 'order.too-much-work', and as the work
 */
export function toldWork<T>(pulls: readonly number[], stack: Stack, studio: Studio, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof EngineError && error.code === 'geometry.too-much-work')) throw error;
    const names = pulls.map((pull) => shapeOf(pull, stack, studio)).join(say.and);
    throw new EngineError('order.too-much-work', say.outlinesOfHaveToo(names, pulls.length), {
      path: ['pulls', entryAt(pulls, 0)],
      details: { pulls: [...pulls] },
    });
  }
}

/** The shape with the most corners on a pull's screen. */
function shapeOf(pull: number, { pulls }: Stack, { screens, shapes }: Studio): string {
  const screen = screens.find(({ id }) => id === entryAt(pulls, pull).screen);
  const placed = new Set(screen?.placed.map(({ shape }) => shape));
  let most = { name: '', corners: -1 };
  for (const { id, name, rings } of shapes) {
    const corners = placed.has(id) ? rings.reduce((sum, ring) => sum + ring.length / 2, 0) : -1;
    if (corners > most.corners) most = { name, corners };
  }
  return say.onScreen(cutText(most.name), screen?.number ?? '?');
}
