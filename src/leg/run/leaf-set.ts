/** Sets of uncertain leaves, each at neither, one or both of its ends: two bits a leaf. */
export type LeafSet = Int32Array

const LEAVES_IN_A_WORD = 16

/** An empty set for some number of leaves. */
export const noLeaves = (count: number): LeafSet => new Int32Array(Math.ceil(count / LEAVES_IN_A_WORD))

/** Adds leaves to others; whether one of them is new. */
export function add(to: LeafSet, words: LeafSet): boolean {
  let grows = false
  for (let i = 0; i < words.length; i++) {
    const [before, more] = [to[i] as number, words[i] as number]
    if ((before | more) === before) continue
    to[i] = before | more
    grows = true
  }
  return grows
}

/** Puts a leaf into a set: 1 at its low end, 2 at its high end, 3 at both. */
export function mark(words: LeafSet, leaf: number, bits: number): void {
  const word = Math.floor(leaf / LEAVES_IN_A_WORD)
  words[word] = (words[word] as number) | (bits << (2 * (leaf % LEAVES_IN_A_WORD)))
}

/** What a set holds of a leaf, as `mark` wrote it; 0 where it is not in the set. */
export const marked = (words: LeafSet, leaf: number): number =>
  ((words[Math.floor(leaf / LEAVES_IN_A_WORD)] as number) >> (2 * (leaf % LEAVES_IN_A_WORD))) & 3

/** A set with a leaf at one end in place of what it held of it. */
export function withMark(words: LeafSet, leaf: number, bits: number): LeafSet {
  const moved = words.slice()
  const word = Math.floor(leaf / LEAVES_IN_A_WORD)
  moved[word] = (moved[word] as number) & ~(3 << (2 * (leaf % LEAVES_IN_A_WORD)))
  mark(moved, leaf, bits)
  return moved
}

/** The numbers of the leaves in a set. */
export function leavesIn(words: LeafSet): number[] {
  const leaves: number[] = []
  for (let word = 0; word < words.length; word++)
    for (let left = words[word] as number; left !== 0; ) {
      const place = (31 - Math.clz32(left)) >> 1
      leaves.push(word * LEAVES_IN_A_WORD + place)
      left &= ~(3 << (2 * place))
    }
  return leaves
}
