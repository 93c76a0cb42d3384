import { compile } from 'css-select';
import { generate, lexer, parse, walk } from 'css-tree';
import type { CssNode, Rule } from 'css-tree';
import type { FaultList } from './faults.ts';
import { EXTERNAL } from './left-out.ts';
import { MAX_RULE_MATCHES, MAX_STYLE_TEXT } from './limits.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** The properties that decide what is filled. */
const PROPERTIES: ReadonlySet<string> = new Set([
  'fill', 'fill-rule', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-opacity', 'stroke-linecap', 'stroke-linejoin',
  'stroke-miterlimit', 'stroke-dasharray', 'stroke-dashoffset', 'paint-order', 'vector-effect', 'color', 'opacity',
  'display', 'visibility', 'clip-path', 'clip-rule', 'mask', 'filter', 'overflow',
  'transform', 'transform-origin', 'transform-box', 'marker-start', 'marker-mid', 'marker-end',
]);

interface Declared {
  property: string;
  value: string;
  important: boolean;
}

interface StyleRule {
  matches: (node: SvgNode) => boolean;
  /** Ids, classes, types in one number: each is far below 1000. */
  specificity: number;
  declared: Declared[];
}

/** The value of each property as written for one element, the winner of the cascade. */
export type Specified = ReadonlyMap<string, string>;

/**
 * Reads the <style> elements and gives each element's own values, before inheritance.
 * Source: CSS Cascading 4 §6 (order: attribute, rules by specificity and order, style attribute, !important).
 */
export function readStyles(root: SvgNode, elements: number, faults: FaultList): (node: SvgNode) => Specified {
  const rules: StyleRule[] = [];
  let letters = 0;
  const checkLength = (text: string): void => {
    letters += text.length;
    if (letters > MAX_STYLE_TEXT) {
      throw faults.refuse('shape.too-many', say.itsStylesAreLonger(MAX_STYLE_TEXT));
    }
  };
  let spent = 0;
  const adapter = adapterFor((searched) => {
    spent += searched;
    if (spent > MAX_RULE_MATCHES) throw faults.refuse('shape.too-many', say.itsStyleRulesTake);
  });
  forEachNode(root, (node) => {
    if (node.name !== 'style') return;
    checkLength(node.text);
    addRules(node, { rules, faults, adapter });
  });
  rules.sort((a, b) => a.specificity - b.specificity);
  if (rules.length * elements > MAX_RULE_MATCHES) {
    throw faults.refuse('shape.too-many', say.thereAreStyleRules(rules.length, elements));
  }
  const known = new Map<SvgNode, Specified>();
  const inline = new Map<string, Declared[]>();
  return (node) => {
    const done = known.get(node);
    if (done !== undefined) return done;
    const values = new Map<string, string>();
    for (const [property, value] of node.attributes) set(values, property, value);
    const matching = rules.filter((rule) => rule.matches(node)).flatMap((rule) => rule.declared);
    const text = node.attributes.get('style');
    let own: Declared[] = [];
    if (text !== undefined) {
      const parsed = inline.get(text);
      if (parsed === undefined) checkLength(text);
      own = parsed ?? declarationsOf(tryParse(text, 'declarationList'));
      inline.set(text, own);
    }
    for (const important of [false, true]) {
      for (const list of [matching, own]) {
        for (const one of list) if (one.important === important) set(values, one.property, one.value);
      }
    }
    known.set(node, values);
    return values;
  };
}

/** Calls back for an element and all inside it, in document order. */
export function forEachNode(root: SvgNode, visit: (node: SvgNode) => void): void {
  visit(root);
  for (const child of root.children) forEachNode(child, visit);
}

const validPaints = new Map<string, boolean>();

function set(values: Map<string, string>, property: string, raw: string): void {
  if (!PROPERTIES.has(property)) return;
  const value = raw.trim();
  if (value === '') return;
  // An unreadable paint is passed over and the next weaker one holds.
  if ((property === 'fill' || property === 'stroke' || property === 'color') && !isValid(property, value)) return;
  values.set(property, value);
}

/** A paint with more signs than this is no name of a colour; only an address may be as long. */
const LONGEST_PAINT = 1000;

