import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, describeLeg, legNumbers } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { JOINTS } from '../../src/leg/numbers.js'
import { loadInertia } from '../../src/leg/parts/controllers/delay.js'
import { legInertia } from '../../src/leg/plans/control-gains.js'

const text = readFileSync(new URL('./version-3/walker-revised.yaml', import.meta.url), 'utf8')
interface Document {
  bearings: { seatInterference: string; retained: boolean }
  motor: { tapDepth?: string }
  environment: { coldAir: string }
  controller: { busDelay?: string }
}
const verdict = (change: (x: Document) => void = () => undefined) => {
  const data = parse(text) as Document
  change(data)
  return assess(describeLeg(data as never), { cases: ['stand', 'walk', 'coldMorning', 'coldDrop'] })
}
const reserve = (of: ReturnType<typeof verdict>, id: string) =>
  Math.min(...of.checks.filter((check) => check.id === id).map((check) => check.reserve))
const as = verdict()

describe('checks of cold, seats, screws and loops', () => {
  test('a tighter press fit splits a seat, whether the ring is retained or not', () => {
    const tight = verdict((x) => {
      x.bearings.seatInterference = '0.5 mm'
    })
    expect(reserve(as, 'bearing.seatSplit')).toBeGreaterThan(1)
    expect(reserve(tight, 'bearing.seatSplit')).toBeLessThan(1)
    const loose = verdict((x) => {
      x.bearings.seatInterference = '-0.3 mm'
    })
    expect(loose.notEvaluated.find(({ id }) => id === 'bearing.seatSplit')?.why).toMatch(/clearance/)
  })

  test('a landing in the cold finds less strength than bending counts on, the less the colder', () => {
    const colder = verdict((x) => {
      x.environment.coldAir = '-30 degC'
    })
    for (const link of ['upperLink', 'lowerLink']) {
      const bending = as.checks.find(({ id }) => id === `${link}.bending`)
      const inCold = bending?.otherCases.find((one) => one.case === 'coldDrop')?.reserve ?? bending?.reserve
      expect(reserve(as, `${link}.brittle`)).toBeLessThan(inCold as number)
      expect(reserve(colder, `${link}.brittle`)).toBeLessThan(reserve(as, `${link}.brittle`))
    }
  })

  test('a screw that runs into the winding before it holds is found, and an unknown depth is said', () => {
    const shallow = verdict((x) => {
      x.motor.tapDepth = '3 mm'
    })
    expect(reserve(shallow, 'motorBolt.length')).toBeLessThan(1)
    expect(reserve(shallow, 'motorBolt.strip')).toBeLessThan(reserve(as, 'motorBolt.strip'))
    expect(as.checks.find(({ id }) => id === 'motorBolt.length')?.notes.join()).toContain('no screw may be longer than 16.5 mm')
    const unknown = verdict((x) => {
      delete x.motor.tapDepth
    })
    expect(unknown.notEvaluated.find(({ id }) => id === 'motorBolt.length')?.why).toMatch(/measure it/)
  })

  test('a tension that is set too low by 7 % is in the range of every check that needs it', () => {
    const slack = as.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')
    expect(slack?.range.worst as number).toBeLessThan(0.94 * (slack?.reserve as number))
    expect(slack?.reliesOn.map(({ what }) => what)).toContain('pretension of the cord as it is set over the specified one (knee)')
  })

  test('a slow bus drives the resonance of the cord', () => {
    const slow = verdict((x) => {
      x.controller.busDelay = '4 ms'
    })
    expect(reserve(as, 'controller.delay')).toBeGreaterThan(1)
    expect(reserve(slow, 'controller.delay')).toBeLessThan(1)
  })

  test('the inertia of the leg about its joints is that of inverse dynamics', () => {
    const x = legNumbers(describeLeg(text))
    const [leg, calculation] = [legModel(x), calculationOf(x)]
    for (const joint of JOINTS)
      expect(calculation.get(loadInertia, placeOf(calculation, { joint }) as never)).toBeCloseTo(legInertia(leg, joint), 12)
  })
})
