import type { say as english } from '../../en/recipe/chest.ts';
import { counted } from '../../language.ts';

export const say: typeof english = {
  and: (first, second) => `${first} und ${second}`,
  in: (screen, first) => `${screen} in ${first}`,
  pulls: (first, pulls) => `${first}, ${counted(pulls, { one: 'Druckgang', other: 'Druckgänge' })}`,
};
