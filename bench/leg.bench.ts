import { readFileSync } from 'node:fs'
import { buildSync } from 'esbuild'
import { legReader } from '../src/leg/as-formula.js'
import { comparisonsOf, reserveIn } from '../src/leg/assess/compare.js'
import { findingsOf } from '../src/leg/assess/findings.js'
import { survey } from '../src/leg/assess/survey.js'
import { calculationOf } from '../src/leg/calculation.js'
import {
  ALL_CASE_IDS,
  assess,
  CASE_IDS,
  type CaseId,
  describeLeg,
  governingReserve,
  htmlReport,
  legDrawings,
  legFormula,
  legNumbers,
} from '../src/leg/index.js'
import { CHECKS } from '../src/leg/parts/index.js'
import { optimise } from '../src/study/index.js'
import { program, type Row } from './harness.js'

const JOB = 'bench/build/leg-job.js'
buildSync({
  entryPoints: ['bench/leg-job.ts'],
  bundle: true,
  format: 'esm',
  platform: 'node',
  packages: 'external',
  outfile: JOB,
  logLevel: 'error',
})

const text = readFileSync('examples/mudflat-leg-revised.yaml', 'utf8')
const leg = describeLeg(text)
const first = describeLeg(readFileSync('examples/mudflat-leg-first.yaml', 'utf8'))
const numbers = legNumbers(leg)
const BASIC: readonly CaseId[] = ['stand', 'walk', 'stall']
const [plate] = Object.keys(numbers.plates) as [string]

/** Made when it is asked for: what records must not run before the fast rows. */
const once = <T>(make: () => T): (() => T) => {
  let made: T | undefined
  return () => {
    made ??= make()
    return made
  }
}
const verdict = once(() => assess(leg))
const found = once(() => findingsOf(numbers, ALL_CASE_IDS, false))

/** A number of a low-discrepancy sequence between two ends, so that no two legs are alike. */
function between(low: number, high: number, i: number, base: number): number {
  let [share, place] = [0, 1]
  for (let left = i + 1; left > 0; left = Math.floor(left / base)) {
    place /= base
    share += place * (left % base)
  }
  return low + share * (high - low)
}

type Given = Readonly<Record<string, unknown>>
const pretensionOf = (i: number): Given => ({ joints: { knee: { drive: { pretension: between(60, 160, i, 2) } } } })
const resistanceOf = (i: number): Given => ({ motors: { main: { terminalResistance: between(0.04, 0.15, i, 2) } } })
const eightOf = (i: number): Given => ({
  robot: { mass: between(8, 13, i, 2) },
  links: { upper: { length: between(0.15, 0.18, i, 3) }, lower: { length: between(0.165, 0.195, i, 5) } },
  joints: {
    hip: { drive: { pretension: between(60, 160, i, 7) } },
    knee: { drive: { pretension: between(60, 160, i, 11) } },
  },
  motors: { main: { terminalResistance: between(0.04, 0.15, i, 13) } },
  gaits: { walk: { stepLength: between(0.04, 0.09, i, 17) } },
  loadCases: { airs: { hot: { temperature: between(303.15, 318.15, i, 19) } } },
})
const withPlate = (i: number): Given => ({
  ...eightOf(i),
  plates: { [plate]: { thickness: between(0.004, 0.01, i, 2), sink: { thickness: between(0.003, 0.008, i, 3) } } },
})

const timed = (name: string, one: (i: number) => number) => {
  let i = 0
  return {
    name,
    run: (times: number) => {
      let sum = 0
      for (let k = 0; k < times; k++) sum += one(i++)
      return sum
    },
  }
}

/** Legs of a formula a second, some fields varied. */
function legs(work: string, given: (i: number) => Given, cases: readonly CaseId[], perSecondAtLeast: number): Row {
  const margin = once(() => legFormula(leg, { cases }))
  return { work, ours: timed('limbwright', (i) => margin().si(given(i) as never)), bound: { perSecondAtLeast } }
}

/**
 * The formulas that legs run, on their numbers and one after another: no graph, no values, no comparisons. A leg cannot take less than this, so that
 * a bound below it asks for faster formulas.
 */
function formulasAlone(cases: readonly CaseId[]): (i: number) => number {
  const calculation = calculationOf(numbers, { recording: true })
  const comparisons = comparisonsOf(calculation, CHECKS, cases)
  const read = legReader(leg)
  const runs = Array.from({ length: 4 }, (_, i) => {
    calculation.load(read(eightOf(i)))
    const stale = calculation.instances.cells.filter((cell) => !calculation.stands(cell))
    for (const one of comparisons) reserveIn(calculation, one)
    const logs = stale.filter((cell) => calculation.stands(cell)).map(({ log = [] }) => log)
    return logs.flat().flatMap((entry) => ('formula' in entry ? [{ si: entry.formula.si as (x: unknown) => unknown, x: entry.x }] : []))
  })
  return (i) => {
    let last: unknown
    // The first leg made every cell: those after it differ in eight fields alone.
    for (const { si, x } of runs[1 + (i % (runs.length - 1))]!) last = si(x)
    return typeof last === 'number' ? last : 1
  }
}

