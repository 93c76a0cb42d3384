import { speak } from '../../language.ts';

export const say = speak('engine/recipe/prints', {
  allOthers: 'All others',
  pinnedOfWall: (seed: string) => `Pinned, of wall “${seed}”`,
  pinnedFoundFromOther: 'Pinned, found from other prints',
  andMore: (known: string, ids: number) => `${known} and ${ids} more`,
  of: (names: string) => `Of ${names}`,
  without: (names: string) => `Without ${names}`,
  and: ' and ',
  from: (parents: string) => `From ${parents}`,
  with: (names: string) => `with ${names}`,
  withoutNames: (names: string) => `without ${names}`,
  sameScreens: (from: string) => `${from}, the same screens`,
});
