import { WorkerEnded } from './desk.ts';
import { EngineClient } from './engine-client.ts';
import { StorageClient } from './storage-client.ts';
import { WallToolsClient } from './wall-tools-client.ts';

/** The kinds of work that have a worker of their own, so that a long wall never holds up the picture on the Bench; files have file-reader.ts. */
export type EngineWork = 'picture' | 'wall' | 'plan' | 'lesson';

/** What is asked for now and then has no worker in between. */
const REST_MS: Partial<Record<EngineWork, number>> = { plan: 20_000, lesson: 20_000 };

/** The same while a wall of many prints is found. */
const BESIDE_MS = 3000;

const engines = new Map<EngineWork, EngineClient>();

/** The worker for a kind of work; it starts when first asked. */
export function engineFor(kind: EngineWork): EngineClient {
  let found = engines.get(kind);
  if (found === undefined) {
    found = new EngineClient(REST_MS[kind]);
    engines.set(kind, found);
  }
  return found;
}

/**
 * The worker that saves.
 * @param restarted called when another had to take the place of one that died, and has done its work
 */
export function openStorage(restarted: () => void): StorageClient {
  return new StorageClient(restarted);
}

let tools: WallToolsClient | undefined;

/** The worker for what is done with prints that hang; it starts when first asked. */
export function wallTools(): WallToolsClient {
  tools ??= new WallToolsClient();
  return tools;
}

/** While a wall of many prints is found, other workers soon end where they have nothing to do: each takes 10 to 20 MB. */
export function restBeside(largeWall: boolean): void {
  const restMs = largeWall ? BESIDE_MS : undefined;
  engines.get('picture')?.restAfter(restMs);
  tools?.restAfter(restMs);
}

/** Whether the work failed because its worker died, so that the same may be asked once more. */
export function askedInVain(error: unknown): boolean {
  return error instanceof WorkerEnded;
}

/** What an error that came from a worker says to the user. */
export function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
