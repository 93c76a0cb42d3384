import { Container } from 'pixi.js';
import type { WallBatch } from '../../workers/wire.ts';
import { ColourPages, type ColourPlace } from './colour-pages.ts';
import { MapPages, type MapPlace } from './map-pages.ts';
import { Sheaf } from './sheaf.ts';
import type { WallUniforms } from './wall-shader.ts';

interface Hung {
  map: MapPlace;
  colours: ColourPlace;
  sheaf: Sheaf;
}

/** The prints of a wall: their maps and colours on the graphics card, and what draws them. */
export class HungPrints {
  readonly container = new Container();
  private readonly uniforms: WallUniforms;
  private maps: MapPages | null = null;
  private colours = new ColourPages();
  private readonly sheaves = new Map<string, Sheaf>();
  private readonly hung = new Map<number, Hung>();

  constructor(uniforms: WallUniforms) {
    this.uniforms = uniforms;
  }

  /** Rows of the maps, 0 before any came. */
  get mapRows(): number {
    return this.maps?.rows ?? 0;
  }

  has(index: number): boolean {
    return this.hung.has(index);
  }

  /** Hangs the prints of a batch at their numbers. */
  add(batch: WallBatch): void {
    const first = batch.maps[0];
    if (this.maps === null && first !== undefined) {
      this.maps = new MapPages(first.columns, first.rows);
      this.uniforms.uniforms.uMapSize[0] = first.columns;
      this.uniforms.uniforms.uMapSize[1] = first.rows;
    }
    this.maps?.add(batch.maps);
    for (const tile of batch.tiles) {
      const map = this.maps?.find(tile.map);
      if (map === undefined) continue;
      const colours = this.colours.add(tile.colours);
      this.hung.set(tile.variant.index, { map, colours, sheaf: this.sheafFor(map, colours) });
    }
    this.colours.upload();
  }

  private sheafFor(map: MapPlace, colours: ColourPlace): Sheaf {
    const key = `${map.page}/${colours.page}`;
    let sheaf = this.sheaves.get(key);
    if (sheaf === undefined) {
      sheaf = new Sheaf(this.maps!.pages[map.page]!, this.colours.pages[colours.page]!, this.uniforms);
      this.sheaves.set(key, sheaf);
      this.container.addChild(sheaf.mesh);
    }
    return sheaf;
  }

  /**
   * Puts the prints in view, and no others, up to be drawn.
   * @param at left and top of each print by its number, wall units
   * @param lookOf the look bits of a print
   */
  show(inView: readonly number[], at: Float32Array, lookOf: (index: number) => number): void {
    for (const sheaf of this.sheaves.values()) sheaf.begin();
    for (const index of inView) {
      const { map, colours, sheaf } = this.hung.get(index)!;
      sheaf.push(at[index * 2]!, at[index * 2 + 1]!, map.x, map.y, colours.offset, lookOf(index));
    }
    for (const sheaf of this.sheaves.values()) sheaf.end();
  }

  /** Takes all prints down. */
  clear(): void {
    for (const sheaf of this.sheaves.values()) sheaf.destroy();
    this.sheaves.clear();
    this.hung.clear();
    this.maps?.destroy();
    this.maps = null;
    this.colours.destroy();
    this.colours = new ColourPages();
  }
}
