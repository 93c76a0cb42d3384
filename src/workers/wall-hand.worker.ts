import * as Comlink from 'comlink';
import { keepErrorFields } from './errors.ts';
import { WallHand } from './wall-hand.ts';

keepErrorFields();
const hand = new WallHand();

Comlink.expose({
  begin: hand.begin.bind(hand),
  draw: hand.draw.bind(hand),
  paint(variants: Parameters<WallHand['paint']>[0]) {
    const tiles = hand.paint(variants);
    const buffers = tiles.flatMap(({ fresh, colours, small }) => [colours.buffer, small.words.buffer, ...(fresh === null ? [] : [fresh.cells.buffer])]);
    return Comlink.transfer(tiles, buffers);
  },
});
