import type { Rows } from './model.js'

/** Fewest rows of a stretch that stands twice, of rows that differ by what was set, and of readings of the same thing. */
const STRETCH = { set: 2, same: 4 } as const
/** Fewest different readings in a stretch of the same thing, and fewest pairs of them: less is chance on a display of coarse steps. */
const DIFFERENT = 3

/**
 * Rows that are copies of earlier ones, by index: a stretch that stands twice, or every row written twice. Where all rows read the `same` thing, equal
 * readings are no copies by themselves.
 */
export function copiesIn(rows: Rows, same: boolean): Set<number> {
  const keys = rows.map((row) => row.join(' '))
  const copies = new Set(writtenTwice(keys, same))
  for (let i = 1; i < keys.length; i++) {
    const longest = stretchAt(keys, i)
    const stretch = keys.slice(i, i + longest)
    if (longest < (same ? STRETCH.same : STRETCH.set) || (same && new Set(stretch).size < DIFFERENT)) continue
    for (let k = 0; k < longest; k++) copies.add(i + k)
    i += longest - 1
  }
  return copies
}

/** Length of the longest stretch from a row on that stands before it as well. */
function stretchAt(keys: readonly string[], i: number): number {
  let longest = 0
  for (let j = 0; j < i; j++) {
    let length = 0
    while (i + length < keys.length && j + length < i && keys[j + length] === keys[i + length]) length++
    longest = Math.max(longest, length)
  }
  return longest
}

/** Second ones of equal neighbours: where a third of all rows are such, or, of the same thing, where every row has its twin. */
function writtenTwice(keys: readonly string[], same: boolean): number[] {
  const second = keys.flatMap((key, i) => (i > 0 && key === keys[i - 1] ? [i] : []))
  if (!same) return second.length >= keys.length / 3 ? second : []
  const paired = keys.length % 2 === 0 && keys.every((key, i) => key === keys[i - (i % 2)])
  return paired && new Set(keys).size >= DIFFERENT ? second.filter((i) => i % 2 === 1) : []
}
