import type { say as english } from '../../en/recipe/prints.ts';

export const say: typeof english = {
  allOthers: 'Alle anderen',
  pinnedOfWall: (seed) => `Angeheftet, von der Wand „${seed}“`,
  pinnedFoundFromOther: 'Angeheftet, aus anderen Drucken gefunden',
  andMore: (known, ids) => `${known} und ${ids} weitere`,
  of: (names) => `Von ${names}`,
  without: (names) => `Ohne ${names}`,
  and: ' und ',
  from: (parents) => `Aus ${parents}`,
  with: (names) => `mit ${names}`,
  withoutNames: (names) => `ohne ${names}`,
  sameScreens: (from) => `${from}, dieselben Siebe`,
};
