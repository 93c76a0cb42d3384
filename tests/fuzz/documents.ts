import { type Change, LONGEST } from './changes.ts';

/** Values that a field of a document may get. */
const VALUES: readonly unknown[] = [
  0,
  -0,
  1,
  -1,
  2,
  0.5,
  1e-300,
  1e-9,
  1e-3,
  99,
  1e3,
  5e3,
  1e4,
  1e6,
  1e9,
  1e300,
  1e308,
  -1e308,
  2 ** 31,
  2 ** 53,
  '',
  'x',
  'x'.repeat(5000),
  '__proto__',
  'constructor',
  '\ud800',
  '<b>x</b>',
  null,
  true,
  [],
  {},
  [[]],
];

/** A parsed document with values, entries and lists in it changed: it is still JSON, and often still a document. */
export function changedDocument(text: string, plan: readonly Change[]): string {
  const document = JSON.parse(text) as unknown;
  for (const change of plan) {
    const holders = holdersOf(document);
    const holder = holders[Math.floor((change.at * holders.length) / 1e6)]!;
    const keys = Object.keys(holder);
    if (keys.length === 0) continue;
    changeIn(holder as Record<string, unknown>, keys[Math.floor((change.to * keys.length) / 1e6)]!, change);
  }
  return JSON.stringify(document);
}

/** All lists and objects, those that hold outlines' corners and curves' bands by one only. */
function holdersOf(document: unknown): object[] {
  const found: object[] = [];
  const open: unknown[] = [document];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (typeof next !== 'object' || next === null) continue;
    found.push(next);
    const inner = Object.values(next).filter((value) => typeof value === 'object' && value !== null);
    open.push(...(inner.length > 40 ? inner.slice(0, 1) : inner));
  }
  return found;
}

function changeIn(holder: Record<string, unknown>, key: string, { kind, what, times }: Change): void {
  const value = holder[key];
  const list = Array.isArray(holder) ? (holder as unknown[]) : null;
  if (kind === 'drop' && list !== null) list.splice(Number(key), 1);
  else if (kind === 'drop') delete holder[key];
  else if (kind === 'repeat' && list !== null && JSON.stringify(value).length * times < LONGEST)
    list.push(...Array.from({ length: times }, () => structuredClone(value)));
  else if (kind === 'move' && list !== null) list.reverse();
  else if (kind === 'sign' && typeof value === 'number') holder[key] = value * (1 + (what % 7) / 10);
  else if (kind === 'number' && typeof value === 'number') holder[key] = VALUES[what % 20];
  // A list of its own each time, or a later change would put it into itself, and into every document after.
  else holder[key] = structuredClone(VALUES[what % VALUES.length]);
}
