import type { Note } from '../units/index.js'

const MAX_DEPTH = 4

/** The notes carried by quantities anywhere in what was given: nested records and lists included, each note once. */
export function notesOf(given: unknown): readonly Note[] | undefined {
  if (!holdsObjects(given)) return undefined
  const found: Note[] = []
  const visit = (value: unknown, depth: number): void => {
    if (typeof value !== 'object' || value === null) return
    const notes = (value as { notes?: readonly Note[] }).notes
    if (Array.isArray(notes)) for (const note of notes) if (!found.includes(note)) found.push(note)
    if ((value as { si?: unknown }).si !== undefined || depth >= MAX_DEPTH) return
    if (Array.isArray(value)) {
      if (typeof value[0] === 'object') for (const item of value) visit(item, depth + 1)
    } else if (Object.getPrototypeOf(value) === Object.prototype) {
      for (const name in value) {
        const item = (value as Record<string, unknown>)[name]
        if (typeof item === 'object') visit(item, depth + 1)
      }
    }
  }
  visit(given, 0)
  return found.length === 0 ? undefined : found
}

/** Whether anything given is an object: texts and numbers carry no notes. */
function holdsObjects(given: unknown): boolean {
  if (typeof given !== 'object' || given === null || (given as { si?: unknown }).si !== undefined) return true
  for (const name in given) if (typeof (given as Record<string, unknown>)[name] === 'object') return true
  return false
}
