import type { say as english } from '../../en/order/count.ts';

export const say: typeof english = {
  pullsThatOverlapIn: (pulls, edges) => `${pulls} Druckgänge, die sich an ${edges} Stellen überlappen, sind zu verflochten, um `,
  theirOrdersExactlyIn: (least, most) =>
    `ihre Reihenfolgen in einigen Sekunden genau zu zählen: es sind zwischen 10^${least} und 10^${most}; `,
  leavePullsOutOr: 'Druckgänge weglassen oder das ΔE erhöhen, unter dem ein Tausch frei ist.',
};
