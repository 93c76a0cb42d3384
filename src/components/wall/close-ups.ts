import type { Variant } from '../../engine/explore/types.ts';
import type { Drawer } from '../../engine/stack/types.ts';
import { desk } from '../../workers/client.ts';
import type { WallScene } from '../canvas/wall-scene.ts';

const QUIET_MS = 140;
const MOST_PRINTS = 24;
const MOST_PX = 1800;

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
  viewChanged(drawer: Drawer, relative: boolean, variantOf: (index: number) => Variant | undefined): void {
    clearTimeout(this.timer);
    const { scene } = this;
    if (scene.mapRows === 0 || scene.printPx < scene.mapRows * 1.2) {
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

  private async draw(drawer: Drawer, relative: boolean, variantOf: (index: number) => Variant | undefined): Promise<void> {
    const { scene } = this;
    const visible = scene.visible();
    if (visible.length > MOST_PRINTS) return;
    scene.forgetCloseUps(new Set(visible));
    const call = ++this.call;
    const heightPx = Math.min(MOST_PX, Math.round(scene.printPx));
    const picture = desk('picture');
    for (const index of visible) {
      const had = scene.closeUpPx(index);
      const variant = variantOf(index);
      if (variant === undefined || (had >= heightPx * 0.9 && had <= heightPx * 2)) continue;
      try {
        const drawn = await picture.engine.thumbnail(picture.key(drawer), variant.pulls, heightPx, relative);
        if (call !== this.call) return;
        scene.addCloseUp(index, drawn);
      } catch {
        // The wall's own print stays, only coarser; whatever is wrong is told by the run itself.
        return;
      }
    }
  }
}
