// Fuzzes leg documents and stand logs: what a document says is assessed and reported, or rejected with named issues.
import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse, stringify } from 'yaml'
import {
  assemblyPlan,
  assemblyText,
  assess,
  controlSheet,
  controlText,
  describeLeg,
  htmlPlans,
  htmlReport,
  type Leg,
  learn,
  learntText,
  markdownReport,
  standPlan,
  standText,
} from '../../src/leg/index.js'
import { type RandomStream, randomStream } from '../../src/numeric/index.js'
import { type Fault, faultOf } from './judge.js'
import { mutated } from './mutate.js'

/** Longest processor time to read, assess and report one leg, in milliseconds. */
const LONGEST = 2000

const examples = fileURLToPath(new URL('../../examples/', import.meta.url))
const documents = readdirSync(examples)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => parse(readFileSync(join(examples, file), 'utf8')) as Record<string, unknown>)

const outputs: readonly ((leg: Leg) => string)[] = [
  (leg) => markdownReport(assess(leg)),
  (leg) => htmlReport(assess(leg)),
  (leg) => htmlPlans(leg),
  (leg) => assemblyText(assemblyPlan(leg)),
  (leg) => controlText(controlSheet(leg)),
  (leg) => standText(standPlan(leg)),
]

/** Why a text must not reach a reader; nothing where it may. */
export function textFault(text: string): string | undefined {
  // The page's own script holds such words as code.
  const word = /.{0,40}\b(NaN|undefined|\[object Object\])\b.{0,40}/.exec(text.replaceAll(/<script>[\s\S]*?<\/script>/g, ''))
  if (word !== null) return `prints "${word[0]}"`
  return /<script>alert/.test(text) ? 'passes a tag of the document on' : undefined
}

const pick = <T>(random: RandomStream, list: readonly T[]): T => list[random.integer(list.length)] as T

/** Reads, assesses and reports `count` changed documents. */
export function fuzzDocuments(count: number, seed: number): Fault[] {
  const random = randomStream(seed)
  const faults: Fault[] = []
  for (let i = 0; i < count; i++) {
    const { value, changes } = mutated(pick(random, documents), random)
    const given = i % 3 === 0 ? safely(() => stringify(value), value) : value
    const output = pick(random, outputs)
    const fault = faultOf(() => output(describeLeg(given as never)), LONGEST, textFault as (answer: unknown) => string | undefined)
    if (fault !== undefined) faults.push({ where: 'leg document', what: fault, given: changes })
  }
  return faults
}

const safely = <T, U>(run: () => T, otherwise: U): T | U => {
  try {
    return run()
  } catch {
    return otherwise
  }
}

const logFolder = join(examples, 'stand-logs')
const logs = readdirSync(logFolder)
  .filter((file) => file.endsWith('.csv'))
  .map((file) => ({ name: basename(file, '.csv').replace('-', ' '), text: readFileSync(join(logFolder, file), 'utf8') }))

/** A log as spreadsheets, loggers and people spoil it. */
function spoiltLog(text: string, random: RandomStream): string {
  const lines = text.split('\n')
  const at = random.integer(lines.length)
  const line = lines[at] as string
  const other = random.integer(lines.length)
  const spoil: readonly (() => string[])[] = [
    () => lines.filter((_, i) => i !== at),
    () => lines.toSpliced(at, 0, line),
    () => lines.toSpliced(at, 1, line.replaceAll(',', ';')),
    () => lines.map((each) => (each.startsWith('#') ? each : each.replaceAll(',', '\t'))),
    () => lines.toSpliced(at, 1, line.slice(0, random.integer(line.length + 1))),
    () => lines.toSpliced(at, 1, lines[other] as string).toSpliced(other, 1, line),
    () =>
      lines.toSpliced(
        at,
        1,
        line.replace(/\d+(\.\d+)?/, pick(random, ['', 'NaN', '1e400', '-5', '1e9', 'x', '3,4', '"3.4"', '\u2212 2', '0'])),
      ),
    () => lines.toSpliced(at, 1, `"><script>alert(1)</script>,${line}`),
    () => lines.map((each) => each.replace(/\[degC\]|\[N\]|\[min\]/, pick(random, ['[K]', '[kN]', '[s]', '[furlong]', '']))),
  ]
  return `${random.integer(5) === 0 ? '\uFEFF' : ''}${pick(random, spoil)().join(random.integer(4) === 0 ? '\r\n' : '\n')}`
}

/** Learns from `count` spoilt logs of the revised leg. */
export function fuzzLogs(count: number, seed: number): Fault[] {
  const random = randomStream(seed, 1)
  const leg = describeLeg(readFileSync(join(examples, 'mudflat-leg-revised.yaml'), 'utf8'))
  const faults: Fault[] = []
  for (let i = 0; i < count; i++) {
    const { name, text } = pick(random, logs)
    let given = text
    for (let left = 1 + random.integer(3); left > 0; left--) given = spoiltLog(given, random)
    const fault = faultOf(
      () => learntText(learn(leg, { [name]: given }, { cases: ['walk'] })),
      LONGEST,
      textFault as (answer: unknown) => string | undefined,
    )
    if (fault !== undefined) faults.push({ where: `log ${name}`, what: fault, given: given.slice(0, 1500) })
  }
  return faults
}
