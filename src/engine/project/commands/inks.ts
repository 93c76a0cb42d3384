import { current, type Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { CARD_BLACK, CARD_WHITE } from '../../ink/characterise/card.ts';
import { coloursOn } from '../../ink/characterise/characterise.ts';
import { reread } from '../../ink/characterise/reread.ts';
import { measuredAgain } from '../../ink/drift/drift.ts';
import { checkSurface, checkTrapping, type Surface, type Trapping } from '../../ink/film/printing.ts';
import type { TargetFit } from '../../ink/fit/fit-target.ts';
import { remixed } from '../../ink/mix/remix.ts';
import { namedInks } from '../../ink/target/target.ts';
import type { Ink, InkMeasurement, Paper } from '../../ink/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/project/commands.ts';
import { forgetInk } from '../forget.ts';
import type { Project, Target } from '../types.ts';
import { find, indexOf, refuseInUse, removeById, requireFree, unpin } from './checks.ts';
import { fieldsChanged, type RulesOf } from './rule.ts';

/** What can be done to inks, paper and the target printed of them. */
export type InksCommand =
  | { kind: 'add-ink'; ink: Ink }
  | { kind: 'add-inks'; inks: Ink[] }
  | { kind: 'change-ink'; ink: Ink }
  | { kind: 'change-inks'; inks: Ink[] }
  | { kind: 'remove-ink'; ink: string }
  | { kind: 'set-paper'; paper: Paper }
  | { kind: 'set-stroke-gain'; strokeGain: number }
  | { kind: 'set-surface'; surface: Surface }
  | { kind: 'set-trapping'; trapping: Trapping }
  | { kind: 'take-target-fit'; fit: TakenFit }
  | { kind: 'measure-ink'; ink: string; measurement: InkMeasurement }
  | { kind: 'set-target'; target: Target };

/**
 * Puts inks on the shelf, and those that are no stock into the wall's palette.
 * @throws EngineError 'command.double' when an id is taken, 'command.mix' for a mix of mixes
 */
export function addInks(draft: Draft<Project>, added: readonly Ink[]): void {
  const { inks } = draft.drawer;
  for (const ink of added) {
    requireFree(inks, ink, 'ink');
    requireMix(inks, ink);
    inks.push(ink);
    if (ink.stock !== true) draft.explore.palette.push(ink.id);
  }
}

/** Mixes of the inks that change are mixed again, unless the command changes them itself. */
function changeInks(studio: Draft<Studio>, inks: readonly Ink[]): void {
  const before = current(studio.inks);
  for (const ink of inks) {
    requireMix(studio.inks, ink);
    // The whole ink, so that fields which the new one leaves out are gone.
    studio.inks[indexOf(studio.inks, ink.id, 'ink')] = ink;
  }
  const own = new Set(inks.map(({ id }) => id));
  for (const mixed of remixed(before, current(studio.inks), studio.surface)) {
    if (!own.has(mixed.id)) studio.inks[indexOf(studio.inks, mixed.id, 'ink')] = mixed;
  }
}

/** Inks keep what they show over the card; their curves are found again. */
function setSurface(studio: Draft<Studio>, surface: Surface): void {
  checkSurface(surface);
  for (const ink of current(studio.inks)) {
    studio.inks[indexOf(studio.inks, ink.id, 'ink')] = reread(ink, studio.surface, surface);
  }
  studio.surface = { k1: surface.k1, k2: surface.k2 };
}

/** What of a target's fit is taken. */
type TakenFit = Pick<TargetFit, 'inks' | 'trapping' | 'surface' | 'looDeltaE'>;

/** Inks of the fit get its curves; the others go on showing over the card what they did. */
function takeFit(studio: Draft<Studio>, { inks, trapping, surface, looDeltaE }: TakenFit): void {
  checkTrapping(trapping);
  const fitted = new Map(inks.map((found) => [found.id, found]));
  for (const id of fitted.keys()) find(studio.inks, id, 'ink');
  setSurface(studio, surface);
  // Pairs that were typed stay where the target held one of their inks only.
  const typed = (studio.trapping?.pairs ?? []).filter(({ under, over }) => !fitted.has(under) || !fitted.has(over));
  const pairs = [...typed.map((pair) => ({ ...pair })), ...(trapping.pairs ?? [])];
  studio.trapping = { factor: trapping.factor, ...(pairs.length === 0 ? {} : { pairs }) };
  changeInks(
    studio,
    current(studio.inks).flatMap((ink) => {
      const found = fitted.get(ink.id);
      return found === undefined ? [] : [fittedTo(ink, found, { surface, looDeltaE })];
    }),
  );
}

function fittedTo(
  ink: Ink,
  { kx, sx, squares }: TakenFit['inks'][number],
  { surface, looDeltaE }: Pick<TakenFit, 'surface' | 'looDeltaE'>,
): Ink {
  const { fit: _, ...rest } = ink;
  const told = Number.isFinite(looDeltaE) ? { fit: { looDeltaE, squares } } : {};
  return { ...rest, basis: 'measured', ...coloursOn({ kx, sx }, CARD_WHITE, CARD_BLACK, surface), kx: [...kx], sx: [...sx], ...told };
}

function removeInk(draft: Draft<Project>, ink: string): void {
  const { drawer: studio } = draft;
  refuseInUse(draft, (pull) => pull.ink === ink, 'ink');
  const mixed = mixOf(studio.inks, ink);
  if (mixed !== undefined) {
    throw new EngineError('command.in-use', say.inkIsWeighedInto(mixed.name));
  }
  removeById(studio.inks, ink, 'ink');
  forgetInk(draft.explore, ink);
  unpin(draft, (pull) => pull.ink === ink);
  const { trapping } = studio;
  if (trapping?.pairs !== undefined) trapping.pairs = trapping.pairs.filter(({ under, over }) => under !== ink && over !== ink);
  if (draft.target !== undefined) draft.target = withoutInk(draft.target, ink);
}

function withoutInk({ inks, squares, few }: Target, ink: string): Target {
  return {
    inks: inks.filter((id) => id !== ink),
    squares: squares.filter(({ first, over }) => first !== ink && over !== ink),
    ...(few === undefined ? {} : { few: few.filter(({ films }) => !films.includes(ink)) }),
  };
}

/** Mixes are weighed from stock inks only: each must be there, and be no mix and in none if it becomes one. */
function requireMix(inks: readonly Ink[], ink: Ink): void {
  if (ink.mix === undefined) return;
  for (const part of ink.mix) {
    const stock = find([...inks], part.ink, 'ink');
    if (stock.mix !== undefined || stock.id === ink.id) {
      throw new EngineError('command.mix', say.mixNamesWhichIs(ink.name, stock.name));
    }
  }
  const mixed = mixOf(inks, ink.id);
  if (mixed !== undefined) {
    throw new EngineError('command.mix', say.isWeighedIntoMix(ink.name, mixed.name));
  }
}

/** A mix that an ink is weighed into. */
function mixOf(inks: readonly Ink[], id: string): Ink | undefined {
  return inks.find((ink) => ink.mix?.some((part) => part.ink === id));
}

/** How it is done. */
export const INKS_RULES: RulesOf<InksCommand> = {
  'add-ink': {
    label: say.addInk,
    change: (draft, { ink }) => addInks(draft, [ink]),
  },
  'add-inks': {
    label: say.addInks,
    change: (draft, { inks }) => addInks(draft, inks),
  },
  'change-ink': {
    label: say.changeInk,
    mergeKey: ({ kind, ink }, { drawer: studio }) =>
      `${kind}:${ink.id}:${fieldsChanged(
        studio.inks.find(({ id }) => id === ink.id),
        ink,
      )}`,
    change: ({ drawer: studio }, { ink }) => changeInks(studio, [ink]),
  },
  'change-inks': {
    label: say.changeInks,
    change: ({ drawer: studio }, { inks }) => changeInks(studio, inks),
  },
  'remove-ink': {
    label: say.removeInk,
    change: (draft, { ink }) => removeInk(draft, ink),
  },
  'set-paper': {
    label: say.changePaper,
    change({ drawer: studio }, { paper }) {
      studio.paper = paper;
    },
  },
  'set-stroke-gain': {
    label: say.changeWhatFurtherStroke,
    mergeKey: ({ kind }) => kind,
    change({ drawer: studio }, { strokeGain }) {
      if (!(strokeGain >= 0 && strokeGain <= 1)) {
        throw new EngineError('command.stroke-gain', say.furtherStrokeAddsBetween);
      }
      studio.strokeGain = strokeGain;
    },
  },
  'set-surface': {
    label: say.changeHowInksWere,
    mergeKey: ({ kind }) => kind,
    change: ({ drawer: studio }, { surface }) => setSurface(studio, surface),
  },
  'set-trapping': {
    label: say.changeHowThickFilm,
    mergeKey: ({ kind }) => kind,
    change({ drawer: studio }, { trapping }) {
      checkTrapping(trapping);
      for (const { under, over } of trapping.pairs ?? []) for (const id of [under, over]) find(studio.inks, id, 'ink');
      studio.trapping = trapping;
    },
  },
  'take-target-fit': {
    label: say.takeWhatTargetTold,
    change: ({ drawer: studio }, { fit }) => takeFit(studio, fit),
  },
  'measure-ink': {
    label: say.measureInkAgain,
    change({ drawer: studio }, { ink: id, measurement }) {
      changeInks(studio, [measuredAgain(current(studio).inks[indexOf(studio.inks, id, 'ink')] as Ink, measurement)]);
    },
  },
  'set-target': {
    label: say.changeTarget,
    mergeKey: ({ kind }) => kind,
    change(draft, { target }) {
      for (const id of namedInks(target)) find(draft.drawer.inks, id, 'ink');
      draft.target = target;
    },
  },
};
