import { entryAt } from '../../base/at.ts';
import type { Drawn } from './drawn.ts';
import { quote } from './faults.ts';
import { SILENT } from './left-out.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** What becomes a shape: all of a drawing together, each of its groups, or each colour in it. */
export type ShapeOf = 'drawing' | 'group' | 'colour';

/** Names of what a drawing could become apart: none where there are fewer than two, or more than `MOST_PARTS`. */
export interface Parts {
  groups: string[];
  colours: string[];
}

/** Nobody makes more screens of one drawing; no source. */
const MOST_PARTS = 40;

/** Groups within each other that hold but one are looked into so deep. */
const DEEPEST = 10;

/** The groups side by side that a drawing is made of, outermost first; what lies beside them counts as one more. */
export function groupsOf(root: SvgNode): ReadonlyMap<SvgNode, number> {
  let holder = root;
  for (let depth = 0; depth < DEEPEST; depth++) {
    const drawn = holder.children.filter(({ name }) => !SILENT.has(name));
    const groups = drawn.filter(({ name }) => name === 'g');
    if (groups.length === 1 && drawn.length === 1) {
      holder = entryAt(groups, 0);
      continue;
    }
    const places = new Map<SvgNode, number>();
    for (const one of drawn) places.set(one, one.name === 'g' ? groups.indexOf(one) : groups.length);
    return groups.length === 0 ? new Map() : places;
  }
  return new Map();
}

function groupName(node: SvgNode | undefined, place: number): string {
  const title = node?.children.find(({ name }) => name === 'title')?.text.trim();
  const name = quote(title || (node?.attributes.get('aria-label') ?? node?.attributes.get('id') ?? ''), 40);
  return name === '' ? (node === undefined ? say.besideGroups : say.group(place + 1)) : name;
}

/** What of a drawing could become shapes apart. @param drawn all that is seen, white that may be paper left out */
function sorted(drawn: readonly Drawn[], groups: ReadonlyMap<SvgNode, number>) {
  const places = [...new Set(drawn.map(({ layer }) => layer ?? -1))].sort((a, b) => a - b);
  const colours = [...new Set(drawn.flatMap(({ colour }) => (colour === undefined ? [] : [colour])))];
  const nodes = new Map([...groups].flatMap(([node, place]) => (node.name === 'g' ? [[place, node] as const] : [])));
  return { places, colours, nodes };
}

/** One of the parts: its name, and whether something drawn is in it. */
export interface Part {
  name: string;
  holds: (one: Drawn) => boolean;
}

/**
 * The parts that a drawing is divided into; white lies in each, since it may cut a hole in any.
 * @param whiteIsPaper whether white is no colour of its own
 */
export function partsOf(drawn: readonly Drawn[], groups: ReadonlyMap<SvgNode, number>, whiteIsPaper: boolean): Record<'group' | 'colour', Part[]> {
  const inks = whiteIsPaper ? drawn.filter(({ white }) => white !== true) : drawn;
  const { places, colours, nodes } = sorted(inks, groups);
  const cuts = (one: Drawn): boolean => whiteIsPaper && one.white === true;
  const fits = (count: number): boolean => count > 1 && count <= MOST_PARTS;
  return {
    group: !fits(places.length) ? [] : places.map((place) => ({ name: groupName(nodes.get(place), place), holds: (one) => cuts(one) || (one.layer ?? -1) === place })),
    colour: !fits(colours.length) ? [] : colours.map((colour) => ({ name: quote(colour, 40), holds: (one) => cuts(one) || one.colour === colour })),
  };
}
