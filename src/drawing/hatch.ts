import { type Point, turned } from './geometry.js'

/** Lines of a hatch, clipped to an area. Polygons inside others are holes. */
export function hatchLines(polygons: readonly (readonly Point[])[], angle: number, spacing: number): readonly (readonly [Point, Point])[] {
  const rings = polygons.map((ring) => ring.map((point) => turned(point, -angle)))
  const heights = rings.flat().map(([, y]) => y)
  const lines: [Point, Point][] = []
  const first = Math.ceil(Math.min(...heights) / spacing - 0.5)
  const last = Math.floor(Math.max(...heights) / spacing - 0.5)
  for (let i = first; i <= last; i++) {
    const y = (i + 0.5) * spacing
    const met = rings.flatMap((ring) => crossings(ring, y)).sort((a, b) => a - b)
    for (let k = 0; k + 1 < met.length; k += 2) {
      // To and fro, so that a pen, and the numbers of a path, go from each line to the next by the shortest way.
      const [from, to] = i % 2 === 0 ? [met[k]!, met[k + 1]!] : [met[k + 1]!, met[k]!]
      if (Math.abs(to - from) > 1e-9) lines.push([turned([from, y], angle), turned([to, y], angle)])
    }
  }
  return lines
}

/** Where the edges of a ring cross a height. */
function crossings(ring: readonly Point[], y: number): number[] {
  return ring.flatMap(([x0, y0], i) => {
    const [x1, y1] = ring[(i + 1) % ring.length]!
    return y0 <= y === y1 <= y ? [] : [x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)]
  })
}
