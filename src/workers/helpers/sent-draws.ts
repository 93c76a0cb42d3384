import * as Comlink from 'comlink';
import type { FirstDraw } from '../../engine/explore/search/first-draw.ts';
import type { Variant } from '../../engine/explore/types.ts';
import { type PackedPrints, PullPacker } from '../../engine/stack/packed-pulls.ts';
import { PackedVariant } from '../client/packed-variant.ts';

/** First draws as they cross: a search holds dozens of them, and as objects their pulls are most of what its young space grows by. */
export interface SentDraws {
  /** Null for a draw that came to nothing. */
  draws: ({ variant: Omit<Variant, 'pulls'>; image: string } | null)[];
  pulls: PackedPrints;
  /** Descriptors one after another, all of one length. */
  looks: Uint8Array<ArrayBuffer>;
}

/** Packs first draws, and hands their lists over in the place of having them copied. */
export function sentDraws(draws: readonly (FirstDraw | null)[]): SentDraws {
  const packer = new PullPacker();
  const length = draws.find((draw) => draw !== null)?.look.at.length ?? 0;
  const looks = new Uint8Array(length * draws.length);
  const heads = draws.map((draw, i) => {
    packer.add(draw?.variant.pulls ?? []);
    if (draw === null) return null;
    looks.set(draw.look.at, i * length);
    const { id, seed, index, key, strays } = draw.variant;
    return { variant: { id, seed, index, key, strays }, image: draw.look.image };
  });
  const pulls = packer.take();
  const buffers = [looks.buffer, pulls.words.buffer, pulls.reals.buffer, pulls.ends.buffer];
  return Comlink.transfer({ draws: heads, pulls, looks }, buffers);
}

/** First draws that came from a helper. */
export function receivedDraws({ draws, pulls, looks }: SentDraws): (FirstDraw | null)[] {
  const length = looks.length / draws.length;
  return draws.map(
    (draw, i) =>
      draw && {
        variant: new PackedVariant(draw.variant, pulls, i),
        look: { at: looks.subarray(i * length, (i + 1) * length), image: draw.image },
      },
  );
}
