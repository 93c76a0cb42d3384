import { defined } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { beyondSheet } from '../../shapes/place/beyond-sheet.ts';
import { screenOutline, screenRings } from '../../shapes/place/placed.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
import { prints } from '../measure/prints.ts';

/**
 * What a wall can be made with, but hardly as it is meant: screens that print nothing, shapes
 * outside the sheet, pulls on top of their like. Each in a sentence with its mend.
 * @param bench the base stack, of screens and inks that are in the studio
 * @returns problems 'note.…' that keep nothing from being made; where = `bench[i]` or 'drawer'
 */
export function printNotes(studio: Studio, bench: readonly Pull[]): Problem[] {
  const spans = new SpanCache(studio);
  const builder = new CellMapBuilder();
  const leavesInk = (pull: Pull): boolean => prints(pull, studio, spans, builder);
  const bare: number[] = [];
  const outside: number[] = [];
  const cut: number[] = [];
  bench.forEach((pull, i) => {
    const screen = studio.screens.find(({ id }) => id === pull.screen);
    if (screen === undefined) return;
    if (screen.placed.length === 0) bare.push(i);
    else if (!leavesInk(pull)) outside.push(i);
    else if (reachesOut(pull, studio)) cut.push(i);
  });
  const screenOf = (i: number): string => screenName(defined(bench[i]).screen, studio);
  const unused = studio.screens.filter(({ id }) => !bench.some((pull) => pull.screen === id));
  return [
    ...bare.map((i) => bareNote(i, screenOf(i))),
    ...outsideNotes(outside, screenOf),
    ...cutNotes(cut),
    ...alikeNotes(bench),
    ...blankNotes(unused.filter(({ id }) => !leavesInk(atRest(id))).map(({ number }) => number)),
  ];
}

function note(code: string, where: string, message: string): Problem {
  return { code: `note.${code}`, message, where };
}

function bareNote(i: number, screen: string): Problem {
  return note('no-shapes', `bench[${i}]`, say.pullPrintsNothingHas(i + 1, screen));
}

function outsideNotes(outside: readonly number[], screenOf: (i: number) => string): Problem[] {
  const [first] = outside;
  if (first === undefined) return [];
  const message =
    outside.length === 1
      ? say.pullPrintsNothingLies(first + 1, screenOf(first))
      : say.pullsPrintNothingTheir(list(outside.map((i) => i + 1)));
  return [note('outside', `bench[${first}]`, message)];
}

function cutNotes(cut: readonly number[]): Problem[] {
  const [first] = cut;
  if (first === undefined) return [];
  const pulls = list(cut.map((i) => i + 1));
  const message = cut.length === 1 ? say.pullReachesBeyondSheet(pulls) : say.pullsReachBeyondSheet(pulls);
  return [note('cut', `bench[${first}]`, message)];
}

function alikeNotes(bench: readonly Pull[]): Problem[] {
  const alike = new Map<string, number[]>();
  bench.forEach(({ screen, ink, dxMm, dyMm, turnDeg }, i) => {
    const key = JSON.stringify([screen, ink, dxMm, dyMm, turnDeg]);
    alike.set(key, [...(alike.get(key) ?? []), i]);
  });
  return [...alike.values()]
    .filter((same) => same.length > 1)
    .map((same) => note('alike', `bench[${same[0]}]`, say.pullsAreOneScreen(list(same.map((i) => i + 1)))));
}

function blankNotes(numbers: readonly number[]): Problem[] {
  if (numbers.length === 0) return [];
  const message = numbers.length === 1 ? say.screenPrintsNothingOn(list(numbers)) : say.screensPrintNothingOn(list(numbers));
  return [note('blank', 'drawer', message)];
}

function screenName(id: string, studio: Studio): string {
  const { number, name } = defined(studio.screens.find((screen) => screen.id === id));
  return say.screenNumber(number, name);
}

function reachesOut(pull: Pull, studio: Studio): boolean {
  const { paper } = studio;
  const screen = defined(studio.screens.find(({ id }) => id === pull.screen));
  return beyondSheet(screenOutline(screenRings(screen, studio.shapes), pull, paper), paper);
}

function atRest(screen: string): Pull {
  return { id: screen, screen, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
}

/** '1, 2 and 5'; long lists are cut short. */
function list(numbers: readonly number[]): string {
  if (numbers.length > 6) return say.andMore(numbers.slice(0, 5).join(', '), numbers.length - 5);
  if (numbers.length === 1) return String(numbers[0]);
  return say.and(numbers.slice(0, -1).join(', '), numbers.at(-1) ?? '');
}
