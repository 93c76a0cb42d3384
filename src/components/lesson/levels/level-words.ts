import { type GoalVerdict, MADE_OVERPRINT_MM2, SOFTER_SHARE } from '../../../engine/lesson/check-goal.ts';
import type { GoalKind } from '../../../engine/lesson/goal-kinds.ts';
import type { LessonSheet } from '../../../engine/lesson/lesson-sheet.ts';
import { capital, numberLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/lesson/levels.ts';

/** What a level is called, and what is to be done. */
interface LevelWords {
  title: string;
  task: string;
}

/** A level in words. @param pulls of the sheet that it is played on */
export function levelWords(kind: GoalKind, pulls: number): LevelWords {
  const orders = ['', say.one, say.two, say.six, '24', '120', '720'][pulls] ?? say.many;
  switch (kind) {
    case 'on-top':
      return { title: say.whichLiesOnTop, task: say.lookAtWhereTwo };
    case 'alike':
      return {
        title: say.twoOrdersThatLook,
        task: say.findTwoDifferentOrders,
      };
    case 'found-back':
      return {
        title: say.orderFoundBack,
        task: say.hereIsPrintIn,
      };
    case 'overprint-made':
      return {
        title: say.overprintColourMade,
        task: say.changeInksOrderOr,
      };
    case 'overprint-avoided':
      return {
        title: say.overprintColourAvoided,
        task: say.allShapesStayOn,
      };
    case 'three-pictures':
      return {
        title: say.exactlyThreePictures,
        task: say.changeWhatYouLike(orders),
      };
    case 'one-picture': {
      const title = say.ordersOnePicture(capital(orders));
      return { title, task: say.everyShapeStillLies(orders) };
    }
    case 'less-contrast':
      return {
        title: say.lessContrast,
        task: say.softenThisPrintBy,
      };
  }
}

function areaOf(areaMm2: number): string {
  return `${Math.round(areaMm2).toLocaleString(numberLocale())} mm²`;
}

/** What a check found, in a sentence. */
export function verdictWords(kind: GoalKind, verdict: GoalVerdict, sheet: LessonSheet): string {
  const begin = verdict.done ? say.yes : say.notYet;
  switch (verdict.why) {
    case 'pictures':
      return say.ordersPrintPictures(begin, verdict.pictures);
    case 'overprint': {
      if (verdict.areaMm2 < 0.5) return say.thereIsNoOverprint(begin);
      const enough = kind === 'overprint-made' && !verdict.done ? say.areAskedFor(areaOf(MADE_OVERPRINT_MM2)) : '';
      return say.areOverprintColour(begin, areaOf(verdict.areaMm2), enough);
    }
    case 'contrast':
      return say.contrastOfEdgesIs(begin, Math.round(verdict.share * 100), verdict.done ? '' : say.isAskedFor(SOFTER_SHARE * 100));
    case 'off-sheet':
      return say.notYetHardlyLies(nameOf(verdict.pull, sheet));
    case 'apart':
      return say.notYetNoLonger(nameOf(verdict.pull, sheet));
  }
}

/** The screen's name of a pull of the lesson. */
export function nameOf(pull: string, { pulls, studio }: LessonSheet): string {
  const screen = pulls.find(({ id }) => id === pull)?.screen;
  return studio.screens.find(({ id }) => id === screen)?.name ?? say.screenThatIsGone;
}
