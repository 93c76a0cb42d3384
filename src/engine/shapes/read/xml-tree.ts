import { SaxesParser, type SaxesTagNS } from 'saxes';
import type { FaultList, Place } from './faults.ts';
import { quote } from './faults.ts';
import { EXTERNAL } from './left-out.ts';
import { MAX_DEPTH, MAX_ELEMENTS } from './limits.ts';
import { say } from '../../words/en/shapes/read.ts';

const SVG = 'http://www.w3.org/2000/svg';
const XLINK = 'http://www.w3.org/1999/xlink';

/** An element of SVG; elements of other vocabularies are dropped with all inside them. */
export interface SvgNode extends Place {
  name: string;
  /** By local name; `xlink:href` counts as `href` where there is no plain one. */
  attributes: ReadonlyMap<string, string>;
  parent: SvgNode | null;
  children: SvgNode[];
  /** Only text straight inside a style or a title. */
  text: string;
}

/**
 * Reads XML strictly, without ever expanding entities of the file's own.
 * @throws FileFault when the text is not well-formed, not SVG, or past a cap
 */
export function parseTree(text: string, faults: FaultList): SvgNode {
  const parser = new SaxesParser(OPTIONS);
  const placeOf = placesIn(text);
  const tree = new TreeBuilder(faults, () => say.lineColumn(parser.line, parser.column + 1));
  parser.on('error', (error) => tree.refuseText(error.message));
  parser.on('doctype', (doctype) => tree.doctype(doctype));
  parser.on('processinginstruction', ({ target }) => tree.instruction(target, { line: parser.line, column: 1 }));
  // The parser is past the name by now, perhaps on the next line.
  parser.on('opentagstart', () => tree.begin(placeOf(text.lastIndexOf('<', parser.position - 1))));
  parser.on('opentag', (tag) => tree.open(tag));
  parser.on('closetag', () => tree.close());
  parser.on('text', (chunk) => tree.addText(chunk));
  parser.on('cdata', (chunk) => tree.addText(chunk));
  parser.write(text).close();
  return tree.done();
}

const OPTIONS = {
  xmlns: true,
  // A forgotten declaration does no harm here: all but SVG and xlink is dropped anyway.
  resolvePrefix: (prefix: string) => (prefix === '' ? '' : prefix === 'xlink' ? XLINK : `undeclared:${prefix}`),
} as const;

/** Makes a tree of what the parser comes by. */
class TreeBuilder {
  private readonly faults: FaultList;
  private readonly here: () => string;
  private root: SvgNode | null = null;
  private at: SvgNode | null = null;
  private start: Place = { line: 1, column: 1 };
  /** Depth inside an element of another vocabulary. */
  private foreign = 0;
  private depth = 0;
  private elements = 0;

  /** @param here where the parser stands, in words */
  constructor(faults: FaultList, here: () => string) {
    this.faults = faults;
    this.here = here;
  }

  refuseText(message: string): never {
    const here = this.here();
    const what = quote(message.replace(/^\d+:\d+: /u, ''), 80).replace(/\.$/u, '');
    throw this.faults.refuse(
      'shape.xml',
      say.fileBreaksOffOr(here, what),
      here,
    );
  }

  doctype(doctype: string): void {
    if (!/<!ENTITY/iu.test(doctype)) return;
    throw this.faults.refuse(
      'shape.entities',
      say.fileDeclaresEntitiesOf,
      this.here(),
    );
  }

  instruction(target: string, place: Place): void {
    if (target !== 'xml-stylesheet') return;
    this.faults.leftOut(EXTERNAL, '?xml-stylesheet', place);
  }

  /** The next element begins here. */
  begin(place: Place): void {
    this.start = place;
  }

  open(tag: SaxesTagNS): void {
    this.depth++;
    this.elements++;
    this.check(tag);
    if (this.foreign > 0 || !isSvg(tag)) {
      this.foreign++;
      return;
    }
    const node: SvgNode = { name: tag.local, attributes: attributesOf(tag), parent: this.at, children: [], text: '', ...this.start };
    if (this.at === null) this.root = node;
    else this.at.children.push(node);
    this.at = node;
  }

  close(): void {
    this.depth--;
    if (this.foreign > 0) this.foreign--;
    else this.at = this.at?.parent ?? null;
  }

  addText(chunk: string): void {
    const { at } = this;
    if (this.foreign === 0 && (at?.name === 'style' || at?.name === 'title')) at.text += chunk;
  }

  done(): SvgNode {
    if (this.root === null) throw this.faults.refuse('shape.root', 'there is no <svg> element; choose an SVG file.');
    return this.root;
  }

  private check(tag: SaxesTagNS): void {
    const { faults } = this;
    if (this.elements > MAX_ELEMENTS) {
      throw faults.refuse('shape.too-many', say.thereAreMoreThan(MAX_ELEMENTS), this.here());
    }
    if (this.depth > MAX_DEPTH) {
      const here = this.here();
      throw faults.refuse(
        'shape.too-deep',
        say.elementsLieMoreThan(MAX_DEPTH, here),
        here,
      );
    }
    if (this.root === null && (tag.local !== 'svg' || !isSvg(tag))) {
      throw faults.refuse('shape.root', `the outermost element is <${quote(tag.name)}>, not <svg>; choose an SVG file.`, this.here());
    }
  }
}

function isSvg({ uri }: SaxesTagNS): boolean {
  return uri === SVG || uri === '';
}

function attributesOf(tag: SaxesTagNS): Map<string, string> {
  const all = Object.values(tag.attributes);
  const attributes = new Map<string, string>();
  for (const { uri, local, value } of all) if (uri === '') attributes.set(local, value);
  for (const { uri, local, value } of all) if (uri === XLINK && local === 'href' && !attributes.has('href')) attributes.set('href', value);
  return attributes;
}

/** Lines and columns of offsets asked for in rising order. */
function placesIn(text: string): (offset: number) => Place {
  let line = 1;
  let lineStart = 0;
  // Kept, so that a long line is searched once and not for each of its elements.
  let lineEnd = text.indexOf('\n');
  return (offset) => {
    while (lineEnd >= 0 && lineEnd < offset) {
      line++;
      lineStart = lineEnd + 1;
      lineEnd = text.indexOf('\n', lineStart);
    }
    return { line, column: offset - lineStart + 1 };
  };
}
