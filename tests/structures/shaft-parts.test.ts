import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { branchPlanes, cordPull, kneeDrumTravel, linkCord, shaftForce } from '../../src/capstan/index.js'
import { bearingCocking, clampedShaft, ringJoint, sleeveJointTilt } from '../../src/fasteners/index.js'
import { shaftBearings, shaftOverhang } from '../../src/structures/index.js'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const load = fc.record({ first: within(-200, 200), second: within(-200, 200), plane: within(-0.1, 0.1) })

describe('bearings of a shaft', () => {
  test('forces and moments of shaft and bearings vanish', () => {
    fc.assert(
      fc.property(fc.array(load, { maxLength: 5 }), within(-0.05, 0), within(0.01, 0.08), (loads, firstBearing, secondBearing) => {
        const { firstParts, secondParts } = shaftBearings.si({ firstBearing, secondBearing, loads })
        for (const [k, axis] of (['first', 'second'] as const).entries()) {
          const whole = loads.reduce((sum, each) => sum + each[axis], firstParts[k]! + secondParts[k]!)
          const moment = loads.reduce(
            (sum, each) => sum + each[axis] * each.plane,
            firstParts[k]! * firstBearing + secondParts[k]! * secondBearing,
          )
          expect(whole).toBeCloseTo(0, 9)
          expect(moment).toBeCloseTo(0, 9)
        }
      }),
    )
    expect(() =>
      shaftBearings({ firstBearing: '1 mm', secondBearing: '1 mm', loads: [{ first: '1 N', second: '0 N', plane: '0 mm' }] }),
    ).toThrow(/secondBearing.*another place/s)
  })

  test('the cord’s branches pull on the shaft as their sum in one plane does', () => {
    const pulleys = { pinionRadius: 0.008, drumRadius: 0.04, centreDistance: 0.06, tautTension: 150, slackTension: 60 }
    for (const arrangement of ['crossed', 'open'] as const) {
      const one = cordPull.si({ ...pulleys, arrangement, tautSide: 'positive', tautPlane: 0.01, slackPlane: 0.02 })
      const other = cordPull.si({ ...pulleys, arrangement, tautSide: 'negative', tautPlane: 0.01, slackPlane: 0.02 })
      const sum = shaftForce.si({ ...pulleys, arrangement })
      expect(one.tautAlong + one.slackAlong).toBeCloseTo(sum.alongCentres, 9)
      expect(Math.abs(one.tautAcross + one.slackAcross)).toBeCloseTo(sum.across, 9)
      expect(other.tautAcross).toBeCloseTo(-one.tautAcross, 12)
      expect(other.coupleAcross).toBeCloseTo(-one.coupleAcross, 12)
      expect(Math.abs(one.coupleAcross)).toBeGreaterThan(Math.abs(one.coupleAlong))
    }
  })

  test('a longer overhang deflects more, and a section that no material has is refused', () => {
    const steel = { outerDiameter: 0.01, innerDiameter: 0.004, modulus: 205e9, shearModulus: 79e9 }
    fc.assert(
      fc.property(within(0.006, 0.05), within(0.001, 0.02), (length, more) => {
        const at = (reach: number) =>
          shaftOverhang.si({ load: 120, torque: 3, span: 0.03, between: steel, overhang: [{ length: reach, ...steel }] })
        expect(at(length + more).deflection).toBeGreaterThan(at(length).deflection)
        expect(at(length).nearBearing - at(length).farBearing).toBeCloseTo(120, 9)
        // One section or the same in two pieces.
        const halves = shaftOverhang.si({
          ...{ load: 120, torque: 3, span: 0.03, between: steel },
          overhang: [0.5, 0.5].map((part) => ({ length: part * length, ...steel })),
        })
        expect(halves.deflection).toBeCloseTo(at(length).deflection, 12)
        expect(halves.twist).toBeCloseTo(at(length).twist, 12)
      }),
    )
    const section = { outerDiameter: '10 mm', modulus: '205 GPa', shearModulus: '205 GPa' } as const
    const given = { load: '1 N', span: '30 mm', between: section, overhang: [{ length: '10 mm', ...section }] } as const
    expect(() => shaftOverhang(given)).toThrow(/between.*between a third and a half/s)
  })

  test('a stub shorter than half of its diameter carries a note', () => {
    const section = { outerDiameter: '20 mm', modulus: '2.2 GPa', shearModulus: '0.8 GPa' } as const
    const noted = shaftOverhang({ load: '1 N', span: '30 mm', between: section, overhang: [{ length: '8 mm', ...section }] })
    expect(noted.deflection.notes?.map(({ text }) => text).join()).toContain('by an estimate only')
  })
})