function isValid(property: string, value: string): boolean {
  if (value.length > LONGEST_PAINT) return /^url\(/iu.test(value);
  const key = `${property}:${value}`;
  let valid = validPaints.get(key);
  if (valid === undefined) {
    valid = /^(?:inherit|initial|unset|context-fill|context-stroke)$/iu.test(value) || lexer.matchProperty(property, value).error === null;
    if (validPaints.size > 5000) validPaints.clear();
    validPaints.set(key, valid);
  }
  return valid;
}

function tryParse(text: string, context: 'stylesheet' | 'declarationList'): CssNode | null {
  try {
    return parse(text, { context, parseCustomProperty: false, onParseError: () => undefined });
  } catch {
    return null;
  }
}

function declarationsOf(list: CssNode | null): Declared[] {
  const declared: Declared[] = [];
  if (list === null || !('children' in list) || list.children === null) return declared;
  for (const node of list.children as Iterable<CssNode>) {
    if (node.type !== 'Declaration') continue;
    const value = generate(node.value);
    declared.push({ property: node.property.toLowerCase(), value, important: node.important === true });
  }
  return declared;
}

interface Sheet {
  rules: StyleRule[];
  faults: FaultList;
  adapter: ReturnType<typeof adapterFor>;
}

function addRules(style: SvgNode, sheetOut: Sheet): void {
  const type = style.attributes.get('type') ?? 'text/css';
  if (type !== '' && type !== 'text/css') return;
  if (!isForAll(style.attributes.get('media') ?? '')) return;
  const sheet = tryParse(style.text, 'stylesheet');
  if (sheet === null || sheet.type !== 'StyleSheet') return;
  addList(sheet.children as Iterable<CssNode>, style, sheetOut);
}

function isForAll(media: string): boolean {
  return ['', 'all', 'screen'].includes(media.trim().toLowerCase());
}

function addList(list: Iterable<CssNode>, style: SvgNode, out: Sheet): void {
  for (const node of list) {
    if (node.type === 'Rule') addRule(node, out);
    if (node.type !== 'Atrule') continue;
    if (node.name === 'import') {
      out.faults.leftOut(EXTERNAL, 'style', style);
    }
    if (node.name === 'media' && node.block !== null && isForAll(node.prelude === null ? '' : generate(node.prelude))) {
      addList(node.block.children as Iterable<CssNode>, style, out);
    }
  }
}

function addRule(rule: Rule, { rules, adapter }: Sheet): void {
  if (rule.prelude.type !== 'SelectorList') return;
  const declared = declarationsOf(rule.block).filter((one) => PROPERTIES.has(one.property));
  if (declared.length === 0) return;
  for (const selector of rule.prelude.children as Iterable<CssNode>) {
    try {
      const matches = compile<SvgNode, SvgNode>(generate(selector), { xmlMode: true, cacheResults: false, adapter });
      rules.push({ matches, specificity: specificityOf(selector), declared });
    } catch {
      // A selector that nothing can match (an unknown pseudo-class) styles nothing, as CSS says.
    }
  }
}

/** Selectors 4 §17, with the whole of a list inside :is() and :not() counted. */
function specificityOf(selector: CssNode): number {
  let sum = 0;
  walk(selector, (node) => {
    if (node.type === 'IdSelector') sum += 1e6;
    else if (node.type === 'ClassSelector' || node.type === 'AttributeSelector') sum += 1e3;
    else if (node.type === 'PseudoClassSelector' && !/^(?:is|not|has|where)$/u.test(node.name)) sum += 1e3;
    else if (node.type === 'TypeSelector' && node.name !== '*') sum += 1;
  });
  return sum;
}

/** How selectors see the tree; `spend` hears of every list of elements that is searched. */
function adapterFor(spend: (elements: number) => void): NonNullable<Parameters<typeof compile<SvgNode, SvgNode>>[1]>['adapter'] {
  return {
    isTag: (node: SvgNode): node is SvgNode => node !== null,
    getAttributeValue: (node: SvgNode, name: string) => node.attributes.get(name),
    getChildren: (node: SvgNode) => {
      spend(node.children.length);
      return node.children;
    },
    getName: (node: SvgNode) => node.name,
    getParent: (node: SvgNode) => {
      spend(1);
      return node.parent;
    },
    getSiblings: (node: SvgNode) => {
      const siblings = node.parent?.children ?? [node];
      spend(siblings.length);
      return siblings;
    },
    getText: (node: SvgNode) => node.text,
    hasAttrib: (node: SvgNode, name: string) => node.attributes.has(name),
    removeSubsets: (nodes: SvgNode[]) => nodes,
  };
}
