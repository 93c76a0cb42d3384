// The page that wall-frame.bench.ts opens: the same prints, once on the wall, once as a sprite each.
import { BufferImageSource, Container, Sprite, Texture, WebGLRenderer } from 'pixi.js';
import { WallScene } from '../../src/components/canvas/wall-scene.ts';
import { demo } from '../../src/components/demo.ts';
import { randomFrom } from '../../src/engine/base/random.ts';
import { toOffsetGrid } from '../../src/engine/base/units.ts';
import type { Pull } from '../../src/engine/stack/types.ts';
import type { WallBatch } from '../../src/workers/api/wall-api.ts';
import { StudioPictures } from '../../src/workers/jobs/pictures.ts';
import { WallPainter } from '../../src/workers/jobs/wall-painter.ts';

const ROWS = 160;
const SIZE = { width: 1440, height: 900 };

type Frame = (step: number) => void;

const { drawer, bench } = demo();

/** The demo's stack, each pull shifted on the 0.1 mm grid. */
function shifted(count: number): Pull[][] {
  const random = randomFrom('wall frames');
  const shift = (): number => toOffsetGrid((random.int(121) - 60) / 10);
  return Array.from({ length: count }, () => random.shuffle(bench).map((pull) => ({ ...pull, dxMm: shift(), dyMm: shift() })));
}

/** A frame of the wall itself, its own drawing called by hand. */
async function wall(stacks: readonly Pull[][]): Promise<{ frame: Frame; gl: WebGL2RenderingContext }> {
  let next: FrameRequestCallback = () => {};
  window.requestAnimationFrame = (draw) => {
    next = draw;
    return 1;
  };
  const scene = new WallScene();
  const holder = document.body.appendChild(document.createElement('div'));
  holder.append(...scene.canvases);
  const painter = new WallPainter(new StudioPictures(drawer), { rows: ROWS, relative: true });
  const batch: WallBatch = { maps: [], tiles: [], found: stacks.length, asked: stacks.length };
  stacks.forEach((pulls, index) => {
    const { fresh, ...tile } = painter.tile(pulls);
    if (fresh !== null) batch.maps.push(fresh);
    batch.tiles.push({ variant: { id: String(index), seed: '', index, pulls, key: String(index) }, look: '', ...tile });
  });
  scene.resize(SIZE.width, SIZE.height, 1);
  scene.begin(stacks.length, drawer.paper.widthMm / drawer.paper.heightMm);
  scene.add(batch);
  await scene.toCard();
  if (scene.visible().length !== stacks.length) throw new Error(`only ${scene.visible().length} prints are in view`);
  return {
    frame: (step) => {
      scene.steering.panBy(step % 2 === 0 ? 1 : -1, 0);
      next(performance.now());
    },
    gl: scene.canvases[0]!.getContext('webgl2')!,
  };
}

/** A frame of one bitmap sprite a print, as large as the wall's prints are. */
async function sprites(stacks: readonly Pull[][]): Promise<{ frame: Frame; gl: WebGL2RenderingContext }> {
  const renderer = new WebGLRenderer();
  await renderer.init({ ...SIZE, antialias: false, backgroundAlpha: 0, preferWebGLVersion: 2, gcActive: false });
  document.body.appendChild(document.createElement('div')).append(renderer.canvas);
  const pictures = new StudioPictures(drawer);
  const stage = new Container();
  const aspect = drawer.paper.widthMm / drawer.paper.heightMm;
  const columns = Math.ceil(Math.sqrt((stacks.length * SIZE.width) / SIZE.height / aspect));
  const width = SIZE.width / columns;
  stacks.forEach((pulls, index) => {
    const { widthPx, heightPx, pixels } = pictures.thumbnail({ pulls, heightPx: ROWS, relative: true });
    const source = new BufferImageSource({
      resource: new Uint8Array(pixels.buffer),
      width: widthPx,
      height: heightPx,
      format: 'rgba8unorm',
      scaleMode: 'linear',
    });
    const sprite = new Sprite(new Texture({ source }));
    sprite.setSize(width * 0.85, (width * 0.85) / aspect);
    sprite.position.set((index % columns) * width, (Math.floor(index / columns) * width) / aspect);
    stage.addChild(sprite);
  });
  return {
    frame: (step) => {
      stage.x = step % 2;
      renderer.render({ container: stage });
    },
    gl: (renderer.canvas as HTMLCanvasElement).getContext('webgl2')!,
  };
}

/** Makes the prints, both ways; `frames` then draws them. */
async function prepare(count: number): Promise<void> {
  const stacks = shifted(count);
  const rivals = { sprites: await sprites(stacks), wall: await wall(stacks) };
  const pixel = new Uint8Array(4);
  const frames = (name: keyof typeof rivals, steps: number): number => {
    const { frame, gl } = rivals[name];
    let pageMs = 0;
    for (let step = 0; step < steps; step++) {
      const start = performance.now();
      frame(step);
      pageMs += performance.now() - start;
      // Reading a pixel back waits until all is drawn.
      gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    }
    return pageMs / steps;
  };
  Object.assign(window, { frames });
}

Object.assign(window, { prepare });
