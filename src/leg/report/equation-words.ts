import { one } from './amounts.js'

/** Functions and constants of equations, as they are written by hand. */
const SIGNS: Readonly<Record<string, string>> = { sqrt: '√', pi: 'π', log: 'ln' }
/** Names that the notation of equations has for itself. */
const OWN = /^(exp|sin|cos|tan|asin|acos|atan|atan2|min|max|abs|cosh|sinh|tanh|sum|mean|round|hypot|cbrt|log10|log2|sign|floor|ceil)$/

/** A line of a record, as a reader writes it: its names as words, `·` for products, `²` for squares. */
export function equationWords(line: string, names: ReadonlySet<string>): string {
  const own = new Set(names)
  const assigned = /^\s*([A-Za-z_]\w*)\s*=(?!=)/.exec(line)?.[1]
  if (assigned !== undefined) own.add(assigned)
  return line
    .replaceAll(/equalText\((\w+), "(\w+)"\)/g, (_, name: string, word: string) => `${name} is ${one(word)}`)
    .replaceAll('==', '=')
    .replaceAll(' .^ ', '^')
    .replaceAll(/[A-Za-z_][\w.]*/g, (name) => {
      const root = name.split('.')[0] as string
      if (own.has(name) || own.has(root)) return wordsOf(name)
      return OWN.test(name) ? name : (SIGNS[name] ?? name)
    })
    .replaceAll(/(?<=\d) deg\b/g, '°')
    .replaceAll(/\^2(?![\d.])/g, '²')
    .replaceAll(/\^3(?![\d.])/g, '³')
    .replaceAll(/ ?\* ?/g, ' · ')
    .replaceAll(/ - /g, ' − ')
    .replaceAll(/(^|[(,=?:] ?)-/g, '$1−')
}

/** `thread.pitch` is `pitch of thread`. */
export const wordsOf = (name: string): string => name.split('.').reverse().map(one).join(' of ')