describe('joints of a shaft', () => {
  test('a ring joint and a clamped stack of such rings gape and slip alike', () => {
    const section = { length: 0.02, outerDiameter: 0.02, innerDiameter: 0.01, modulus: 2e9, shearModulus: 0.8e9 }
    const stack = clampedShaft.si({ sections: [section, section], clampLoad: 1200, friction: 0.15, moment: 5, torque: 1 })
    const joint = ringJoint.si({ clampLoad: 1200, outerDiameter: 0.02, innerDiameter: 0.01, friction: 0.15, moment: 5 })
    expect(joint.gapMoment).toBe(stack.gapMoment)
    expect(joint.state).toBe('gaping')
    expect(ringJoint.si({ clampLoad: 1200, outerDiameter: 0.02, innerDiameter: 0.01, friction: 0.15, moment: 13 }).state).toBe('tips')
  })

  test('tilt and gap of a sleeve grow with the moment, without a jump where it opens, and without bound where it tips', () => {
    const sleeve = { clampLoad: 1200, radius: 0.008, wall: 0.003, length: 0.02, modulus: 2.2e9 }
    fc.assert(
      fc.property(within(0.1, 9.5), within(0, 0.1), (moment, more) => {
        const [one, other] = [sleeveJointTilt.si({ ...sleeve, moment }), sleeveJointTilt.si({ ...sleeve, moment: moment + more })]
        expect(other.tilt).toBeGreaterThanOrEqual(one.tilt)
        expect(other.gap).toBeGreaterThanOrEqual(one.gap)
        expect(other.contactHalfAngle).toBeLessThanOrEqual(one.contactHalfAngle)
      }),
    )
    const [closed, open] = [4.8, 4.8 + 1e-9].map((moment) => sleeveJointTilt.si({ ...sleeve, moment }))
    expect(open!.tilt).toBeCloseTo(closed!.tilt, 8)
    expect(sleeveJointTilt.si({ ...sleeve, moment: 9.61 })).toMatchObject({ state: 'tips', tilt: Number.POSITIVE_INFINITY })
  })

  test('two bearings take a cocking moment with less than one: the worst ball sees far more than its axial part', () => {
    const one = bearingCocking({ moment: '0.9 N m', balls: 8, pitchDiameter: '14 mm', contactAngle: '12 deg', pairSpacing: '14 mm' })
    expect(one.normal.si / one.axial.si).toBeGreaterThan(4.5)
    expect(one.axial.si).toBeGreaterThan(one.axialLinear.si)
  })
})

describe('cords of a leg', () => {
  test('a slack branch is an answer, and the link stays compressed', () => {
    const given = { arrangement: 'crossed', hipRadius: 0.016, kneeRadius: 0.02, linkLength: 0.15, kneeTorque: 3 } as const
    expect(linkCord.si({ ...given, restTension: 74 })).toMatchObject({ state: 'slack', slackTension: 0 })
    expect(linkCord.si({ ...given, restTension: 74 }).tautTension).toBeCloseTo(150, 9)
    const [idle, loaded] = [0, 2].map((kneeTorque) => linkCord.si({ ...given, restTension: 120, kneeTorque }))
    expect(loaded!.compression).toBeCloseTo(idle!.compression, 9)
  })

  test('the hip adds to the travel of the drum of a motor on the body', () => {
    fc.assert(
      fc.property(
        within(-1, 0),
        within(0, 1),
        within(0, 1),
        within(1, 2),
        within(-2, 2),
        (hipLowest, hipHighest, kneeLowest, kneeHighest, kneeRatio) => {
          const limits = { hipLowest, hipHighest, kneeLowest, kneeHighest, kneeRatio }
          const body = kneeDrumTravel.si({ ...limits, motorOn: 'body' })
          const thigh = kneeDrumTravel.si({ ...limits, motorOn: 'thigh' })
          expect(body.travel).toBeCloseTo(thigh.travel + hipHighest - hipLowest, 12)
          expect(thigh.kneeTravel).toBeCloseTo(thigh.travel, 12)
        },
      ),
    )
  })

  test('branches of a left-hand groove change places', () => {
    const right = branchPlanes.si({ groovePitch: 0.0012, pinionWrap: 19, pinionAngle: 2, middle: 0 })
    const left = branchPlanes.si({ groovePitch: -0.0012, pinionWrap: 19, pinionAngle: -2, middle: 0 })
    expect(left.apart).toBe(right.apart)
    expect(left.near).toBeCloseTo(right.far, 15)
  })
})
