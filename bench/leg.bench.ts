import { readFileSync } from 'node:fs'
import { assess, type CaseId, describeLeg, governingReserve, htmlReport, legNumbers, reportPictures } from '../src/leg/index.js'
import type { Row } from './harness.js'

const text = readFileSync('examples/mudflat-leg-revised.yaml', 'utf8')
const leg = describeLeg(text)
const numbers = legNumbers(leg)
const verdict = assess(leg)
const pictures = await reportPictures(verdict)
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
    work: 'report of the demo leg as HTML, pictures drawn before',
    ours: timed('limbwright', () => htmlReport(verdict, pictures).length),
    bound: { atMostSeconds: 0.1 },
  },
]
