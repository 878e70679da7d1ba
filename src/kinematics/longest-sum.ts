/** More directions than this would take seconds: four of joints and drums, the rest of causes at the foot. */
export const MAX_DIRECTIONS = 20

/** Columns along one line as one: at the worst they add in size. */
export function merged(columns: readonly (readonly number[])[]): number[][] {
  const distinct: number[][] = []
  for (const c of columns) {
    const size = Math.hypot(...c)
    if (size === 0) continue
    const same = distinct.find((d) => {
      const along = (d[0]! * c[0]! + d[1]! * c[1]! + d[2]! * c[2]!) / (Math.hypot(...d) * size)
      return Math.abs(along) > 1 - 1e-14
    })
    if (same === undefined) {
      distinct.push([...c])
      continue
    }
    const sense = Math.sign(same[0]! * c[0]! + same[1]! * c[1]! + same[2]! * c[2]!)
    for (let i = 0; i < 3; i++) same[i]! += sense * c[i]!
  }
  return distinct
}

/** The longest vector Σ ± columns, over all signs, one changed at a time. */
export function longestSum(columns: readonly (readonly number[])[]): number {
  const signs = columns.map(() => 1)
  const total = [0, 1, 2].map((i) => columns.reduce((sum, c) => sum + c[i]!, 0)) as [number, number, number]
  let best = Math.hypot(...total)
  // The last sign may stay: all signs turned round give the same length.
  for (let code = 1; code < 2 ** Math.max(0, columns.length - 1); code++) {
    const k = 31 - Math.clz32(code & -code)
    signs[k] = -signs[k]!
    for (let i = 0; i < 3; i++) total[i]! += 2 * signs[k]! * columns[k]![i]!
    best = Math.max(best, Math.hypot(...total))
  }
  return best
}
