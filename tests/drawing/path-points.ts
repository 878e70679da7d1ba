/** A point of a picture. */
export type Spot = readonly [x: number, y: number]

/** The points of each line of a path: `M` absolute, `m l h v` relative, `z` back to the start. */
export function pathPoints(d: string): readonly (readonly Spot[])[] {
  const lines: Spot[][] = []
  let [x, y] = [0, 0]
  for (const [, name, rest] of d.matchAll(/([Mmlhvz])([^Mmlhvz]*)/g)) {
    const numbers = [...(rest as string).matchAll(/-?\d*\.?\d+/g)].map(Number)
    if (name === 'z') {
      ;[x, y] = lines.at(-1)![0] as [number, number]
      continue
    }
    const step = name === 'h' || name === 'v' ? 1 : 2
    for (let i = 0; i < numbers.length; i += step) {
      const [a, b] = [numbers[i]!, numbers[i + 1]!]
      if (name === 'M') [x, y] = [a, b]
      else if (name === 'h') x += a
      else if (name === 'v') y += a
      else [x, y] = [x + a, y + b]
      if (name === 'M' || name === 'm') lines.push([])
      lines.at(-1)!.push([x, y])
    }
  }
  return lines
}
