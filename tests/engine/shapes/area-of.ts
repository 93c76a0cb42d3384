import { outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';

/** A page of 100 × 100 mm whose units are mm. */
export function page(inside: string, attributes = ''): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100" ${attributes}>${inside}</svg>`;
}

/** Filled area, mm², and the codes of the sentences. */
export function read(svg: string): { areaMm2: number; codes: string[] } {
  const { shapes, problems } = readShapes(svg, 'test.svg');
  return {
    areaMm2: shapes.length === 0 ? 0 : outlineArea(shapes[0]!),
    codes: problems.map((problem) => problem.code),
  };
}
