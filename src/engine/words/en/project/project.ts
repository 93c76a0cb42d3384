import { speak } from '../../language.ts';

export const say = speak('engine/project/project', {
  untitled: 'Untitled',
  isNoListMend: (name: string, path: string) => `${name}: ${path} is no list; mend that field and read the file again.`,
  drawer: (name: string) => `${name}, drawer`,
  recipe: (name: string, cut: string) => `${name}, recipe ${cut}`,
  targetNamesInkWhich: (fileName: string, cut: string) =>
    `${fileName}: target names the ink "${cut}", which is not in drawer.inks; add that ink or take it off the target.`,
  namesWhichIsNot: (fileName: string, where: string, cut: string) =>
    `${fileName}: ${where} names "${cut}", which is not among the recipes of the file; add it or take the edition out.`,
  isWhichEditionBefore: (fileName: string, where: string, cut: string) =>
    `${fileName}: ${where} is "${cut}", which an edition before it already is of; take one of the two out.`,
  eachInkOnce: 'each ink once',
});
