import { speak } from '../../language.ts';

export const say = speak('engine/order/count', {
  pullsThatOverlapIn: (pulls: number, edges: number) => `${pulls} pulls that overlap in ${edges} places are too entangled to count `,
  theirOrdersExactlyIn: (least: number, most: number) =>
    `their orders exactly in some seconds: there are between 10^${least} and 10^${most}; `,
  leavePullsOutOr: 'leave pulls out, or raise the ΔE under which a swap is free.',
});
