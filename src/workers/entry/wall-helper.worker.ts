import * as Comlink from 'comlink';
import { serve } from '../api/serve.ts';
import { sentDraws } from '../helpers/sent-draws.ts';
import { WallHelper } from '../helpers/wall-helper.ts';

const helper = new WallHelper();

serve({
  begin: helper.begin.bind(helper),
  draw: (from: number, count: number) => sentDraws(helper.draw(from, count)),
  paint(variants: Parameters<WallHelper['paint']>[0]) {
    const tiles = helper.paint(variants);
    const buffers = tiles.flatMap(({ fresh, colours, small }) => [
      colours.buffer,
      small.words.buffer,
      ...(fresh === null ? [] : [fresh.cells.buffer]),
    ]);
    return Comlink.transfer(tiles, buffers);
  },
});
