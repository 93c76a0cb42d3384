import { Container, type Shader } from 'pixi.js';
import { num } from '../../../engine/base/at.ts';
import { PrintGroup } from './print-group.ts';
import type { PrintPages, PrintPlaces } from './print-pages.ts';
import type { TexelPage } from './texel-page.ts';
import { farShader, nearShader, type WallUniforms } from './wall-shader.ts';

/**
 * The prints of a wall, on the graphics card. Near by, each is drawn from its map of cells and their
 * colours; from far, where many cells fall on one pixel, from its small picture, which costs a look-up
 * or a few a pixel instead of dozens and a draw call for thousands of prints.
 */
export class HungPrints {
  readonly container = new Container();
  private readonly uniforms: WallUniforms;
  private readonly pages: PrintPages;
  /** By the pages that they are drawn from. */
  private readonly near = new Map<TexelPage, Map<TexelPage, PrintGroup>>();
  private readonly far = new Map<TexelPage, PrintGroup>();

  constructor(pages: PrintPages, uniforms: WallUniforms) {
    this.pages = pages;
    this.uniforms = uniforms;
  }

  private nearGroup({ map, colours }: PrintPlaces): PrintGroup {
    let groups = this.near.get(map.page);
    if (groups === undefined) this.near.set(map.page, (groups = new Map()));
    return this.groupIn(groups, colours.page, () => nearShader(map.page, colours.page, this.uniforms));
  }

  private farGroup({ small }: PrintPlaces): PrintGroup {
    return this.groupIn(this.far, small.page, () => farShader(small.page, this.uniforms));
  }

  private groupIn(groups: Map<TexelPage, PrintGroup>, page: TexelPage, shader: () => Shader): PrintGroup {
    let group = groups.get(page);
    if (group === undefined) {
      group = new PrintGroup(shader());
      groups.set(page, group);
      this.container.addChild(group.mesh);
    }
    return group;
  }

  private *groups(): Generator<PrintGroup> {
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
    this.setSizes();
    for (const group of this.groups()) group.begin();
    for (const index of inView) {
      const hung = this.pages.placesOf(index);
      const { x, y } = far ? hung.small : hung.map;
      const group = far ? this.farGroup(hung) : this.nearGroup(hung);
      const { offset } = hung.colours;
      group.push({
        left: num(at, index * 2),
        top: num(at, index * 2 + 1),
        gridX: x,
        gridY: y,
        colours: offset,
        look: lookOf(index),
      });
    }
    for (const group of this.groups()) group.end();
  }

  private setSizes(): void {
    const { sizes } = this.pages;
    if (sizes === null) return;
    const { uniforms } = this.uniforms;
    uniforms.uMapSize.set(sizes.map);
    uniforms.uSmallSize.set(sizes.small);
    uniforms.uSmallPage.set(sizes.smallPage);
  }

  /** Takes all prints down. */
  clear(): void {
    for (const group of this.groups()) group.destroy();
    this.near.clear();
    this.far.clear();
  }
}
