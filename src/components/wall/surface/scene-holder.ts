import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { WallScene } from '../../canvas/wall-scene.ts';
import { themeOf } from './wall-theme.ts';

/** Keeps the wall's canvas in an element: as large and as fine as it can be seen, in the page's colours. */
export class SceneHolder implements ReactiveController {
  /** Null until the canvas stands, and for good when it cannot. */
  scene: WallScene | null = null;
  private readonly host: ReactiveControllerHost & HTMLElement;
  private surface: HTMLElement | null = null;
  private failed = false;
  /** What came before the canvas stood. */
  private readonly waiting: ((scene: WallScene) => void)[] = [];
  private readonly sizes = new ResizeObserver(() => this.measure());
  private readonly dark = matchMedia('(prefers-color-scheme: dark)');
  /** Another screen may be finer though the room's size stays. */
  private fineness: MediaQueryList | null = null;
  private readonly onFineness = (): void => {
    this.watchFineness();
    this.measure();
  };
  private readonly onTheme = (): void => this.scene?.setTheme(themeOf(this.host));

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.dark.addEventListener('change', this.onTheme);
    this.watchFineness();
  }

  hostDisconnected(): void {
    this.fineness?.removeEventListener('change', this.onFineness);
    this.dark.removeEventListener('change', this.onTheme);
    this.sizes.disconnect();
    this.scene?.destroy();
    this.scene = null;
  }

  /**
   * Puts the canvas into an element of the host.
   * @param ready hears of it before what waited is done
   * @throws when the code of the canvas does not come
   */
  async stand(surface: HTMLElement, ready: (scene: WallScene) => void): Promise<void> {
    try {
      // The search starts and the room stands without waiting for it.
      const { WallScene } = await import('../../canvas/wall-scene.ts');
      if (!this.host.isConnected) return;
      this.scene = new WallScene();
    } catch (error) {
      this.failed = true;
      throw error;
    }
    const { scene } = this;
    this.surface = surface;
    surface.prepend(...scene.canvases);
    scene.setTheme(themeOf(this.host));
    this.measure();
    this.sizes.observe(surface);
    ready(scene);
    for (const action of this.waiting.splice(0)) action(scene);
  }

  /** Does something with the canvas, as soon as it stands. */
  with(action: (scene: WallScene) => void): void {
    if (this.scene !== null) action(this.scene);
    else if (!this.failed) this.waiting.push(action);
  }

  private measure(): void {
    if (this.surface === null) return;
    const { clientWidth, clientHeight } = this.surface;
    this.scene?.resize(clientWidth, clientHeight, devicePixelRatio);
  }

  private watchFineness(): void {
    this.fineness?.removeEventListener('change', this.onFineness);
    this.fineness = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
    this.fineness.addEventListener('change', this.onFineness);
  }
}
