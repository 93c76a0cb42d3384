import { type GoalVerdict, MADE_OVERPRINT_MM2, SOFTER_SHARE } from '../../../engine/lesson/check-goal.ts';
import type { GoalKind } from '../../../engine/lesson/goal-kinds.ts';
import type { LessonSheet } from '../../../engine/lesson/lesson-sheet.ts';
import { counted } from '../../ui/words.ts';

/** What a level is called, and what is to be done. */
interface LevelWords {
  title: string;
  task: string;
}

/** A level in words. @param pulls of the sheet that it is played on */
export function levelWords(kind: GoalKind, pulls: number): LevelWords {
  const orders = ['', 'one', 'two', 'six', '24', '120', '720'][pulls] ?? 'many';
  switch (kind) {
    case 'on-top':
      return { title: 'Which lies on top?', task: 'Look at where the two meet, and say which went down later.' };
    case 'alike':
      return {
        title: 'Two orders that look the same',
        task: 'Find two different orders of these pulls that print the same picture. Put one together and keep it, then the other.',
      };
    case 'found-back':
      return {
        title: 'The order, found back',
        task: 'Here is a print. In which order was it pulled? Put the pulls into an order that prints it.',
      };
    case 'overprint-made':
      return {
        title: 'An overprint colour, made',
        task: 'Change the inks, the order or the places until a colour appears that is no ink’s own.',
      };
    case 'overprint-avoided':
      return {
        title: 'An overprint colour, avoided',
        task: 'All shapes stay on each other, yet only the inks’ own colours are to be seen.',
      };
    case 'three-pictures':
      return {
        title: 'Exactly three pictures',
        task: `Change what you like until the ${orders} orders of these pulls print exactly three pictures.`,
      };
    case 'one-picture': {
      const title = `${orders.charAt(0).toUpperCase()}${orders.slice(1)} orders, one picture`;
      return { title, task: `Every shape still lies on another, yet all ${orders} orders are to print the same picture.` };
    }
    case 'less-contrast':
      return {
        title: 'Less contrast',
        task: 'Soften this print by its order and its inks, the shapes staying where they are, until its contrast of edges has fallen by a fifth.',
      };
  }
}

function areaOf(areaMm2: number): string {
  return `${Math.round(areaMm2).toLocaleString('en')} mm²`;
}

/** What a check found, in a sentence. */
export function verdictWords(kind: GoalKind, verdict: GoalVerdict, sheet: LessonSheet): string {
  const begin = verdict.done ? 'Yes: ' : 'Not yet: ';
  switch (verdict.why) {
    case 'pictures':
      return `${begin}the orders print ${counted(verdict.pictures, 'picture')}.`;
    case 'overprint': {
      if (verdict.areaMm2 < 0.5) return `${begin}there is no overprint colour.`;
      const enough = kind === 'overprint-made' && !verdict.done ? `; ${areaOf(MADE_OVERPRINT_MM2)} are asked for` : '';
      return `${begin}${areaOf(verdict.areaMm2)} are an overprint colour${enough}.`;
    }
    case 'contrast':
      return `${begin}the contrast of edges is ${Math.round(verdict.share * 100)} % of what it was${verdict.done ? '' : `; ${SOFTER_SHARE * 100} % is asked for`}.`;
    case 'off-sheet':
      return `Not yet: ${nameOf(verdict.pull, sheet)} hardly lies on the sheet; bring it back.`;
    case 'apart':
      return `Not yet: ${nameOf(verdict.pull, sheet)} no longer meets what it met; bring it back.`;
  }
}

/** The screen's name of a pull of the lesson. */
export function nameOf(pull: string, { pulls, studio }: LessonSheet): string {
  const screen = pulls.find(({ id }) => id === pull)?.screen;
  return studio.screens.find(({ id }) => id === screen)?.name ?? 'a screen that is gone';
}