/** Formulas of a leg alone, shown beside the rows of whole legs. */
function floor(work: string, cases: readonly CaseId[]): Row {
  const run = once(() => formulasAlone(cases))
  return { work, ours: timed('limbwright', (i) => run()(i)) }
}

/** A calculation without what was kept of the one before: a leg that differs a little in its mass each time. */
const heavier = (i: number) => ({ ...numbers, robot: { ...numbers.robot, mass: 10 + (i & 255) * 1e-3 } })

export const rows: Row[] = [
  // What explains nothing first, as in a process that sweeps: chains that have been recorded once run slower afterwards.
  legs('legs, pretension of the knee varied, 3 load cases', pretensionOf, BASIC, 50_000),
  legs('legs, resistance of the motors varied, 3 load cases', resistanceOf, BASIC, 20_000),
  legs('legs, eight fields varied, 3 load cases', eightOf, BASIC, 8000),
  legs('legs, eight fields and a plate with its sink varied, 3 load cases', withPlate, BASIC, 2000),
  legs('legs, eight fields varied, 11 load cases', eightOf, CASE_IDS, 3000),
  legs('legs, eight fields varied, every load case', eightOf, ALL_CASE_IDS, 3000),
  {
    work: 'governing reserve: stand, walk, stall',
    ours: timed('limbwright', (i) => governingReserve(heavier(i), BASIC).reserve),
    bound: { perSecondAtLeast: 3000 },
  },
  floor('formulas alone of a leg, eight fields varied, 3 load cases', BASIC),
  floor('formulas alone of a leg, eight fields varied, 11 load cases', CASE_IDS),
  floor('formulas alone of a leg, eight fields varied, every load case', ALL_CASE_IDS),
  {
    work: 'survey of the ranges of every check, every load case',
    ours: timed('limbwright', () => survey(found().calculation, found().checks).size),
    bound: { atMostSeconds: 0.06 },
  },
  {
    work: 'a calculation made anew, every load case, recorded against not recorded',
    ours: timed('recorded', (i) => findingsOf(heavier(i), ALL_CASE_IDS, true).checks.length),
    against: [{ ...timed('not recorded', (i) => findingsOf(heavier(i), ALL_CASE_IDS, false).checks.length), ratioAtMost: 2.5 }],
  },
  {
    work: 'sweep of 100 000 legs through every load case on two threads, eight fields varied, start-up included',
    ours: program('two threads', { path: process.execPath }, JOB, '2', '100000') as Row['ours'],
    bound: { atMostSeconds: 60 },
    rounds: 1,
  },
  {
    work: 'optimum of the demo leg over eight fields, every load case, 20 000 legs',
    ours: timed(
      'limbwright',
      () =>
        optimise(legFormula(leg), {
          vary: {
            'drives.hip.pretension': { from: '60 N', to: '160 N' },
            'drives.knee.pretension': { from: '60 N', to: '160 N' },
            'drives.hip.drum.grooveDiameter': { from: '80 mm', to: '100 mm' },
            'drives.knee.drum.grooveDiameter': { from: '80 mm', to: '100 mm' },
            'bosses.hip.outerDiameter': { from: '10 mm', to: '16 mm' },
            'bosses.knee.outerDiameter': { from: '10 mm', to: '16 mm' },
            'robot.standHeight': { from: '250 mm', to: '310 mm' },
            'plate.thickness': { from: '4 mm', to: '10 mm' },
          },
          goals: { maximise: 'result' },
        }).evaluations,
    ),
    bound: { atMostSeconds: 30 },
    rounds: 1,
  },
  { work: 'read the demo leg from YAML', ours: timed('limbwright', () => describeLeg(text).robot.mass.si), bound: { atMostSeconds: 0.02 } },
  {
    work: 'assess the demo leg: stand, walk, stall, explained',
    ours: timed('limbwright', () => assess(leg, { cases: BASIC }).governing.reserve),
    bound: { atMostSeconds: 0.02 },
  },
  {
    work: 'assess the demo leg: every load case, explained',
    ours: timed('limbwright', () => assess(leg).governing.reserve),
    bound: { atMostSeconds: 0.15 },
  },
  {
    work: 'report of the demo leg as HTML, pictures left out',
    ours: timed('limbwright', () => htmlReport(verdict()).length),
    bound: { atMostSeconds: 0.3 },
  },
  {
    work: 'report of the demo leg as HTML with its drawings, drawn anew',
    ours: timed('limbwright', () => htmlReport(verdict(), { drawings: legDrawings(verdict(), { style: 'page' }) }).length),
    bound: { atMostSeconds: 1.5 },
  },
  {
    work: 'assessment and report of the first demo leg, changes solved for every failing check',
    ours: timed('limbwright', () => htmlReport(assess(first)).length),
    bound: { atMostSeconds: 1.5 },
  },
]
