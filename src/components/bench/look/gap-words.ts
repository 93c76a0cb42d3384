import { entryAt } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { WIDEST_TRAP_MM } from '../../../engine/order/gap-cover.ts';
import type { Gap } from '../../../engine/order/gaps.ts';
import { capital } from '../../../engine/words/language.ts';
import { say } from '../../words/en/bench/look.ts';
import { listed } from '../../words/plan-words.ts';
import type { OtherStack } from '../picture/compare-with.ts';

/** What a gap is called and told as, by the names of the drawer. */
export class GapWords {
  private readonly own: OtherStack;

  constructor(own: OtherStack) {
    this.own = own;
  }

  /** The screen, ink and place in the order of a pull. */
  nameOf(place: number): string {
    return say.inPull(this.screenOf(place), this.inkOf(place), place + 1);
  }

  /** Where two pulls meet, what could show there, and what to do about it. */
  sentences(gap: Gap): string {
    const { a, b, lengthMm, standsMm } = gap;
    const stands = roundTo(standsMm, 2) > 0 ? say.upToMmApart(roundTo(standsMm, 2)) : '';
    const first = this.nameOf(a);
    return say
      .andMeetAlong({
        first: capital(first),
        nameOf: this.nameOf(b),
        along: along(lengthMm),
        stands,
        shows: this.shows(gap),
        trap: this.trap(gap),
      })
      .trim();
  }

  private shows({ lengthMm, bareMm, opensMm, covers }: Gap): string {
    const wide = `${roundTo(opensMm, 2)} mm`;
    if (covers.length === 0) return say.upToOfBare(wide);
    const others = listed(covers.map((place) => say.pull(this.inkOf(place), place + 1)));
    const lie = say.lie(covers.length);
    if (bareMm === 0) return say.gapMayOpenBy(wide, others, lie);
    const share = bareMm < lengthMm ? say.alongOfIt(along(bareMm)) : '';
    return say.upToOfBarePaper(wide, share, others, lie);
  }

  private trap({ bareMm, opensMm, spread, noTrap }: Gap): string {
    if (bareMm === 0) return '';
    const wide = `${roundTo(opensMm, 2)} mm`;
    if (noTrap === null) return say.spreadBy(this.screenOf(spread), wide);
    if (noTrap.why === 'wide') {
      return say.trapOfWouldShow(wide, WIDEST_TRAP_MM);
    }
    return say.noTrapOfFits(wide, this.screenOf(noTrap.pull));
  }

  private screenOf(place: number): string {
    const { pulls, drawer } = this.own;
    return say.screen(drawer.screens.find(({ id }) => id === entryAt(pulls, place).screen)?.number ?? '?');
  }

  private inkOf(place: number): string {
    const { pulls, drawer } = this.own;
    return drawer.inks.find(({ id }) => id === entryAt(pulls, place).ink)?.name ?? say.inkThatIsGone;
  }
}

/** How many pairs only just meet, and how many of them over bare paper. */
export function gapsCounted(found: readonly Gap[]): string {
  const bare = found.filter(({ bareMm }) => bareMm > 0).length;
  const meet = say.pairsOfPullsOnly(found.length);
  if (bare === found.length) return say.overBarePaper(meet);
  return `${meet}; ${bare === 0 ? say.otherPullsCoverAll(found.length) : say.barePaperCouldShow(bare)}.`;
}

function along(mm: number): string {
  return `${roundTo(mm, mm < 10 ? 1 : 0)} mm`;
}
