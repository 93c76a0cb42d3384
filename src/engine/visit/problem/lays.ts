import type { Pull } from '../../stack/types.ts';

/** Where a pull lies on its sheet. */
export type Lay = Pick<Pull, 'dxMm' | 'dyMm' | 'turnDeg'>;

/** Names an offset and turn, for the planner. */
export function layText({ dxMm, dyMm, turnDeg }: Lay): string {
  return JSON.stringify([dxMm, dyMm, turnDeg]);
}

/** The offset and turn that a text of `layText` names. */
export function layOfText(text: string): Lay {
  const [dxMm, dyMm, turnDeg] = JSON.parse(text) as [number, number, number];
  return { dxMm, dyMm, turnDeg };
}

/**
 * Which offsets of a frame are one lay: those that lie nearer to each other than the table holds
 * register cannot be told apart on it. The offset that is used most stands for those around it.
 * A turn moves the corners much further than it moves the middle, so turned pulls stay apart.
 */
export class Lays {
  private readonly standsFor = new Map<string, string>();

  /**
   * @param pulls of all sheets with the name of their frame and how many sheets print them
   * @param registrationMm register that the table holds; 0 keeps all offsets apart
   */
  constructor(pulls: Iterable<{ screen: string; lay: Lay; sheets: number }>, registrationMm: number) {
    const used = new Map<string, Map<string, { lay: Lay; sheets: number }>>();
    for (const { screen, lay, sheets } of pulls) {
      let own = used.get(screen);
      if (own === undefined) used.set(screen, (own = new Map()));
      const text = layText(lay);
      const known = own.get(text);
      if (known === undefined) own.set(text, { lay, sheets });
      else known.sheets += sheets;
    }
    for (const [screen, own] of used) {
      const heads: Lay[] = [];
      for (const { lay } of [...own.values()].sort((a, b) => b.sheets - a.sheets || (layText(a.lay) < layText(b.lay) ? -1 : 1))) {
        const head = heads.find((other) => isNear(other, lay, registrationMm));
        if (head === undefined) heads.push(lay);
        this.standsFor.set(JSON.stringify([screen, layText(lay)]), layText(head ?? lay));
      }
    }
  }

  /** The text of the lay that a pull through a frame belongs to; its own when the visit has none near. */
  textOf(screen: string, lay: Lay): string {
    const text = layText(lay);
    return this.standsFor.get(JSON.stringify([screen, text])) ?? text;
  }
}

/** Whether two offsets of the same turn lie nearer than the table holds register. */
function isNear(one: Lay, other: Lay, registrationMm: number): boolean {
  if (one.turnDeg !== other.turnDeg) return false;
  // On the 0.1 mm grid: rounding keeps binary dust from telling 0.5 mm from 0.5 mm.
  const tenths = Math.hypot(Math.round(10 * (one.dxMm - other.dxMm)), Math.round(10 * (one.dyMm - other.dyMm)));
  return tenths < 10 * registrationMm - 1e-9;
}
