/**
 * Counts slips of a unit or a digit that no message names: `tsx scripts/unit-slips.ts`. Each number of the example legs is written ten and a thousand
 * times (and a hundred times) too large and too small, alone. A slip is silent where the document is accepted and has no unusual value. `--list` names the fields.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { documentFields } from '../src/leg/document/fields.js'
import { describeLeg, unusualValues } from '../src/leg/index.js'
import { eachLeaf } from '../src/leg/schema/index.js'
import { InputError } from '../src/units/index.js'
import { putting } from '../tests/leg/changed-document.js'

const folder = new URL('../examples/', import.meta.url)
const FACTORS = [10, 0.1, 100, 0.01, 1000, 0.001]

/** Whether a document is accepted without a remark. */
function isSilent(data: object): boolean {
  try {
    return unusualValues(describeLeg(data as never)).length === 0
  } catch (error) {
    if (error instanceof InputError) return false
    throw error
  }
}

/** A number as text or plain, times a factor; absent for what is no number or 0. */
function times(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value === 0 ? undefined : Number((value * factor).toPrecision(12))
  if (Array.isArray(value)) {
    const all = value.map((one) => times(one, factor))
    return all.every((one) => one === undefined) ? undefined : all.map((one, i) => one ?? value[i])
  }
  const [, number, unit] = /^([-+]?[\d.]+(?:e[-+]?\d+)?) ?(.*)$/i.exec(typeof value === 'string' ? value : '') ?? []
  if (number === undefined || Number(number) === 0) return undefined
  return `${Number((Number(number) * factor).toPrecision(12))} ${unit}`.trim()
}

const silent = new Map<string, number>()
let made = 0
for (const name of readdirSync(folder).filter((file) => file.endsWith('.yaml'))) {
  const data = parse(readFileSync(new URL(name, folder), 'utf8')) as object
  eachLeaf(documentFields, data, (path, field, value) => {
    if (!('kind' in field || 'band' in field || 'integer' in field)) return
    for (const factor of FACTORS) {
      const wrong = times(value, factor)
      if (wrong === undefined) continue
      made++
      if (!isSilent(putting(data, path, wrong))) continue
      const of = `${path.replaceAll(/(motors|controllers|cords|belts|bolts|plates|pins|bosses|bearings|shafts|materials|gaits)\.\w+/g, '$1.*')} x ${factor}`
      silent.set(of, (silent.get(of) ?? 0) + 1)
    }
  })
}
const total = [...silent.values()].reduce((sum, n) => sum + n, 0)
process.stdout.write(`${total} of ${made} slips are silent\n`)
if (process.argv.includes('--list'))
  for (const [path, n] of [...silent].sort(([, a], [, b]) => b - a)) process.stdout.write(`${String(n).padStart(4)}  ${path}\n`)
