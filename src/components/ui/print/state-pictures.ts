import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { defined } from '../../../engine/base/at.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor, sentenceOf } from '../../../workers/client/client.ts';
import { say } from '../../words/en/ui/print.ts';
import { recipeStudio } from './recipe-studio.ts';

/** Rows of a state picture: sharp at 60 mm on paper and on a tablet's card. */
const ROWS = 520;

interface Wanted {
  recipe: Recipe;
  pulls: readonly Pull[];
  key: string;
  relative: boolean;
}

/**
 * Pictures of recipes and their states as image addresses: an image, unlike a canvas, is kept
 * compressed and prints on its own. One is drawn at a time, so that the Bench never waits for them.
 */
export class StatePictures implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly paused: () => boolean;
  private readonly relative: () => boolean;
  private readonly tell: (sentence: string) => void;
  private readonly made = new Map<Recipe, Map<string, string | null>>();
  private queue: Wanted[] = [];
  private busy = false;
  private waiting: { resolve: () => void; onLeft: ((left: number) => void) | undefined }[] = [];

  /**
   * @param paused whether drawing shall wait, as while the room is not entered
   * @param relative whether the paper is shown white
   * @param tell hears why a picture could not be drawn
   */
  constructor(host: ReactiveControllerHost, paused: () => boolean, relative: () => boolean, tell: (sentence: string) => void) {
    this.host = host;
    this.paused = paused;
    this.relative = relative;
    this.tell = tell;
    host.addController(this);
  }

  hostUpdated(): void {
    if (!this.paused()) void this.work();
  }

  /** @returns the address of the picture, or null while it is drawn */
  of(recipe: Recipe, pulls: readonly Pull[]): string | null {
    let known = this.made.get(recipe);
    if (known === undefined) {
      known = new Map();
      this.made.set(recipe, known);
    }
    const relative = this.relative();
    // By all of the pulls: a sheet as it was pulled has their ids, but not always their inks and offsets.
    const key = `${relative} ${textOf(pulls)}`;
    const url = known.get(key);
    if (url !== undefined) return url;
    known.set(key, null);
    this.queue.push({ recipe, pulls, key, relative });
    // A child of the host asks after the host was updated.
    queueMicrotask(() => this.hostUpdated());
    return null;
  }

  /**
   * Resolves when nothing is left to draw.
   * @param onLeft gets how many are left, after each
   */
  settled(onLeft?: (left: number) => void): Promise<void> {
    if (!this.busy && this.queue.length === 0) return Promise.resolve();
    return new Promise((resolve) => {
      this.waiting.push({ resolve, onLeft });
      if (!this.paused()) void this.work();
    });
  }

  /** Lets go of the pictures of recipes that are no longer shown. */
  keepOnly(recipes: ReadonlySet<Recipe>): void {
    for (const [recipe, known] of this.made) {
      if (recipes.has(recipe)) continue;
      for (const url of known.values()) if (url !== null && url !== '') URL.revokeObjectURL(url);
      this.made.delete(recipe);
    }
    this.queue = this.queue.filter((wanted) => recipes.has(wanted.recipe));
  }

  private async work(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    while (this.queue.length > 0 && !this.paused()) {
      const { recipe, pulls, key, relative } = defined(this.queue.shift());
      let url = '';
      try {
        const picture = await engineFor('picture').thumbnail({ studio: recipeStudio(recipe), pulls, heightPx: ROWS, relative });
        url = URL.createObjectURL(await imageOf(picture));
      } catch (error) {
        this.tell(say.pictureOfCouldNot(recipe.title, sentenceOf(error)));
      }
      this.made.get(recipe)?.set(key, url);
      this.host.requestUpdate();
      for (const { onLeft } of this.waiting) onLeft?.(this.queue.length);
    }
    this.busy = false;
    if (this.queue.length === 0) for (const { resolve } of this.waiting.splice(0)) resolve();
  }
}

const texts = new WeakMap<readonly Pull[], string>();

/** Pulls as text; of a list that was seen before, which is asked for at each drawing of a room, the same. */
function textOf(pulls: readonly Pull[]): string {
  const known = texts.get(pulls) ?? JSON.stringify(pulls);
  texts.set(pulls, known);
  return known;
}

/** A picture as a PNG. */
export async function imageOf({ widthPx, heightPx, pixels }: Picture): Promise<Blob> {
  const canvas = Object.assign(document.createElement('canvas'), { width: widthPx, height: heightPx });
  const context = canvas.getContext('2d');
  if (context === null) throw new Error(say.thisBrowserGaveNo);
  context.putImageData(new ImageData(pixels, widthPx, heightPx), 0, 0);
  return new Promise((resolve, reject) =>
    canvas.toBlob((png) => (png === null ? reject(new Error(say.thisBrowserMadeNo)) : resolve(png)), 'image/png'),
  );
}
