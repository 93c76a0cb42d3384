import type { Project } from './types.ts';

/**
 * The project that a newcomer finds: its first wall spreads from the order on the Bench to its reverse.
 * Apart from the demo itself, so that who has the demo finds its walls again.
 */
export function firstWall(project: Project): Project {
  return {
    ...project,
    explore: {
      ...project.explore,
      orderFrom: 0,
      orderTo: 1,
      leaveOut: 7,
      bringIn: 4,
      places: 'anywhere',
      onSheet: 0.7,
      turns: 'quarter',
      repeats: 2,
    },
  };
}
