import { readFileSync } from 'node:fs'
import { buildSync } from 'esbuild'
import {
  type Assessment,
  assess,
  type CaseId,
  describeLeg,
  governingReserve,
  htmlReport,
  legFormula,
  legNumbers,
} from '../src/leg/index.js'
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
const numbers = legNumbers(leg)
const reserve = legFormula(leg)
/** Worked out when it is asked for: not before the fast rows. */
let assessed: Assessment | undefined
const verdict = () => {
  assessed ??= assess(leg)
  return assessed
}

const BASIC: readonly CaseId[] = ['stand', 'walk', 'stall']

/** A leg that differs a little each time, so that nothing is kept from one to the next but what a sweep would keep. */
const heavier = (i: number) => ({ ...numbers, robot: { ...numbers.robot, mass: 10 + (i & 255) * 1e-3 } })

const timed = (name: string, one: (i: number) => number) => ({
  name,
  run: (times: number) => {
    let sum = 0
    for (let i = 0; i < times; i++) sum += one(i)
    return sum
  },
})

export const rows: Row[] = [
  // What explains nothing first, as in a process that sweeps: chains that have been recorded once run slower afterwards.
  {
    work: 'governing reserve: stand, walk, stall',
    ours: timed('limbwright', (i) => governingReserve(heavier(i), BASIC).reserve),
    bound: { perSecondAtLeast: 20_000 },
  },
  {
    work: 'governing reserve: every load case',
    ours: timed('limbwright', (i) => governingReserve(heavier(i)).reserve),
    bound: { perSecondAtLeast: 2000 },
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
        optimise(reserve, {
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
    bound: { atMostSeconds: 0.1 },
  },
]
