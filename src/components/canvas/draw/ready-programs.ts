import { DOMAdapter, type GlProgram, type ICanvas } from 'pixi.js';

/** It is asked so often whether the graphics card is done, ms. */
const ASK_MS = 15;
/** What the library would ask of a context for tests: GLSL ES 3.00, in which all shaders here are written, has highp in fragments (its specification, 4.7.4). */
const KNOWN = { isContextLost: () => false, getShaderPrecisionFormat: () => ({ precision: 23 }) };

/**
 * Makes programs without the context that the library makes to ask how finely fragments are worked out: on a machine without
 * graphics card the page waits a second for it.
 */
export function withoutTest<T>(make: () => T): T {
  const adapter = DOMAdapter.get();
  DOMAdapter.set({ ...adapter, createCanvas: () => ({ getContext: () => KNOWN }) as unknown as ICanvas });
  try {
    return make();
  } finally {
    DOMAdapter.set(adapter);
  }
}

/**
 * Has the graphics card build programs while the page goes on. The library asks at once whether a program is built, and so
 * has the page wait for it and for all that was to be drawn before; of one that was built before it hears at once.
 */
export async function buildAside(gl: WebGL2RenderingContext, programs: readonly GlProgram[]): Promise<void> {
  const parallel = gl.getExtension('KHR_parallel_shader_compile');
  if (parallel !== null) {
    const built = programs.map((program) => linked(gl, program));
    await until(() => built.every((each) => gl.getProgramParameter(each, parallel.COMPLETION_STATUS_KHR) === true || gl.isContextLost()));
    for (const each of built) gl.deleteProgram(each);
  }
  await drawn(gl);
}

/** Resolves when all that the graphics card was asked for is done: what is asked of it then is answered at once. */
export async function drawn(gl: WebGL2RenderingContext): Promise<void> {
  const done = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
  gl.flush();
  if (done === null) return;
  await until(() => gl.getSyncParameter(done, gl.SYNC_STATUS) === gl.SIGNALED || gl.isContextLost());
  gl.deleteSync(done);
}

function linked(gl: WebGL2RenderingContext, { vertex, fragment }: GlProgram): WebGLProgram {
  const program = gl.createProgram();
  for (const [type, source] of [
    [gl.VERTEX_SHADER, vertex ?? ''],
    [gl.FRAGMENT_SHADER, fragment ?? ''],
  ] as const) {
    const shader = gl.createShader(type);
    if (shader === null) continue;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
    gl.deleteShader(shader);
  }
  gl.linkProgram(program);
  return program;
}

async function until(ready: () => boolean): Promise<void> {
  while (!ready()) await new Promise((resolve) => setTimeout(resolve, ASK_MS));
}
