import type { Project } from '../../engine/project/types.ts';

/** Without what walls note by themselves. */
function made({ seen: _seen, explore: { minDeltaE: _same, ...explore }, ...project }: Project): string {
  return JSON.stringify({ ...project, explore });
}

/** Whether a project is the demo as it comes, so that nothing is lost with it. */
export async function isUntouchedDemo(project: Project): Promise<boolean> {
  const { demo } = await import('../demo.ts');
  return made(project) === made(demo());
}
