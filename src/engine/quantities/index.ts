export { inkGrams, stockGrams } from './ink.ts';
export { sheetsWithOvers } from './sheets.ts';
export type * from './types.ts';
