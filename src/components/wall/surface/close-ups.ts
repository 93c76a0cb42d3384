import type { ReactiveControllerHost } from 'lit';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';
import { Work } from '../../ui/work.ts';

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
  private readonly drawing: Work<null>;

  /** @param host what the wall stands in; the drawing ends when it goes */
  constructor(host: ReactiveControllerHost, scene: WallScene) {
    this.scene = scene;
    this.drawing = new Work(host);
  }

  /**
   * To be called whenever the view changed; waits until it rests.
   * @param variantOf the print with a number
   */
  viewChanged(studio: Studio, relative: boolean, variantOf: (index: number) => Variant | undefined): void {
    clearTimeout(this.timer);
    const { scene } = this;
    if (scene.mapRows === 0 || scene.printPx < scene.mapRows * 0.55) {
      this.drawing.stop();
      scene.drawing.forgetCloseUps();
      return;
    }
    this.timer = setTimeout(() => this.draw(studio, relative, variantOf), QUIET_MS);
  }

  stop(): void {
    clearTimeout(this.timer);
    this.drawing.stop();
  }

  private draw(studio: Studio, relative: boolean, variantOf: (index: number) => Variant | undefined): void {
    const { scene } = this;
    const visible = scene.visible();
    if (visible.length > MOST_PRINTS) return;
    scene.drawing.forgetCloseUps(new Set(visible));
    const finer = scene.printPx < FINER_UNDER_PX ? 2 : 1;
    const heightPx = Math.min(MOST_PX, Math.round(scene.printPx * finer));
    const wanted = visible.flatMap((index) => {
      const had = scene.drawing.closeUpPx(index);
      const pulls = variantOf(index)?.pulls;
      return pulls === undefined || (had >= heightPx * 0.9 && had <= heightPx * 1.6) ? [] : [{ index, pulls }];
    });
    // When it fails the wall's own print stays, only coarser; whatever is wrong is told by the run itself.
    void this.drawing.start(async ({ signal }) => {
      const ready: { index: number; picture: Picture }[] = [];
      const lay = (): void => {
        for (const { index, picture } of ready.splice(0)) scene.addCloseUp(index, picture);
      };
      for (const { index, pulls } of wanted) {
        const picture = await engineFor('picture').thumbnail({ studio, pulls, heightPx, relative });
        if (signal.aborted) return null;
        ready.push({ index, picture });
        if (ready.length >= AT_ONCE) lay();
      }
      lay();
      return null;
    });
  }
}
