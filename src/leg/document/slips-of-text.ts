import { type Document, isMap, isNode, isScalar, type LineCounter, type Node, visit } from 'yaml'
import type { Issue } from '../../units/index.js'

/** A place in a text as messages name it. */
export const placeText = ({ line, col }: { line: number; col: number }) => `line ${line}, column ${col}`

/** Comments of programming languages, at the start of a line or between the parts of JSON. */
const COMMENT = /(^|[\s,{}[\]])(\/\/|\/\*)/m
const STRING = /"(?:[^"\\\n]|\\.)*"/g

/** A slip that the parser would report as many others: another encoding, a fence of Markdown, or a comment that neither JSON nor YAML knows. */
export function slipOfText(text: string): Issue | undefined {
  if (text.slice(0, 200).includes('\0'))
    return { path: 'text', given: 'text of two bytes a character, read as one of UTF-8', accepts: 'save the file as UTF-8, not as UTF-16' }
  const lines = text.split('\n')
  const first = lines.findIndex((line) => line.trim() !== '')
  if (/^\s*(```|~~~)/.test(lines[first] as string))
    return {
      path: `line ${first + 1}`,
      given: (lines[first] as string).trim(),
      accepts: 'remove the fence: the text must begin with the document',
    }
  const isJson = (lines.find((line) => line.trim() !== '' && !/^\s*(\/\/|\/\*)/.test(line)) ?? '').trim().startsWith('{')
  const bare = text.replace(STRING, (found) => '_'.repeat(found.length))
  const found = (isJson ? COMMENT : /^([^\S\n]*)(\/\/|\/\*)/m).exec(bare)
  if (found === null) return undefined
  const at = found.index + (found[1] as string).length
  const line = text.slice(0, at).split('\n').length
  return {
    path: `line ${line}`,
    given: `a comment that begins with ${found[2]}`,
    accepts: isJson ? 'JSON has no comments: remove it, or write the document as YAML, with comments after #' : 'write comments after #',
  }
}

/** Numbers with a decimal comma inside braces or brackets, where the comma ends the value: `{ wall: 2,4 mm }`, `[0,08, 0,14]`. */
export function decimalCommas(document: Document, lines: LineCounter, text: string): Issue[] {
  const issues: Issue[] = []
  const report = (from: Node, to: Node) => {
    const [start, end] = [from.range?.[0] ?? 0, to.range?.[1] ?? 0]
    const given = text.slice(start, end)
    // Without a blank after it, and between digits, the comma was meant as a point.
    if (!/^[+-]?\d+,\d/.test(given)) return
    issues.push({
      path: placeText(lines.linePos(start)),
      given: `'${given}'`,
      accepts: `write ${given.replace(',', '.')} with a point: inside braces and brackets a comma ends the value`,
    })
  }
  visit(document, {
    Map: (_, map) => {
      if (map.flow !== true) return
      for (const [i, { key, value }] of map.items.entries()) {
        const before = map.items[i - 1]?.value
        // A name that is a number, without a value of its own, is what follows the comma.
        if (isScalar(key) && isScalar(before) && isWhole(before) && /^\d/.test(String(key.value)) && isEmpty(value)) report(before, key)
      }
    },
    Seq: (_, list) => {
      if (list.flow !== true) return
      const apart = text.slice(...spanOf(list)).includes(', ')
      for (const [i, item] of list.items.entries()) {
        const before = list.items[i - 1]
        const tight = isNode(before) && isNode(item) && (item.range?.[0] ?? 0) - (before.range?.[1] ?? 0) === 1
        if (apart && tight && isScalar(before) && isWhole(before) && isScalar(item)) report(before, item)
      }
    },
  })
  return issues
}

const spanOf = ({ range }: Node): [number, number] => [range?.[0] ?? 0, range?.[1] ?? 0]
const isWhole = ({ value }: { readonly value: unknown }) => /^[+-]?\d+$/.test(String(value))
const isEmpty = (value: unknown) =>
  value === null || (isScalar(value) && value.value === null) || (isMap(value) && value.items.length === 0)
