import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/press/grid.ts';

export const say: typeof english = {
  done: 'fertig,',
  bed: (bed) => `Tisch ${bed}`,
  mount: 'einspannen',
  strokes: (strokes) => counted(strokes, { one: 'Rakelzug', other: 'Rakelzüge' }),
  day: (day) => `Tag ${day}`,
  setUpGrid: 'Raster der Einrichtungen',
  setUpsInTime: 'Einrichtungen in zeitlicher Folge und die Bögen, auf die jede gedruckt wird',
  setUpsAtPress: (cards, minutes, some) =>
    `${counted(cards, { one: 'Einrichtung', other: 'Einrichtungen' })}, ${minutes} an der Presse${some ? '. P Probedruck, O Zuschuss.' : ''}`,
  testSheetOfRun: 'Testbogen des Besuchs: jede Einrichtung wird zuerst auf ihm versucht',
  test: 'Test',
  sheet: 'Bogen',
  strokesCounts: (counts) => `${counts} Rakelzüge`,
};
