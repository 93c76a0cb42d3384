import { SaxesParser } from 'saxes';
import type { FaultList, Place } from './faults.ts';
import { quote } from './faults.ts';
import { MAX_DEPTH, MAX_ELEMENTS } from './limits.ts';

const SVG = 'http://www.w3.org/2000/svg';
const XLINK = 'http://www.w3.org/1999/xlink';

/** An element of SVG; elements of other vocabularies are dropped with all inside them. */
export interface SvgNode extends Place {
  name: string;
  /** By local name; `xlink:href` counts as `href` where there is no plain one. */
  attributes: ReadonlyMap<string, string>;
  parent: SvgNode | null;
  children: SvgNode[];
  /** Only text straight inside. */
  text: string;
}

/**
 * Reads XML strictly, without ever expanding entities of the file's own.
 * @throws FileFault when the text is not well-formed, not SVG, or past a cap
 */
export function parseTree(text: string, faults: FaultList): SvgNode {
  const parser = new SaxesParser({
    xmlns: true,
    // A forgotten declaration does no harm here: all but SVG and xlink is dropped anyway.
    resolvePrefix: (prefix: string) => (prefix === '' ? '' : prefix === 'xlink' ? XLINK : `undeclared:${prefix}`),
  });
  const here = (): string => `line ${parser.line}, column ${parser.column + 1}`;
  let root: SvgNode | null = null;
  let at: SvgNode | null = null;
  let start: Place = { line: 1, column: 1 };
  /** Depth inside an element of another vocabulary. */
  let foreign = 0;
  let depth = 0;
  let elements = 0;

  parser.on('error', (error) => {
    const what = quote(error.message.replace(/^\d+:\d+: /u, ''), 80).replace(/\.$/u, '');
    throw faults.refuse(
      'shape.xml',
      `the file breaks off or is not well-formed at ${here()} (${what}); save it again as plain SVG.`,
      here(),
    );
  });
  parser.on('doctype', (doctype) => {
    if (/<!ENTITY/iu.test(doctype)) {
      throw faults.refuse(
        'shape.entities',
        'the file declares entities of its own, which are not read; save it again as plain SVG.',
        here(),
      );
    }
  });
  parser.on('processinginstruction', ({ target }) => {
    if (target !== 'xml-stylesheet') return;
    const place = { line: parser.line, column: 1 };
    faults.leftOut('shape.external', '?xml-stylesheet', place, 'names another file, which is not fetched; put the styles into this one.');
  });
  const placeOf = placesIn(text);
  parser.on('opentagstart', () => {
    // The parser is past the name by now, perhaps on the next line.
    start = placeOf(text.lastIndexOf('<', parser.position - 1));
  });
  parser.on('opentag', (tag) => {
    depth++;
    elements++;
    if (elements > MAX_ELEMENTS) {
      throw faults.refuse('shape.too-many', `there are more than ${MAX_ELEMENTS} elements; simplify the drawing.`, here());
    }
    if (depth > MAX_DEPTH) {
      throw faults.refuse('shape.too-deep', `elements lie more than ${MAX_DEPTH} deep inside each other at ${here()}; ungroup the drawing.`, here());
    }
    if (root === null && (tag.local !== 'svg' || (tag.uri !== SVG && tag.uri !== ''))) {
      throw faults.refuse('shape.root', `the outermost element is <${quote(tag.name)}>, not <svg>; choose an SVG file.`, here());
    }
    if (foreign > 0 || (tag.uri !== SVG && tag.uri !== '')) {
      foreign++;
      return;
    }
    const attributes = new Map<string, string>();
    for (const attribute of Object.values(tag.attributes)) {
      if (attribute.uri === '') attributes.set(attribute.local, attribute.value);
    }
    for (const attribute of Object.values(tag.attributes)) {
      if (attribute.uri === XLINK && attribute.local === 'href' && !attributes.has('href')) {
        attributes.set('href', attribute.value);
      }
    }
    const node: SvgNode = { name: tag.local, attributes, parent: at, children: [], text: '', ...start };
    if (at === null) root = node;
    else at.children.push(node);
    at = node;
  });
  parser.on('closetag', () => {
    depth--;
    if (foreign > 0) foreign--;
    else at = at?.parent ?? null;
  });
  const addText = (chunk: string): void => {
    if (foreign === 0 && at?.name === 'style') at.text += chunk;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);

  parser.write(text).close();
  if (root === null) throw faults.refuse('shape.root', 'there is no <svg> element; choose an SVG file.');
  return root;
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
