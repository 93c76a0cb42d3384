/** What may not change when the explorer moves; pulls are named by their id in the base stack. */
export type Hold =
  | { kind: 'first'; pull: string }
  | { kind: 'last'; pull: string }
  | { kind: 'place'; pull: string }
  | { kind: 'ink'; pull: string }
  | { kind: 'out'; pull: string }
  /** Keeps the offset and turn that it has in the base stack. */
  | { kind: 'lies'; pull: string }
  /** `pull` goes down before `other`. */
  | { kind: 'before'; pull: string; other: string };
