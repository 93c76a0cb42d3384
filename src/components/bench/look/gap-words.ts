import { entryAt } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { WIDEST_TRAP_MM } from '../../../engine/order/gap-cover.ts';
import type { Gap } from '../../../engine/order/gaps.ts';
import { counted } from '../../ui/words.ts';
import { capital, listed } from '../../words/plan-words.ts';
import type { OtherStack } from '../picture/compare-with.ts';

/** What a gap is called and told as, by the names of the drawer. */
export class GapWords {
  private readonly own: OtherStack;

  constructor(own: OtherStack) {
    this.own = own;
  }

  /** The screen, ink and place in the order of a pull. */
  nameOf(place: number): string {
    return `${this.screenOf(place)} in ${this.inkOf(place)} (pull ${place + 1})`;
  }

  /** Where two pulls meet, what could show there, and what to do about it. */
  sentences(gap: Gap): string {
    const { a, b, lengthMm, standsMm } = gap;
    const stands = roundTo(standsMm, 2) > 0 ? `, up to ${roundTo(standsMm, 2)} mm apart as drawn` : '';
    const first = this.nameOf(a);
    return `${capital(first)} and ${this.nameOf(b)} meet along ${along(lengthMm)}${stands}. ${this.shows(gap)} ${this.trap(gap)}`.trim();
  }

  private shows({ lengthMm, bareMm, opensMm, covers }: Gap): string {
    const wide = `${roundTo(opensMm, 2)} mm`;
    if (covers.length === 0) return `Up to ${wide} of bare paper could show.`;
    const others = listed(covers.map((place) => `${this.inkOf(place)} (pull ${place + 1})`));
    const lie = covers.length === 1 ? 'lies' : 'lie';
    if (bareMm === 0) return `The gap may open by ${wide}, but ${others} ${lie} there too: no bare paper shows.`;
    const share = bareMm < lengthMm ? ` along ${along(bareMm)} of it` : '';
    return `Up to ${wide} of bare paper could show${share}; elsewhere ${others} ${lie} there too.`;
  }

  private trap({ bareMm, opensMm, spread, noTrap }: Gap): string {
    if (bareMm === 0) return '';
    const wide = `${roundTo(opensMm, 2)} mm`;
    if (noTrap === null) return `Spread ${this.screenOf(spread)} by ${wide}.`;
    if (noTrap.why === 'wide') {
      return `A trap of ${wide} would show as a line of its own (over ${WIDEST_TRAP_MM} mm, from memory): let the two overlap in the drawing, or register more closely.`;
    }
    return `No trap of ${wide} fits: ${this.screenOf(noTrap.pull)} is narrower than that there; widen its drawing, or register more closely.`;
  }

  private screenOf(place: number): string {
    const { pulls, drawer } = this.own;
    return `screen ${drawer.screens.find(({ id }) => id === entryAt(pulls, place).screen)?.number ?? '?'}`;
  }

  private inkOf(place: number): string {
    const { pulls, drawer } = this.own;
    return drawer.inks.find(({ id }) => id === entryAt(pulls, place).ink)?.name ?? 'an ink that is gone';
  }
}

/** How many pairs only just meet, and how many of them over bare paper. */
export function gapsCounted(found: readonly Gap[]): string {
  const bare = found.filter(({ bareMm }) => bareMm > 0).length;
  const meet = `${counted(found.length, 'pair of pulls', 'pairs of pulls')} only just meet${found.length === 1 ? 's' : ''}`;
  if (bare === found.length) return `${meet}, over bare paper.`;
  return `${meet}; ${bare === 0 ? (found.length === 1 ? 'another pull covers the gap' : 'other pulls cover all the gaps') : `bare paper could show in ${bare} of them`}.`;
}

function along(mm: number): string {
  return `${roundTo(mm, mm < 10 ? 1 : 0)} mm`;
}
