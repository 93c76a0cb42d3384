// The page forbids code made from text; this makes Pixi do without.
import 'pixi.js/unsafe-eval';
import 'pixi.js/mesh';
import { Ticker, WebGLRenderer } from 'pixi.js';

/**
 * Makes the renderer of a wall, with a canvas of its own; it draws only when asked to.
 * @returns null when the browser gives no WebGL 2
 */
export async function wallRenderer(): Promise<WebGLRenderer | null> {
  const renderer = new WebGLRenderer();
  // Nothing here moves by itself, so nothing of Pixi's may wake the page sixty times a second.
  Ticker.system.autoStart = false;
  Ticker.shared.autoStart = false;
  const ready = renderer.init({
    width: 1,
    height: 1,
    antialias: false,
    backgroundAlpha: 0,
    preferWebGLVersion: 2,
    autoDensity: true,
    gcActive: false,
    // Of what Pixi would load besides, only meshes are needed.
    skipExtensionImports: true,
  });
  try {
    await ready;
  } catch (error) {
    if (document.createElement('canvas').getContext('webgl2') !== null) throw error;
    return null;
  }
  if (renderer.context.webGLVersion !== 2) {
    renderer.destroy();
    return null;
  }
  Ticker.system.stop();
  return renderer;
}
