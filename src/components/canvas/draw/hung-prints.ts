import { type BufferImageSource, Container, type Shader } from 'pixi.js';
import { defined, num } from '../../../engine/base/at.ts';
import type { WallBatch, WallMap } from '../../../workers/api/engine-api.ts';
import { ColourPages, type ColourPlace } from './colour-pages.ts';
import { GridPages, type GridPlace } from './grid-pages.ts';
import { PrintGroup } from './print-group.ts';
import { farShader, nearShader, type WallUniforms } from './wall-shader.ts';

interface Hung {
  map: GridPlace;
  colours: ColourPlace;
  small: GridPlace;
}

/** Pages of all that a wall's prints are drawn from. */
class Pages {
  readonly rows: number;
  readonly smallRows: number;
  /** Texels of a page of small pictures, across and down. */
  readonly smallPage: readonly [number, number];
  private readonly bytes: GridPages;
  private readonly words: GridPages;
  private readonly smalls: GridPages;
  private readonly colours = new ColourPages();
  private readonly maps = new Map<number, GridPlace>();

  constructor(map: WallMap, small: { columns: number; rows: number }) {
    this.rows = map.rows;
    this.smallRows = small.rows;
    this.bytes = new GridPages(map.columns, map.rows, 'byte');
    this.words = new GridPages(map.columns, map.rows, 'word');
    this.smalls = new GridPages(small.columns, small.rows, 'colour');
    this.smallPage = [this.smalls.width, this.smalls.height];
  }

  add({ maps, tiles }: WallBatch, hang: (index: number, hung: Hung) => void): void {
    for (const map of maps) {
      if (this.maps.has(map.id)) continue;
      this.maps.set(map.id, (map.cells instanceof Uint8Array ? this.bytes : this.words).add(map.cells));
    }
    for (const tile of tiles) {
      const map = this.maps.get(tile.map);
      if (map === undefined) continue;
      hang(tile.variant.index, { map, colours: this.colours.add(tile.colours), small: this.smalls.add(tile.small.words) });
    }
    for (const pages of [this.bytes, this.words, this.smalls, this.colours]) pages.upload();
  }

  destroy(): void {
    for (const pages of [this.bytes, this.words, this.smalls, this.colours]) pages.destroy();
  }
}

/**
 * The prints of a wall, on the graphics card. Near by, each is drawn from its map of cells and their
 * colours; from far, where many cells fall on one pixel, from its small picture, which costs a look-up
 * or a few a pixel instead of dozens and a draw call for thousands of prints.
 */
export class HungPrints {
  readonly container = new Container();
  private readonly uniforms: WallUniforms;
  private pages: Pages | null = null;
  /** By the pages that they are drawn from. */
  private readonly near = new Map<BufferImageSource, Map<BufferImageSource, PrintGroup>>();
  private readonly far = new Map<BufferImageSource, PrintGroup>();
  private readonly hung = new Map<number, Hung>();

  constructor(uniforms: WallUniforms) {
    this.uniforms = uniforms;
  }

  /** Rows of the maps, 0 before any came. */
  get mapRows(): number {
    return this.pages?.rows ?? 0;
  }

  /** Rows of the small pictures, 0 before any came. */
  get smallRows(): number {
    return this.pages?.smallRows ?? 0;
  }

  has(index: number): boolean {
    return this.hung.has(index);
  }

  /** Hangs the prints of a batch at their numbers. */
  add(batch: WallBatch): void {
    const [map] = batch.maps;
    const [tile] = batch.tiles;
    if (this.pages === null && map !== undefined && tile !== undefined) {
      this.pages = new Pages(map, tile.small);
      const { uniforms } = this.uniforms;
      uniforms.uMapSize.set([map.columns, map.rows]);
      uniforms.uSmallSize.set([tile.small.columns, tile.small.rows]);
      uniforms.uSmallPage.set(this.pages.smallPage);
    }
    this.pages?.add(batch, (index, hung) => this.hung.set(index, hung));
  }

  private nearGroup({ map, colours }: Hung): PrintGroup {
    let sheaves = this.near.get(map.page);
    if (sheaves === undefined) this.near.set(map.page, (sheaves = new Map()));
    return this.groupIn(sheaves, colours.page, () => nearShader(map.page, colours.page, this.uniforms));
  }

  private farGroup({ small }: Hung): PrintGroup {
    return this.groupIn(this.far, small.page, () => farShader(small.page, this.uniforms));
  }

  private groupIn(sheaves: Map<BufferImageSource, PrintGroup>, page: BufferImageSource, shader: () => Shader): PrintGroup {
    let group = sheaves.get(page);
    if (group === undefined) {
      group = new PrintGroup(shader());
      sheaves.set(page, group);
      this.container.addChild(group.mesh);
    }
    return group;
  }

  private *sheaves(): Generator<PrintGroup> {
    yield* this.far.values();
    for (const each of this.near.values()) yield* each.values();
  }

  /**
   * Puts the prints in view, and no others, up to be drawn.
   * @param at left and top of each print by its number, wall units
   * @param lookOf the look bits of a print
   * @param far from their small pictures
   */
  show(inView: readonly number[], at: Float32Array, lookOf: (index: number) => number, far: boolean): void {
    for (const group of this.sheaves()) group.begin();
    for (const index of inView) {
      const hung = defined(this.hung.get(index));
      const { x, y } = far ? hung.small : hung.map;
      (far ? this.farGroup(hung) : this.nearGroup(hung)).push(
        num(at, index * 2),
        num(at, index * 2 + 1),
        x,
        y,
        hung.colours.offset,
        lookOf(index),
      );
    }
    for (const group of this.sheaves()) group.end();
  }

  /** Takes all prints down. */
  clear(): void {
    for (const group of this.sheaves()) group.destroy();
    this.near.clear();
    this.far.clear();
    this.hung.clear();
    this.pages?.destroy();
    this.pages = null;
  }
}
