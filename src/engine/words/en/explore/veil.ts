import { speak } from '../../language.ts';

export const say = speak('engine/explore/veil', {
  screenIsNotIn: (missing: string) => `The screen '${missing}' is not in the drawer; choose others for the veil.`,
  wholeArea: 'Whole area',
  letdownOf1To: (bad: number) => `A letdown of 1 to ${bad} cannot be mixed; give 0 to 1000 parts of base.`,
  inkIsNotIn: (id: string) => `The ink '${id}' is not in the drawer; choose others for the veil.`,
  stackHasNoPulls: 'The stack has no pulls to lay a veil over; put one on the Bench first.',
  numberOfIsGive: (what: string, value: number) => `The number of ${what} is ${value}; give a whole number of 1 or more.`,
});
