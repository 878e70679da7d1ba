/** Edit distance with transpositions (optimal string alignment), after Damerau 1964. */
function editDistance(a: string, b: string): number {
  let above: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const twoAbove = above
    above = row
    row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      row[j] = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (same ? 0 : 1))
      if (i > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) row[j] = Math.min(row[j]!, twoAbove[j - 2]! + 1)
    }
  }
  return row[b.length]!
}

/** Names so long are not compared: a near miss of a real name is short. */
const MAX_COMPARED_LENGTH = 60

/**
 * The name the writer most likely meant, or nothing when none is near (about one slip in three letters, at most `max`).
 * Letter case and blanks do not count as slips.
 */
export function nearName(given: string, names: Iterable<string>, max = Number.POSITIVE_INFINITY): string | undefined {
  if (given.length > MAX_COMPARED_LENGTH) return undefined
  const plain = (s: string) => s.toLowerCase().replaceAll(/[\s_-]/g, '')
  const wanted = plain(given)
  let best: string | undefined
  let min = Math.min(max, Math.max(1, Math.floor(wanted.length / 3))) + 1
  for (const name of names) {
    // Of two equally near names, the one that begins alike.
    const distance = editDistance(wanted, plain(name)) + (name[0] === given[0] ? 0 : 0.5)
    if (distance < min) {
      min = distance
      best = name
    }
  }
  return best
}

/** A designation without its numbers, and the numbers: '10x22x6' is '#x#x#' with 10, 22, 6. Letter case, blanks and 'mm' do not count. */
function sizesOf(name: string): { readonly shape: string; readonly sizes: readonly number[] } {
  const sizes: number[] = []
  const shape = name.toLowerCase().replaceAll(/\d+(\.\d+)?/g, (number) => {
    sizes.push(Number(number))
    return '#'
  })
  return { shape: shape.replaceAll('×', 'x').replaceAll(/mm|\s/g, ''), sizes }
}

/** The names written alike but for their numbers, nearest in size first; none where all are far from it, as of M44: a slip of the finger. */
function nearSizes(given: string, names: Iterable<string>): string[] {
  const { shape, sizes } = sizesOf(given)
  if (sizes.length === 0) return []
  return [...names]
    .map((name) => ({ name, ...sizesOf(name) }))
    .filter((other) => other.shape === shape)
    .map(({ name, sizes: others }) => ({ name, distance: others.reduce((sum, size, i) => sum + Math.abs(size - sizes[i]!), 0) }))
    .filter(({ distance }) => distance <= sizes.reduce((sum, size) => sum + size, 0) / 2)
    .sort((a, b) => a.distance - b.distance)
    .map(({ name }) => name)
}

/**
 * The nearest names in order, for errors that list a few (such as material or thread designations). Designations that differ by their
 * numbers only count as sizes: the nearest size comes first, not the nearest spelling.
 */
export function nearNames(given: string, names: Iterable<string>, count = 3): string[] {
  if (given.length > MAX_COMPARED_LENGTH) return []
  const sizes = nearSizes(given, names)
  if (sizes.length > 0) return sizes.slice(0, count)
  const wanted = given.toLowerCase()
  return [...names]
    .map((name) => {
      const other = name.toLowerCase()
      return { name, distance: other.startsWith(wanted) || wanted.startsWith(other) ? 0.5 : editDistance(wanted, other) }
    })
    .filter(({ distance }) => distance <= Math.max(2, wanted.length / 2))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, count)
    .map(({ name }) => name)
}
