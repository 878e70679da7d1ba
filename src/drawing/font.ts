/** Advance widths of a wide sans-serif font, in thousandths of its size: every common system font is narrower. */
const WIDTHS: Readonly<Record<string, number>> = Object.fromEntries(
  (
    [
      ["il!|’'", 290],
      ['j.,:;·', 340],
      [' ', 320],
      ['ft()/[]-', 400],
      ['rI"', 420],
      ['sczJ', 560],
      ['kvxyL', 600],
      ['abdeghnopqu0123456789FTESPYZ?°²³½', 640],
      ['ABCKRVXμ', 700],
      ['HNUGDΩ', 775],
      ['OQØ', 790],
      ['w+−×=<>~→←↺↻✓✕≈≥≤±', 840],
      ['m%MW', 990],
    ] as const
  ).flatMap(([letters, width]) => [...letters].map((letter) => [letter, width])),
)
const UNKNOWN_WIDTH = 1000
const BOLD_FACTOR = 1.13

/** Width of a text, not below that of any common font. */
export function textWidth(text: string, size: number, bold = false): number {
  let sum = 0
  for (const letter of text) sum += WIDTHS[letter] ?? UNKNOWN_WIDTH
  return ((sum * size) / 1000) * (bold ? BOLD_FACTOR : 1)
}

/** A space that holds a number and its unit together. */
const NO_BREAK_SPACE = '\u00a0'
const kept = (text: string) =>
  text
    .replaceAll(/(\d) × (?=[\dØ])/g, `$1${NO_BREAK_SPACE}×${NO_BREAK_SPACE}`)
    .replaceAll(/(\d) (?=[^\d\s]{1,4}(?:[\s,.;:)]|$))/g, `$1${NO_BREAK_SPACE}`)
    .replaceAll(/N (?=m+(?:\W|$))/g, `N${NO_BREAK_SPACE}`)
    .replaceAll('reserve ', `reserve${NO_BREAK_SPACE}`)

/** A text broken between words into lines of at most a width. A word that is longer has a line of its own. */
export function wrapped(text: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = []
  for (const word of kept(text)
    .split(' ')
    .map((line) => line.replaceAll(NO_BREAK_SPACE, ' '))) {
    const last = lines.at(-1)
    const longer = `${last} ${word}`
    if (last !== undefined && textWidth(longer, size, bold) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
