/** Formulas that still lack a check from outside: a debt list, only ever to be shortened. */
export const UNCHECKED: ReadonlySet<string> = new Set<string>()
