import { BufferImageSource } from 'pixi.js';
import type { Texel, TexelPage } from './texel-page.ts';

// Two bytes: the shader takes the first for the low one, as do all machines that browsers run on.
const TEXELS = {
  byte: { format: 'r8unorm', scaleMode: 'nearest' },
  word: { format: 'rg8unorm', scaleMode: 'nearest' },
  colour: { format: 'rgba8unorm', scaleMode: 'linear' },
  single: { format: 'rgba8unorm', scaleMode: 'nearest' },
} as const satisfies Record<Texel, unknown>;

/** A page as the graphics card takes it; it follows the page from then on. */
export function pageSource(page: TexelPage): BufferImageSource {
  if (page.follower instanceof BufferImageSource) return page.follower;
  const source = new BufferImageSource({
    resource: page.bytes,
    width: page.width,
    height: page.height,
    ...TEXELS[page.texel],
    alphaMode: 'no-premultiply-alpha',
    autoGarbageCollect: false,
  });
  page.follower = source;
  return source;
}
