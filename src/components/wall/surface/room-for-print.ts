import type { ReactiveControllerHost } from 'lit';
import type { WallScene } from '../../canvas/wall-scene.ts';

/** What a panel has at least, and the air and the number of a print above it, px. */
const LEAST_PANEL_PX = 180;
const PRINT_AIR_PX = 52;

/** Where a panel about a print lies over the lower part of the wall. */
export interface PanelPlace {
  side: 'left' | 'right';
  /** How tall it may be, px: as wide as the wall, it leaves a strip above it for the print. */
  mostPx: number;
}

export const USUAL_PLACE: PanelPlace = { side: 'right', mostPx: Infinity };

/** Places a panel on the other side of the print in focus, and brings the print out from under it. */
function makeRoom(scene: WallScene | null, surface: Element, panel: Element): PanelPlace {
  if (scene === null || !scene.planned.hangs(scene.focus)) return USUAL_PLACE;
  const print = scene.frameOf(scene.focus);
  const wall = surface.getBoundingClientRect();
  const { top, width, bottom } = panel.getBoundingClientRect();
  const side = print.left + print.width / 2 > wall.width / 2 ? 'left' : 'right';
  const beside = wall.width - width >= print.width;
  const mostPx = beside ? Infinity : Math.max(LEAST_PANEL_PX, Math.floor(bottom - wall.top - print.height - PRINT_AIR_PX));
  const upper = Math.max(top, bottom - mostPx);
  const left = side === 'left' ? 0 : wall.width - width;
  scene.steering.reveal(scene.focus);
  scene.steering.bringOut(scene.focus, { left, top: upper - wall.top, width, height: bottom - upper });
  return { side, mostPx };
}

/** Keeps the print in focus in view while a panel about it lies over the wall. */
export class PanelRoom {
  place = USUAL_PLACE;
  private readonly host: ReactiveControllerHost;
  private panel: Element | null = null;

  /** @param host is drawn anew when the panel is to lie elsewhere */
  constructor(host: ReactiveControllerHost) {
    this.host = host;
  }

  /** A panel lies over the wall, or goes on to lie there. */
  covers(panel: Element, scene: WallScene | null, surface: Element): void {
    this.panel = panel;
    const { side, mostPx } = makeRoom(scene, surface, panel);
    if (side === this.place.side && mostPx === this.place.mostPx) return;
    this.place = { side, mostPx };
    this.host.requestUpdate();
  }

  /** The wall has another size. */
  again(scene: WallScene | null, surface: Element): void {
    if (this.panel?.isConnected === true) this.covers(this.panel, scene, surface);
    // Where prints are chosen by touch nothing but choosing changes the size.
    else if (scene !== null && matchMedia('(pointer: coarse)').matches) scene.steering.reveal(scene.focus);
  }
}
