import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/engine-api.ts';
import { desk } from '../../../workers/client/client.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';

const QUIET_MS = 140;
const MOST_PRINTS = 60;
const MOST_PX = 1800;
/** Below this, prints are drawn twice as fine as they show, for smooth edges. */
const FINER_UNDER_PX = 900;
/** Prints hung on the wall at once: each time costs a drawing of the whole wall. */
const AT_ONCE = 4;

/** Draws the prints one stands close to as finely as the screen can show them. */
export class CloseUps {
  private readonly scene: WallScene;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private call = 0;

  constructor(scene: WallScene) {
    this.scene = scene;
  }

  /**
   * To be called whenever the view changed; waits until it rests.
   * @param variantOf the print with a number
   */
  viewChanged(drawer: Studio, relative: boolean, variantOf: (index: number) => Variant | undefined): void {
    clearTimeout(this.timer);
    const { scene } = this;
    if (scene.mapRows === 0 || scene.printPx < scene.mapRows * 0.55) {
      this.call++;
      scene.forgetCloseUps();
      return;
    }
    this.timer = setTimeout(() => void this.draw(drawer, relative, variantOf), QUIET_MS);
  }

  stop(): void {
    clearTimeout(this.timer);
    this.call++;
  }

  private async draw(drawer: Studio, relative: boolean, variantOf: (index: number) => Variant | undefined): Promise<void> {
    const { scene } = this;
    const visible = scene.visible();
    if (visible.length > MOST_PRINTS) return;
    scene.forgetCloseUps(new Set(visible));
    const call = ++this.call;
    const finer = scene.printPx < FINER_UNDER_PX ? 2 : 1;
    const heightPx = Math.min(MOST_PX, Math.round(scene.printPx * finer));
    const picture = desk('picture');
    const ready: { index: number; picture: Picture }[] = [];
    const hang = (): void => {
      for (const { index, picture } of ready.splice(0)) scene.addCloseUp(index, picture);
    };
    for (const index of visible) {
      const had = scene.closeUpPx(index);
      const variant = variantOf(index);
      if (variant === undefined || (had >= heightPx * 0.9 && had <= heightPx * 1.6)) continue;
      try {
        const drawn = await picture.engine.thumbnail(picture.key(drawer), variant.pulls, heightPx, relative);
        if (call !== this.call) return;
        ready.push({ index, picture: drawn });
        if (ready.length >= AT_ONCE) hang();
      } catch {
        // The wall's own print stays, only coarser; whatever is wrong is told by the run itself.
        return;
      }
    }
    hang();
  }
}
