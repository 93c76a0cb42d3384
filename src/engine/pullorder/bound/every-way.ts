/**
 * Notes a value of three letters under every order of them.
 * @param table letters × letters × letters
 */
export function noteEveryWay(table: Uint8Array, letters: number, three: readonly [number, number, number], value: number): void {
  const [i, j, h] = three;
  for (const [a, b, c] of [
    [i, j, h],
    [i, h, j],
    [j, i, h],
    [j, h, i],
    [h, i, j],
    [h, j, i],
  ] as const)
    table[(a * letters + b) * letters + c] = value;
}
