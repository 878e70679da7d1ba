import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, assessRobot, describeLeg, legNumbers, robotText, withFields } from '../../src/leg/index.js'
import { body } from '../../src/leg/parts/links/values.js'
import { driven, held } from './sideways-legs.js'

const G = 9.80665
const example = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = example('mudflat-leg-revised')
const across = (one: typeof leg, angle: string) =>
  assessRobot(withFields(one, { 'loadCases.events.slopeAcross.angle': angle })).slopes.across

describe('a robot that walks across a slope', () => {
  const robot = assessRobot(leg)
  const { slope, lower, upper, traction, tipsAt, walk } = robot.slopes.across
  const width = leg.robot.hipTrack.si + 2 * leg.links.hipOffset.si
  const height = leg.robot.centreOfMassHeight!.si

  test('stands in balance: forces and their moment about the middle, by hand', () => {
    const weight = leg.robot.mass.si * G
    expect(lower.si + upper.si).toBeCloseTo(weight * Math.cos(slope.si), 9)
    // The part of the weight along the slope tips it at the height of its centre.
    expect(((lower.si - upper.si) * width) / 2).toBeCloseTo(weight * Math.sin(slope.si) * height, 9)
    expect(traction.si).toBeCloseTo(Math.tan(slope.si), 12)
    expect(tipsAt.si).toBeCloseTo(Math.atan(width / 2 / height), 12)
  })

  test('loads no foot more than the load case of its legs', () => {
    const [one] = assess(leg, { cases: ['slopeAcross'] }).cases
    const peak = Math.max(...walk!.corners.map(({ peakForce }) => peakForce.si))
    // Two ways to share: areas of triangles at hundreds of moments here, the largest of each twelfth of a stance there.
    expect(peak).toBeLessThanOrEqual(one!.footForce.si * (1 + 1e-9))
    expect(peak).toBeGreaterThan(0.98 * one!.footForce.si)
  })

  test('loads its left legs, which stand lower, more than the right ones', () => {
    const force = (corner: string) => walk!.corners.find((one) => one.corner === corner)!
    for (const row of ['Front', 'Hind']) {
      expect(force(`left${row}`).peakForce.si).toBeGreaterThan(force(`right${row}`).peakForce.si)
      expect(force(`left${row}`).motorTorque.knee.si).toBeGreaterThan(force(`right${row}`).motorTorque.knee.si)
    }
  })

  test('on level ground is the walk', () => {
    const flat = across(leg, '0 deg').walk!
    for (const [k, corner] of flat.corners.entries()) {
      expect(corner.peakForce.si).toBeCloseTo(robot.gaits.walk.corners[k]!.peakForce.si, 9)
      expect(corner.motorTorque.knee.si).toBeCloseTo(robot.gaits.walk.corners[k]!.motorTorque.knee.si, 9)
    }
    // The motors are as warm as in their load case across the slope, which brakes too.
    expect(flat.meanPower.si / robot.gaits.walk.meanPower.si).toBeCloseTo(1, 2)
  })

  test('that tips it has no walk and fails', () => {
    const steep = withFields(leg, { 'loadCases.events.slopeAcross.angle': '35 deg' })
    const fallen = assessRobot(steep)
    expect(fallen.slopes.across.walk).toBeUndefined()
    expect(fallen.checks.find(({ id, where }) => id === 'robot.tipOver' && where === 'across a slope')!.reserve).toBeLessThan(1)
  })

  test('has the current of its supply and its tipping among the checks, and stands in the text', () => {
    const found = robot.checks.find(({ id, where }) => id === 'robot.supplyCurrent' && where === 'walking across a slope')!
    expect(found.demand.si).toBe(walk!.peakCurrent.si)
    expect(robot.checks.some(({ id, where }) => id === 'robot.tipOver' && where === 'across a slope')).toBe(true)
    expect(robotText(robot)).toContain('Walking across the slope')
  })
})

describe('driven sideways hips across a slope', () => {
  test('hold each foot at its arm and against the push uphill, by hand', () => {
    const { walk, slope } = across(driven, '10 deg')
    const calculation = calculationOf(legNumbers(driven))
    const links = (['upper', 'lower'] as const).reduce((sum, link) => {
      const where = calculation.instances.implied(placeOf(calculation, { leg: 'leg', link })) as never
      return sum + calculation.get(body, where).mass * G
    }, 0)
    const [offset, stand] = [driven.links.hipOffset.si, driven.robot.standHeight.si]
    for (const { corner, motorTorque, peakForce } of walk!.corners) {
      // Uphill is towards the body on the left, lower side, and away from it on the right.
      const push = (corner.startsWith('left') ? -1 : 1) * Math.tan(slope.si) * stand
      const held = Math.abs((offset + push) * peakForce.si - offset * links) / (16 * 0.85)
      // The rest speeds the links up and down as they swing; one that carries less in stance is largest in swing.
      expect(motorTorque.sidewaysHip!.si / held, corner).toBeGreaterThan(0.85)
      if (corner.startsWith('right')) expect(motorTorque.sidewaysHip!.si / held, corner).toBeLessThan(1.05)
    }
  })

  test('draw and heat more than hips that something holds, and the upper legs hold more the steeper the slope', () => {
    const [flat, steep, without] = [across(driven, '0 deg').walk!, across(driven, '10 deg').walk!, across(held, '10 deg').walk!]
    expect(steep.meanPower.si).toBeGreaterThan(without.meanPower.si)
    expect(steep.motorHeat.si).toBeGreaterThan(without.motorHeat.si)
    // The lower legs hold less: the push uphill has the other sign there than their offset.
    const perForce = (walk: typeof flat, side: string) => {
      const { motorTorque, peakForce } = walk.corners.find(({ corner }) => corner === `${side}Front`)!
      return motorTorque.sidewaysHip!.si / peakForce.si
    }
    expect(perForce(steep, 'right')).toBeGreaterThan(1.5 * perForce(flat, 'right'))
    expect(perForce(steep, 'left')).toBeLessThan(perForce(flat, 'left'))
  })
})
