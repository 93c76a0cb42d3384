import { speak } from '../../language.ts';

export const say = speak('engine/recipe/chest', {
  and: (first: string, second: string) => `${first} and ${second}`,
  in: (screen: string, first: string) => `${screen} in ${first}`,
  pulls: (first: string, pulls: number) => `${first}, ${pulls} pulls`,
});
