import type { VeilProposal } from '../../../engine/explore/veil/veil-types.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/bench/veil.ts';
import { placeWords, veilWords } from './veil-words.ts';

/**
 * Puts a veil on the stack on the Bench, with what of it the drawer lacks, as one step; selects it.
 * @param taken ids that pulls had before, which stay theirs
 * @returns what a screen reader says, or null when it could not be put down and the store has told why
 */
export function addVeil(store: AppStore, proposal: VeilProposal, taken: ReadonlySet<string>): string | null {
  const { newInks, newShape, newScreen, veil, at } = proposal;
  const { drawer: studio, bench } = store.project;
  const words = veilWords(proposal, studio);
  let id = veil.id;
  for (let n = 2; taken.has(id) || bench.some((pull) => pull.id === id); n++) id = `${veil.id}-${n}`;
  if (!store.dispatch({ kind: 'lay-veil', inks: newInks, shape: newShape, screen: newScreen, pull: { ...veil, id }, at })) return null;
  store.select(id);
  return say.liesOver(words.ink, words.area, placeWords(at, store.project.bench.length));
}
