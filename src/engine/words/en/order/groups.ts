import { speak } from '../../language.ts';

export const say = speak('engine/order/groups', {
  sizeUnderWhichDifference: (minAreaMm2: number) =>
    `The size under which a difference does not count is ${minAreaMm2} mm²; give 0 or more.`,
  onePullWas: 'One pull was',
  pullsWere: (n: number) => `${n} pulls were`,
  chosenChooseTwoTo: (n: string) => `${n} chosen; choose two to six to see all their orders.`,
});
