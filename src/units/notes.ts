/** A remark that travels with a result into whatever is computed from it, such as a correlation used outside its range. */
export interface Note {
  /** The formula or function that made the remark. */
  readonly formula: string
  /** The remark, in plain words. */
  readonly text: string
}

/** The notes of two operands, each once. */
export function joinNotes(
  a: { notes?: readonly Note[] | undefined },
  b: { notes?: readonly Note[] | undefined },
): readonly Note[] | undefined {
  if (a.notes === undefined) return b.notes
  if (b.notes === undefined || b.notes === a.notes) return a.notes
  const first = a.notes
  return [...first, ...b.notes.filter((note) => !first.includes(note))]
}
