/** Words of a question that say nothing of its subject. */
const EMPTY_WORDS = new Set(
  'a an and are as at be by can do does for from has have how i if in is it its long many me much my of on or should so that the their there this to too what when where which who why will with you your'.split(
    ' ',
  ),
)

/** What builders write, and the word of this library for it. */
const OTHER_WORDS: Readonly<Record<string, readonly string[]>> = {
  backlash: ['lost motion'],
  battery: ['supply'],
  cable: ['cord'],
  capstan: ['cord', 'pinion'],
  hop: ['jump', 'landing'],
  hot: ['hottest', 'temperature', 'heat'],
  loosen: ['relax', 'over time'],
  pulley: ['drum', 'pinion'],
  rope: ['cord'],
  runtime: ['running time'],
  screw: ['bolt'],
  size: ['propose'],
  stretch: ['windup', 'rigidity'],
  summer: ['after a time', 'over time', 'warm'],
  winter: ['cold'],
}

/** A word without its ending: loosens, loosened and loosening are one word. */
function stemOf(word: string): string {
  const stem = word.replace(/(?:ing|ed|es|s)$/, '')
  if (stem.length < 3) return word
  return stem.replace(/([bdgmnprt])\1$/, '$1')
}

/** Text that is searched: what an entry is about, and what else belongs to it. */
export interface Searched {
  readonly id: string
  readonly summary: string
  readonly more: string
}

/** Entries that hold most of a question, the best first, and the words that one of them holds. */
export interface Nearest {
  readonly words: readonly string[]
  readonly ids: readonly string[]
}

const MOST_LISTED = 8
/** Entries that score less than this share of the best are left out. */
const LEAST_SHARE = 0.5
/** A word in the id of an entry, or in its summary, counts this many times one in what belongs to it. */
const IN_ID = 4
const IN_SUMMARY = 3

/** Words of an identifier apart, all in lower case. */
const plainText = (text: string) => ` ${text.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()} ${text.toLowerCase()}`

/** Entries that hold the most of the words of a question. A rare word counts more than a common one. */
export function nearest(question: readonly string[], entries: readonly Searched[]): Nearest {
  const subject = [
    ...new Set(
      question
        .join(' ')
        .toLowerCase()
        .split(/[^\p{L}\p{N}]+/u),
    ),
  ].filter((word) => word !== '' && !EMPTY_WORDS.has(word))
  const texts = entries.map(({ id, summary, more }) => ({ id, name: plainText(id), summary: plainText(summary), more: plainText(more) }))
  const scores = new Map<string, number>()
  const words: string[] = []
  for (const word of subject) {
    const stem = stemOf(word)
    const forms = [stem, ...(OTHER_WORDS[stem] ?? OTHER_WORDS[word] ?? [])]
    const found = texts.flatMap(({ id, name, summary, more }) => {
      const weight = heldIn(name, forms) ? IN_ID : heldIn(summary, forms) ? IN_SUMMARY : heldIn(more, forms) ? 1 : 0
      return weight === 0 ? [] : [{ id, weight }]
    })
    if (found.length > 0) words.push(word)
    const rarity = Math.log((1 + texts.length) / (1 + found.length))
    for (const { id, weight } of found) scores.set(id, (scores.get(id) ?? 0) + weight * rarity)
  }
  const ranked = [...scores].sort(([, a], [, b]) => b - a)
  const best = ranked[0]?.[1] ?? 0
  return {
    words,
    ids: ranked
      .filter(([, score]) => score >= LEAST_SHARE * best)
      .slice(0, MOST_LISTED)
      .map(([id]) => id),
  }
}

/** Whether one of some forms begins a word of a text. */
const heldIn = (text: string, forms: readonly string[]) =>
  forms.some((form) => [' ', '.', '-', '('].some((before) => text.includes(`${before}${form}`)))
