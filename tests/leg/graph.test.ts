import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { CASE_IDS } from '../../src/leg/cases/catalogue.js'
import { LOAD_CASES } from '../../src/leg/cases/events.js'
import { workOut } from '../../src/leg/cases/work-out.js'
import { describeLeg, legNumbers } from '../../src/leg/index.js'
import { JOINTS, prepare } from '../../src/leg/numbers.js'
import * as load from '../../src/leg/parts/load/values.js'
import * as motion from '../../src/leg/parts/motion/values.js'
import * as cord from '../../src/leg/parts/transmission/cord/values.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { bareSheet } from '../../src/leg/sheet.js'

const legs = ['mudflat-leg-first', 'mudflat-leg-revised'].map(
  (name) => [name, legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))] as const,
)

describe.each(legs)('%s', (_, x) => {
  const leg = prepare(x)
  const calculation = calculationOf(x, { recording: true })
  const close = (own: number, old: number, what: string) =>
    expect(Object.is(own, old) || Math.abs(own - old) <= 1e-12 * Math.abs(old), `${what}: ${own}, before ${old}`).toBe(true)

  test.each(CASE_IDS)('%s', (id) => {
    const { event, air, age } = LOAD_CASES[id]
    const old = workOut(leg, bareSheet, id)
    for (const joint of JOINTS) {
      const at = placeOf(calculation, { leg: 'leg', joint, event, air, age }) as never
      const inEvent = placeOf(calculation, { event }) as never
      close(calculation.get(load.duration, inEvent), old.duration, 'duration')
      close(calculation.get(load.cycles, inEvent), old.cycles, 'cycles')
      close(calculation.get(motion.footForce, at), old.motion?.vertical ?? 0, 'foot force')
      const { motion: before, drive } = old.joints[joint]
      const jointMotion = calculation.get(motion.jointMotion, calculation.instances.implied(at) as never)
      for (const name of Object.keys(jointMotion) as (keyof typeof jointMotion)[]) close(jointMotion[name], before[name], name)
      const wound = calculation.get(cord.windup, at)
      close(calculation.get(cord.pretension, at), drive.pretension, 'pretension')
      close(wound.tautTension, drive.taut, 'taut')
      close(wound.slackTension, drive.slack, 'slack')
      close(calculation.get(cord.peakTension, at), drive.peak, 'peak')
      close(calculation.get(cord.slackTorque, at), drive.slackTorque, 'slack torque')
      close(calculation.get(cord.slipTorque, at), drive.slipTorque, 'slip torque')
      close(calculation.get(cord.shaftForce, at), drive.shaftForce, 'shaft force')
      close(calculation.get(cord.pinForce, at), drive.pinForce, 'pin force')
      const sheet = new SheetMaker(calculation as unknown as Calculation<never>).sheet([calculation.cell(cord.pinForce, at)])
      expect(sheet.gaps).toEqual([])
    }
  })
})
