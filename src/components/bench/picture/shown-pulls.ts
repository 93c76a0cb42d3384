import type { Pull } from '../../../engine/stack/types.ts';

/** What of a stack the large picture shows: some of its states while it builds up, and pulls where they are dragged to. */
export class ShownPulls {
  private found: readonly Pull[] = [];
  private of: readonly unknown[] = [];
  /** How far what is selected is dragged, mm; null while it is not. */
  dragged: { dxMm: number; dyMm: number } | null = null;

  /**
   * The same array as long as the same is shown.
   * @param built the state that is played; null when none is
   * @param held ids of what a drag moves
   */
  shown(pulls: readonly Pull[], built: number | null, held: ReadonlySet<string>): readonly Pull[] {
    const { dragged } = this;
    if (built === null && dragged === null) return pulls;
    const of = [pulls, built, dragged, held];
    if (of.some((part, i) => part !== this.of[i])) {
      this.of = of;
      this.found = (built === null ? pulls : pulls.slice(0, built)).map((pull) =>
        dragged !== null && held.has(pull.id) ? { ...pull, dxMm: pull.dxMm + dragged.dxMm, dyMm: pull.dyMm + dragged.dyMm } : pull,
      );
    }
    return this.found;
  }
}
