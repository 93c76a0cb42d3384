import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { logSchema } from '../../../src/engine/log/log-schema.ts';
import { projectSchema } from '../../../src/engine/project/schema.ts';
import { recipeSchema } from '../../../src/engine/recipe/schema.ts';
import { planFileSchema } from '../../../src/engine/visitfile/plan-schema.ts';
import { setUpSchema } from '../../../src/engine/visitfile/set-up-link.ts';

interface Bounds {
  type?: string;
  minimum?: number;
  exclusiveMinimum?: number;
  maximum?: number;
  exclusiveMaximum?: number;
  maxItems?: number;
  maxLength?: number;
  pattern?: string;
  const?: unknown;
  enum?: unknown[];
  prefixItems?: unknown[];
}

/** Places of a schema where a number has no least or no most, or a list or text has no longest. */
function unbounded(schema: z.ZodType): string[] {
  const found: string[] = [];
  const walk = (node: unknown, place: string): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, minimum, exclusiveMinimum, maximum, exclusiveMaximum, maxItems, maxLength, ...rest } = node as Bounds;
    const fixed = rest.const !== undefined || rest.enum !== undefined;
    if ((type === 'number' || type === 'integer') && !fixed) {
      const [least, most] = [minimum ?? exclusiveMinimum, maximum ?? exclusiveMaximum];
      // Whole numbers bring the limits of exact ones with them; those are no bounds.
      if (least === undefined || least <= Number.MIN_SAFE_INTEGER) found.push(`${place}: no least`);
      if (most === undefined || most >= Number.MAX_SAFE_INTEGER) found.push(`${place}: no most`);
    }
    if (type === 'array' && maxItems === undefined && rest.prefixItems === undefined) found.push(`${place}: no longest list`);
    if (type === 'string' && maxLength === undefined && rest.pattern === undefined && !fixed) found.push(`${place}: no longest text`);
    for (const [key, value] of Object.entries(node)) walk(value, key === 'properties' ? place : `${place}.${key}`);
  };
  walk(z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }), '');
  return [...new Set(found)];
}

describe('what a file may hold', () => {
  it('should be bounded in every number, list and text', () => {
    const schemas = { recipe: recipeSchema, project: projectSchema, log: logSchema, plan: planFileSchema, 'set-up': setUpSchema };
    expect(Object.entries(schemas).flatMap(([name, schema]) => unbounded(schema).map((place) => name + place))).toEqual([]);
    // The walk itself sees what has no bounds.
    const loose = z.object({ n: z.number().min(0), i: z.int(), list: z.array(z.boolean()), text: z.string() });
    expect(unbounded(loose)).toEqual(['.n: no most', '.i: no least', '.i: no most', '.list: no longest list', '.text: no longest text']);
  });
});
