import type { Lineage, Variant } from '../../engine/explore/types.ts';
import { type PackedPrints, unpackPrint } from '../../engine/stack/packed-pulls.ts';
import type { Pull } from '../../engine/stack/types.ts';

/** A variant without its pulls. */
type VariantHead = Omit<Variant, 'pulls'>;

/** A variant whose pulls stay packed with those of others until somebody looks at them. */
export class PackedVariant implements Variant {
  readonly id: string;
  readonly seed: string;
  readonly index: number;
  readonly key: string;
  readonly strays: number | undefined;
  readonly lineage?: Lineage | undefined;
  private readonly packed: PackedPrints;
  private readonly print: number;
  /** The list that was given last: whoever still holds it gets the same again. */
  private given: WeakRef<Pull[]> | undefined;

  /** @param print its place among those that were packed */
  constructor(head: VariantHead, packed: PackedPrints, print: number) {
    this.id = head.id;
    this.seed = head.seed;
    this.index = head.index;
    this.key = head.key;
    this.strays = head.strays;
    if (head.lineage !== undefined) this.lineage = head.lineage;
    this.packed = packed;
    this.print = print;
  }

  get pulls(): Pull[] {
    const given = this.given?.deref();
    if (given !== undefined) return given;
    const pulls = unpackPrint(this.packed, this.print);
    this.given = new WeakRef(pulls);
    return pulls;
  }
}
