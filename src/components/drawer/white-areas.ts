import { html, nothing } from 'lit';
import { entryAt } from '../../engine/base/at.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import '../ui/kit/select.ts';
import type { Option } from '../ui/kit/select.ts';
import { say } from '../words/en/drawer/room.ts';
import type { FilesRead } from './read-files.ts';

const WAYS: readonly Option<WhiteAs>[] = [
  { value: 'paper', label: say.holeAsItLooks },
  { value: 'ink', label: say.inkAsAnyColour },
  { value: 'nothing', label: say.nothingLeftOut },
];

/** Tells the ways apart in which one file was read. */
export function outlineKey({ id, widthMm, heightMm, rings }: Shape): string {
  return [id, widthMm, heightMm, ...rings.map((ring) => ring.length)].join(' ');
}

/**
 * Asks for each file with white areas what white is.
 * @param there the shapes as they are now, also after an undo
 * @param as what white was taken for, by `outlineKey`; else it is paper
 */
export function askWhite(
  { whites, shapes }: FilesRead,
  there: readonly Shape[],
  as: ReadonlyMap<string, WhiteAs>,
  pick: (at: number, white: WhiteAs) => void,
) {
  const wayOf = (id: string): WhiteAs => {
    const shape = there.find((one) => one.id === id);
    return (shape === undefined ? undefined : as.get(outlineKey(shape))) ?? 'paper';
  };
  if (whites.length === 0) return nothing;
  return html`<div class="row whites">
    ${whites.map(
      ({ at }) => html`<ps-select
        label=${say.whiteInIs(entryAt(shapes, at).name)}
        .value=${wayOf(entryAt(shapes, at).id)}
        .options=${WAYS}
        @pick=${(event: CustomEvent<WhiteAs>) => pick(at, event.detail)}
      ></ps-select>`,
    )}
  </div>`;
}
