import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { linkBodies } from '../../src/leg/exchange/link-bodies.js'
import { assess, assessRobot, describeLeg, legNumbers, robotText, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { feetOf, stanceShares } from '../../src/leg/robot/feet.js'
import { strideOf } from '../../src/leg/stride-of.js'
import { caseState } from '../../src/leg/what-if.js'

const example = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = example('mudflat-leg-revised')
const rodLeg = example('heath-leg-revised')
const G = 9.80665

describe('the stride of a robot’s leg', () => {
  test('a knee driven by a rod has the drum torques of its load case', () => {
    // The load case takes rods and cranks by statics of their own; the stride here goes through the coupling of drums and joints.
    const prepared = legModel(legNumbers(rodLeg))
    const { joints } = caseState(prepared, 'walk')
    const stride = strideOf(prepared, 'walk', { samples: 240 })
    if (!stride.walkable) throw new Error('the example walks')
    for (const joint of ['hip', 'knee'] as const) {
      expect(stride.actuators[joint].peakTorque.si / Math.abs(joints[joint].drum.torque) - 1).toBeCloseTo(0, 3)
      expect(stride.motors[joint].peakSpeed.si / joints[joint].heat.motorSpeed - 1).toBeCloseTo(0, 2)
    }
  })

  test('a leg mounted the other way round walks as this one walks backward', () => {
    // Without push along the ground a stride backward is the stride forward with time reversed: the same angles, speeds of the other sign.
    const prepared = legModel(legNumbers(leg))
    const [ahead, back] = [false, true].map((mirrored) => strideOf(prepared, 'walk', { mirrored, traction: 0, samples: 240 }))
    if (!ahead!.walkable || !back!.walkable) throw new Error('the example walks')
    for (const joint of ['hip', 'knee'] as const) {
      expect(back!.joints[joint].peakTorque.si).toBeCloseTo(ahead!.joints[joint].peakTorque.si, 6)
      expect(back!.joints[joint].peakSpeed.si).toBeCloseTo(ahead!.joints[joint].peakSpeed.si, 6)
    }
  })
})

describe('the robot on its feet', () => {
  const off = withFields(leg, {
    'robot.mass': '6 kg',
    'robot.hipSpacing': '360 mm',
    'robot.centreOfMassForward': '10 mm',
    'robot.centreOfMassLeft': '6 mm',
    'robot.centreOfMassHeight': '250 mm',
  })
  const robot = assessRobot(off)

  test('forces of the feet are in equilibrium with a weight off the middle', () => {
    // Computed: the three equations of equilibrium and equal stiffness of the legs, worked out for this robot by hand.
    const { hipTrack, hipSpacing } = off.robot
    const [L, B] = [hipSpacing.si, hipTrack.si + 2 * off.links.hipOffset.si]
    const { leftFront, rightFront, leftHind, rightHind } = robot.stand.forces
    const weight = 6 * G
    expect(leftFront.si + rightFront.si + leftHind.si + rightHind.si).toBeCloseTo(weight, 9)
    expect((leftFront.si + rightFront.si - leftHind.si - rightHind.si) * (L / 2)).toBeCloseTo(weight * 0.01, 9)
    expect((leftFront.si + leftHind.si - rightFront.si - rightHind.si) * (B / 2)).toBeCloseTo(weight * 0.006, 9)
    expect(leftFront.si - rightFront.si).toBeCloseTo(leftHind.si - rightHind.si, 9)
  })

  test('slopes shift the weight from pair to pair', () => {
    // Computed: moments about the feet. 6 kg, 360 mm between the pairs, centre of mass 250 mm high and 10 mm forward, slope 0.25 rad.
    const { slopes } = assessRobot(
      withFields(off, { 'loadCases.events.slopeUp.angle': '0.25 rad', 'loadCases.events.slopeDown.angle': '-0.25 rad' }),
    )
    const [down, across] = [6 * G * Math.sin(0.25), 6 * G * Math.cos(0.25)]
    const front = (way: number) => across * (0.5 + 0.01 / 0.36) - (way * down * 0.25) / 0.36
    expect(slopes.up.front.si).toBeCloseTo(front(1), 9)
    expect(slopes.up.hind.si).toBeCloseTo(across - front(1), 9)
    expect(slopes.down.front.si).toBeCloseTo(front(-1), 9)
    expect(slopes.up.front.si).toBeCloseTo(19.9798, 4)
    expect(slopes.down.front.si).toBeCloseTo(40.19817, 4)
    expect(Math.tan(slopes.up.tipsAt.si)).toBeCloseTo(0.19 / 0.25, 12)
    expect(Math.tan(slopes.down.tipsAt.si)).toBeCloseTo(0.17 / 0.25, 12)
  })

  test('across a slope the lower legs carry more, and the feet are held sideways', () => {
    const slope = 0.2
    const leaning = withFields(off, { 'loadCases.events.slopeAcross.angle': `${slope} rad` as '0.2 rad' })
    const { checks, cases } = assess(leaning, { cases: ['slopeAcross'] })
    // Computed: moments about the upper feet, with the weight off to the lower side and to the end.
    const B = leaning.robot.hipTrack.si + 2 * leaning.links.hipOffset.si
    const lowerSide = 0.5 + 0.006 / B + (0.25 / B) * Math.tan(slope)
    // A leg that stands alone on the lower side carries all of that side, as long as three feet hold the weight; on two it is no less.
    const upright = cases[0]!.footForce.si
    expect(upright).toBeGreaterThan(lowerSide * 6 * G * Math.cos(slope) * 0.95)
    expect(upright).toBeLessThan(lowerSide * 6 * G * Math.cos(slope) * 1.25)
    const hold = checks.find(({ id }) => id === 'sidewaysHip.hold')!
    const { upper, lower } = linkBodies(leaning)
    const beside = leaning.links.hipOffset.si * (upper.mass + lower.mass) * G * Math.cos(slope)
    const moment = upright * (leaning.links.hipOffset.si + Math.tan(slope) * leaning.robot.standHeight.si) - beside
    // The rest is what accelerates the links in the stance.
    expect(hold.demand.si / moment).toBeCloseTo(1, 2)
    const slip = checks.find(({ id }) => id === 'ground.slip')!
    const { lowest, highest } = leaning.gaits.walk!.traction
    expect(slip.demand.si).toBeCloseTo(Math.hypot(Math.max(-lowest.si, highest.si), Math.tan(slope)), 9)
  })

  test('every leg is calculated for the most loaded one', () => {
    const load = (of: typeof leg) => assess(of, { cases: ['stand', 'walk'] }).cases.map(({ footForce }) => footForce.si)
    const [stand, walk] = load(off)
    const { leftFront } = robot.stand.forces
    expect(stand).toBeCloseTo(leftFront.si, 9)
    // Alone on the left side, it carries what the moments about the right feet demand.
    const width = off.robot.hipTrack.si + 2 * off.links.hipOffset.si
    expect(walk).toBeGreaterThan((0.5 + 0.006 / width) * 6 * G - 1e-9)
    // A centre of mass off the middle never loads a leg less, whichever way it is off.
    const middle = load(withFields(off, { 'robot.centreOfMassForward': '0 mm', 'robot.centreOfMassLeft': '0 mm' }))
    const behind = load(withFields(off, { 'robot.centreOfMassForward': '-10 mm', 'robot.centreOfMassLeft': '-6 mm' }))
    expect(stand).toBeGreaterThan(middle[0]!)
    expect(behind[0]).toBe(stand)
    expect(behind[1]).toBeCloseTo(walk!, 9)
  })

  test('a centre of mass beside the feet is rejected', () => {
    expect(() => withFields(off, { 'robot.centreOfMassForward': '180 mm' })).toThrow(
      /robot.centreOfMassForward is 180 mm.*less than 180 mm either way, half the distance of front and hind feet/,
    )
    expect(() => withFields(off, { 'robot.centreOfMassLeft': '-1 m' })).toThrow(/robot.centreOfMassLeft is -1 m/)
  })

  test.each(['mudflat', 'desk', 'heath', 'orchard', 'shingle'])('the load case of a walk is never below the robot’s: %s', (name) => {
    const one = example(`${name}-leg-revised`)
    const { gaits } = assessRobot(one)
    const [walk, back] = assess(one, { cases: ['walk', 'walkBack'] }).cases
    const most = (of: (corner: (typeof gaits.walk.corners)[number]) => number) => Math.max(...gaits.walk.corners.map(of))
    // With the weight on a diagonal two feet bear it: half each, where the mean over the stance is a third.
    expect(walk!.footForce.si).toBeCloseTo((one.robot.mass.si * G) / 2, 6)
    expect(most(({ peakForce }) => peakForce.si)).toBeLessThanOrEqual(walk!.footForce.si * (1 + 1e-9))
    for (const joint of ['hip', 'knee'] as const)
      expect(most(({ motorTorque }) => motorTorque[joint].si)).toBeLessThanOrEqual(
        Math.max(walk!.joints[joint].motorTorque!.si, back!.joints[joint].motorTorque!.si),
      )
  })

  test.each([
    { 'robot.centreOfMassForward': '25 mm', 'robot.centreOfMassLeft': '-12 mm' },
    { 'gaits.walk.dutyFactor': 0.62 },
    { 'gaits.walk.dutyFactor': 0.85, 'robot.centreOfMassForward': '-30 mm' },
    { 'gaits.walk.stepLength': '60 mm', 'gaits.walk.dutyFactor': 0.7 },
    { 'robot.hindLegs': 'mirrored', 'robot.centreOfMassForward': '20 mm' },
  ] as const)('nor with %o', (fields) => {
    const one = withFields(leg, fields as never)
    const peak = Math.max(...assessRobot(one).gaits.walk.corners.map(({ peakForce }) => peakForce.si))
    expect(peak).toBeLessThanOrEqual(assess(one, { cases: ['walk'] }).cases[0]!.footForce.si * (1 + 1e-6))
    expect(peak).toBeGreaterThan(0.49 * one.robot.mass.si * G)
  })

  test('a walk on three feet needs the weight over them', () => {
    expect(robot.gaits.walk.unsupported.si).toBeGreaterThan(0)
    expect(robot.notes.join(' ')).toContain('no three feet hold the weight')
    // At most all of the weight rests on the two feet beside it; on a diagonal each of them bears about half.
    const peak = Math.max(...robot.gaits.walk.corners.map(({ peakForce }) => peakForce.si))
    expect(peak).toBeGreaterThan(0.5 * 6 * G)
    expect(peak).toBeLessThan(0.6 * 6 * G)
  })
})

describe('rotors at touch-down', () => {
  test('the blow of each drive follows from the pose, and a leg that is more bent has less of it', () => {
    const at = (touchDownHeight: '335 mm' | '290 mm') =>
      assessRobot(
        withFields(leg, { 'loadCases.events.drop.touchDownHeight': touchDownHeight, 'loadCases.events.drop.travel': '40 mm' }),
      ).landings.filter(({ event }) => event === 'drop')
    const [straight, bent] = [at('335 mm'), at('290 mm')]
    for (const landings of [straight, bent]) {
      const drop = leg.loadCases.events.drop!
      if (drop.kind !== 'drop') throw new Error('the example drops')
      expect(landings[0]!.speed.si).toBeCloseTo(Math.sqrt(2 * G * drop.height.si), 12)
    }
    // The knee by hand: the foot moves up by l1 l2 sin q3 / D for a turn of the knee alone, the hip turns so that it moves straight up.
    const { upper, lower } = leg.links
    const [l1, l2, D] = [upper.length.si, lower.length.si, 0.29]
    const cosine = (D * D - l1 * l1 - l2 * l2) / (2 * l1 * l2)
    const rate = straight[0]!.speed.si / ((l1 * l2 * Math.sqrt(1 - cosine * cosine)) / D)
    // The knee's motor rides on the upper link: its drum's speed against the rotor's rest is less or more by the hip's over the ratio.
    expect(Math.abs(bent[1]!.drumSpeed.si - rate) / rate).toBeLessThan(0.1)
    for (const joint of [0, 1]) expect(bent[joint]!.blow.si).toBeLessThan(straight[joint]!.blow.si)
    expect(straight[1]!.toes).toBe('lie flat')
  })

  test('a branch that snaps back is noted with what helps', () => {
    const notes = assessRobot(leg).notes.filter((note) => note.includes('snaps back'))
    expect(notes).toEqual([expect.stringContaining('At touch-down of a drop the rotor of the knee still rests.')])
    expect(assessRobot(withFields(leg, { 'loadCases.events.drop.height': '1 mm' })).notes.join(' ')).not.toContain('snaps back')
  })
})

describe('the supply of all motors together', () => {
  const firm = assessRobot(leg, { traction: 0 })

  test('what the bus gives is mechanical power and heat, no more and no less', () => {
    const { gaits } = firm
    for (const id of ['walk', 'trot'] as const) {
      const prepared = legModel(legNumbers(leg))
      const shares = stanceShares(prepared.x, feetOf(prepared.x, id))
      const weight = leg.robot.mass.si * G
      const shaft = [0, 1, 2, 3].reduce((sum, corner) => {
        const own = shares[corner]!
        const force = (phase: number) => weight * own[Math.min(own.length - 1, Math.floor(phase * own.length))]!
        const stride = strideOf(prepared, id, { ...(id === 'walk' ? { force } : {}), traction: 0, lossyBack: true, samples: 240 })
        if (!stride.walkable) throw new Error('the example walks')
        const { hip, knee } = stride.motors
        return sum + [hip, knee].reduce((all, { meanPowerOut, meanPowerIn }) => all + meanPowerOut.si - meanPowerIn.si, 0)
      }, 0)
      const { meanPower, motorHeat, controllerHeat } = gaits[id]
      const expected = shaft + motorHeat.si + controllerHeat.si + leg.supply.electronics.si
      expect(meanPower.si / expected - 1).toBeCloseTo(0, 2)
    }
  })

  test('motors together never draw more than their peaks one by one', () => {
    for (const id of ['walk', 'trot'] as const) {
      const alone = assess(leg, { cases: [id] }).checks.find((one) => one.id === 'supply.current')!
      expect(firm.gaits[id].peakCurrent.si).toBeLessThan(alone.demand.si)
    }
  })

  test('energy, running time and range follow from the mean power', () => {
    const { gaits } = assessRobot(withFields(leg, { 'supply.energy': '90 W h', 'supply.usableShare': 0.8 }))
    const { meanPower, energyPerMetre, costOfTransport, runningTime, range } = gaits.walk
    const speed = leg.gaits.walk!.speed.si
    expect(energyPerMetre.si).toBeCloseTo(meanPower.si / speed, 9)
    expect(costOfTransport.si).toBeCloseTo(meanPower.si / (leg.robot.mass.si * G * speed), 9)
    // The cells pay their own loss: quadratic of voltage, power and resistance.
    const { voltage, internalResistance } = leg.supply
    const current = (voltage.si - Math.sqrt(voltage.si ** 2 - 4 * internalResistance.si * meanPower.si)) / (2 * internalResistance.si)
    expect(runningTime!.si).toBeCloseTo((0.8 * 90 * 3600) / (voltage.si * current), 3)
    expect(range!.si).toBeCloseTo(runningTime!.si * speed, 6)
  })

  test('a supply that takes nothing back needs a brake resistor', () => {
    const bench = withFields(leg, { 'supply.takesBack': false })
    const without = assessRobot(bench)
    const back = without.checks.find(({ id, where }) => id === 'robot.returnedPower' && where === 'trotting')!
    expect(back.reserve).toBe(0)
    expect(without.passes).toBe(false)
    expect(back.demand.si).toBeCloseTo(without.gaits.trot.notTaken.si, 12)
    const held = assessRobot(bench, { brakeResistor: back.demand.times(1.2).as('power') })
    expect(held.checks.find(({ id, where }) => id === 'robot.returnedPower' && where === 'trotting')!.reserve).toBeCloseTo(1.2, 9)
    // A battery that takes it back lowers the mean power.
    expect(assessRobot(leg).gaits.trot.meanPower.si).toBeLessThan(without.gaits.trot.meanPower.si)
  })

  test('a battery that is too small for the longest walk, or browns out, fails', () => {
    const small = assessRobot(withFields(leg, { 'supply.energy': '10 W h' }))
    expect(small.checks[0]).toMatchObject({ id: 'robot.runningTime' })
    expect(small.passes).toBe(false)
    const weak = assessRobot(withFields(leg, { 'supply.internalResistance': '2 ohm' }))
    expect(weak.gaits.trot.state).toBe('brownOut')
    expect(weak.passes).toBe(false)
  })

  test('a closed housing warms by its heat through film, wall and film', () => {
    const { gaits, housingRise } = assessRobot(leg, { housing: { surface: '0.2 m^2', wall: '2 mm', coefficient: '10 W/(m^2 K)' } })
    const heat = gaits.walk.motorHeat.si + gaits.walk.controllerHeat.si
    expect(housingRise!.si).toBeCloseTo((heat * (2 / 10 + 0.002 / 0.2)) / 0.2, 9)
  })
})

describe('the ground pushes and brakes, as in the load cases', () => {
  const [lossless, both] = [
    withFields(leg, {
      'joints.hip.drive.efficiency': 1,
      'joints.knee.drive.efficiency': 1,
      ...Object.fromEntries(Object.keys(leg.motors).map((name) => [`motors.${name}.noLoadCurrent`, '0 A'])),
    }),
    assessRobot(leg),
  ]
  const [push, brake] = [0.15, -0.15].map((traction) => assessRobot(leg, { traction }))

  test('pushing costs force times distance more than braking, without losses', () => {
    const shaft = (traction: number, id: 'walk' | 'trot') => {
      const { meanPower, motorHeat, controllerHeat } = assessRobot(lossless, { traction }).gaits[id]
      return meanPower.si - motorHeat.si - controllerHeat.si
    }
    for (const id of ['walk', 'trot'] as const) {
      const { lowest, highest } = leg.gaits[id]!.traction
      expect([lowest.si, highest.si]).toEqual([-0.15, 0.15])
      const work = 0.3 * leg.robot.mass.si * G * leg.gaits[id]!.speed.si
      expect((shaft(0.15, id) - shaft(-0.15, id)) / work).toBeCloseTo(1, 2)
    }
  })

  test('each value is that of the worse, energy that of the way which draws more', () => {
    for (const id of ['walk', 'trot'] as const) {
      const [own, one, other] = [both, push!, brake!].map(({ gaits }) => gaits[id])
      for (const of of ['peakPower', 'peakReturned', 'peakCurrent', 'motorHeat', 'notTaken'] as const)
        expect(own![of].si, of).toBe(Math.max(one![of].si, other![of].si))
      expect(own!.lowestVoltage.si).toBe(Math.min(one!.lowestVoltage.si, other!.lowestVoltage.si))
      expect(own!.meanPower.si).toBe(Math.max(one!.meanPower.si, other!.meanPower.si))
      if (id === 'trot') expect(other!.peakReturned.si).not.toBe(one!.peakReturned.si)
      for (const [k, { motorTorque }] of own!.corners.entries())
        for (const joint of ['hip', 'knee'] as const)
          expect(motorTorque[joint].si).toBe(Math.max(one!.corners[k]!.motorTorque[joint].si, other!.corners[k]!.motorTorque[joint].si))
    }
  })
})

test('the text names what fails and what helps, and no number is left out', () => {
  const text = robotText(assessRobot(withFields(leg, { 'supply.energy': '10 W h' })))
  expect(text).toMatch(/^The robot fails: 1 of \d+ checks are below 1\.|^The robot fails/)
  expect(text).toContain('what helps is a larger battery')
  // A wrench and a motor sheet read torques in one unit.
  expect(text).toMatch(/motor torque hip and knee +[\d.]+ N, [\d.]+ N m, [\d.]+ N m/)
  expect(text).not.toContain('N mm')
  expect(text).not.toMatch(/undefined|NaN|Infinity/)
})

test('bad input is named', () => {
  expect(() => assessRobot(withFields(leg, { 'robot.legs': 6 }))).toThrow(/robot.legs is 6.*must be 4/)
  expect(() => assessRobot(leg, { brakeResistance: '1 W' } as never)).toThrow(/brakeResistance.*brakeResistor/)
  expect(() => withFields(leg, { 'robot.legs': 6, 'robot.centreOfMassLeft': '5 mm' })).not.toThrow()
  expect(() => assess(withFields(leg, { 'robot.legs': 6, 'robot.centreOfMassLeft': '5 mm' }))).toThrow(
    /centreOfMassLeft.*with other than four legs the centre of mass must be in the middle/,
  )
})
