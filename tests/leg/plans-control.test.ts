import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTorque } from '../../src/capstan/index.js'
import { assess, controlSheet, controlText, describeLeg, withFields } from '../../src/leg/index.js'
import { materialState } from '../../src/leg/material-state.js'
import { benchDrive, benchLeg } from '../../src/leg/plans/bench.js'
import { caseState } from '../../src/leg/what-if.js'
import { InputError } from '../../src/units/index.js'
import { cordDrive } from './cord-drive.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const sheet = controlSheet(leg)
const { hip, knee } = sheet.joints

describe('against calculations by hand', () => {
  test('ratio, limits, counts and torque per ampere', () => {
    expect(hip.ratio.si).toBeCloseTo(49.6 / 8, 12)
    expect(hip.sign).toBe(-1)
    expect(hip.motorLimits.map((x) => x.in('turn'))).toEqual([expect.closeTo((85 * 6.2) / 360, 10), expect.closeTo((-45 * 6.2) / 360, 10)])
    expect(hip.countsPerAngle.in('count/deg')).toBeCloseTo((16384 * 6.2) / 360, 9)
    // Power balance of a sinusoidal motor: 3/2 · peak phase EMF · peak phase current, with peak phase EMF = line-to-line peak / √3.
    const kt = (1.5 / Math.sqrt(3) / 110) * (60 / (2 * Math.PI))
    expect(sheet.motors.hip.torqueConstants.peakPhase.si).toBeCloseTo(kt, 12)
    expect(hip.jointTorquePerPeakAmpere.si).toBeCloseTo(kt * 6.2 * cordDrive(leg, 'hip').efficiency.si, 12)
    expect(hip.jointTorquePerRmsAmpere.si / hip.jointTorquePerPeakAmpere.si).toBeCloseTo(Math.SQRT2, 12)
  })

  test('gravity terms of rods and the inertia of a rod about its end', () => {
    // Of the 0.66 kg, motor, plate of ASA and sink of aluminium sit 47 mm below the hip.
    const mounted = 0.41 + 0.084 * 0.096 * (0.007 * 1070 + 0.004 * 2700)
    expect(sheet.gravity.thigh.si).toBeCloseTo(((0.66 - mounted) * 0.0825 + mounted * 0.047 + 0.16 * 0.165) * 9.80665, 10)
    expect(sheet.gravity.shank.si).toBeCloseTo(0.16 * 0.09 * 9.80665, 12)
    const load = (0.16 * 0.18 ** 2) / 3
    expect(knee.gains.inertia.si).toBeCloseTo(load + 96e-6 * 5.6 ** 2, 12)
    expect(knee.gains.motorLocked!.si).toBeCloseTo(Math.sqrt(knee.driveStiffness!.si / load) / (2 * Math.PI), 9)
    const w = 2 * Math.PI * knee.gains.bandwidth.si
    expect(knee.gains.stiffness.si).toBeCloseTo(knee.gains.inertia.si * w * w, 8)
    expect(knee.gains.motorStiffness.si * 5.6 ** 2).toBeCloseTo(knee.gains.stiffness.si, 9)
  })

  test('the knee may never pass the torque at which a span goes slack at an end of its travel in the cold, a year old and set low', () => {
    const never = knee.currentLimits.at(-1)!
    const bench = benchLeg(leg)
    const { pinionRadius, drumRadius, span, pinionWrap, drumWrap, travel } = benchDrive(bench, 'knee')
    const { cord, friction } = bench.drives.knee
    // Bar in a frame: T = set · left + EA (expansion of the frame − that of the cord) · rise.
    const expansion = materialState(bench, leg.links.upper.material as string).thermalExpansion() - cord.thermalExpansion
    const pretension = 0.95 * 0.9 * 185 + 24e3 * expansion * (-2 - 20)
    const x = { axialRigidity: cord.axialRigidity, pretension, pinionRadius, drumRadius, span, pinionWrap, friction, slackShare: 0.01 }
    const end = { drumWrapTaut: drumWrap + travel / 2, drumWrapSlack: drumWrap - travel / 2, hold: 'clampedMidPinion' as const }
    expect(never.jointTorque.si).toBeCloseTo(slackTorque.si({ ...x, ...end }).torque, 6)
    expect(never.protects).toMatch(/loses the tension of its slack span/)
    expect(never.condition).toBe('air of -2 °C, cord a year old, pretension set 5 % too low')
    // The motor as cold as the air, −0.11 %/K of remanence, no loss counted: the cord may get all of its torque.
    const kt = (1.5 / Math.sqrt(3) / 110) * (60 / (2 * Math.PI)) * (1 + 0.0011 * 22)
    expect(never.peakPhase.si).toBeCloseTo(never.jointTorque.si / (kt * 5.6), 6)
    expect(never.cautious.si).toBeLessThan(never.peakPhase.si)
  })

  test('homing counts are the travel times the counts of a degree', () => {
    expect(hip.homing.countsBetweenStops.si).toBeCloseTo((130 * 16384 * 6.2) / 360, 6)
    expect(hip.homing.tolerance.si).toBeGreaterThan(1)
    expect(hip.homing.smallestSlip.in('deg')).toBeLessThan(1)
  })
})

describe('current limits', () => {
  test('the continuous one leaves nothing over: a robot that stands on that torque in hot air has that check at 1', () => {
    const held = knee.currentLimits[0]!
    const inHotAir = { 'loadCases.airs.normal.temperature': [leg.loadCases.airs.hot!.temperature.si, 'K'] }
    const asked = (kilograms: number) =>
      Math.abs(assess(withFields(leg, { 'robot.mass': [kilograms, 'kg'] }), { cases: ['stand'] }).cases[0]!.joints.knee.torque.si)
    // Torque is a straight line over the mass, less what the links weigh: a robot on that line asks just what may be held.
    const [little, much] = [asked(10), asked(20)]
    const mass = [10 + (10 * (held.jointTorque.si - little)) / (much - little), 'kg']
    const heavier = assess(withFields(leg, { ...inHotAir, 'robot.mass': mass }), { cases: ['stand'] })
    const check = heavier.checks.find((one) => `${one.part}: ${one.mode}` === held.protects && (one.joint ?? 'knee') === 'knee')!
    expect(check.reserve).toBeCloseTo(1, 5)
  })

  test('a winding that sheds nothing allows the same I²t: half the time, √2 times the current', () => {
    const limits = controlSheet(leg, { durations: ['1 s', '2 s'], copperMass: '2 g' }).joints.knee.currentLimits
    const [short, long] = [limits[1]!, limits[2]!]
    expect(short.protects).toMatch(/motor winding: reaches its class/)
    expect(long.protects).toMatch(/motor winding: reaches its class/)
    expect(short.peakPhase.si / long.peakPhase.si).toBeCloseTo(Math.SQRT2, 10)
  })

  test('hotter air never allows more, and every limit says what it protects', () => {
    const at = (air: number) => controlSheet(withFields(leg, { 'environment.hotAir': [air, 'degC'] })).joints.knee.currentLimits
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 45 }), (air) => {
        const [cool, warm] = [at(air), at(air + 4)]
        expect(warm[0]!.jointTorque.si).toBeLessThanOrEqual(cool[0]!.jointTorque.si)
        expect(warm.every(({ protects }) => protects.length > 0)).toBe(true)
      }),
      { numRuns: 2 },
    )
  })

  test('colder air, an older cord and a worse setting never allow more, and no limit passes the absolute one', () => {
    const at = (cold: number, left: number, setting: number) =>
      controlSheet(
        withFields(leg, { 'loadCases.airs.cold.temperature': [cold, 'degC'], 'cords.braid.pretensionLeft': [left, left, left] }),
        {
          settingAccuracy: [setting, '%'],
        },
      ).joints.hip.currentLimits
    const least = (limits: ReturnType<typeof at>) => limits.at(-1)!.peakPhase.si
    fc.assert(
      fc.property(
        fc.integer({ min: -20, max: 15 }),
        fc.double({ min: 0.5, max: 0.95, noNaN: true }),
        fc.integer({ min: 0, max: 10 }),
        (...x) => {
          const [cold, left, setting] = x
          const limits = at(...x)
          const never = least(limits)
          for (const worse of [at(cold - 3, left, setting), at(cold, left - 0.05, setting), at(cold, left, setting + 3)])
            expect(least(worse)).toBeLessThanOrEqual(never)
          for (const one of limits) {
            expect(one.peakPhase.si).toBeLessThanOrEqual(never)
            expect(one.cautious.si).toBeLessThanOrEqual(one.peakPhase.si)
            expect(one.condition.length * one.cautiousBy.length).toBeGreaterThan(0)
          }
        },
      ),
      { numRuns: 2 },
    )
  })

  test('a check that fails without any torque limits no current and is named', () => {
    const splitting = controlSheet(withFields(leg, { 'bosses.knee.outerDiameter': '4.6 mm', 'bosses.knee.hole': '3.85 mm' })).joints.knee
    expect(splitting.failsAtAnyCurrent.length).toBeGreaterThan(0)
    expect(splitting.currentLimits.at(-1)!.peakPhase.si).toBeGreaterThan(1)
  })

  test('the cautious absolute one counts a catalogue speed constant that is 5 % low: the motor then gives 5 % more torque to break something', () => {
    const [motor] = Object.keys(leg.motors)
    const of = (basis: string) =>
      controlSheet(withFields(leg, { [`motors.${motor}.speedConstantBasis`]: basis })).joints.knee.currentLimits.at(-1)!
    const [catalogue, spun] = [of('catalogue'), of('spunPeakLineToLine')]
    expect(catalogue.peakPhase.si).toBeCloseTo(spun.peakPhase.si, 9)
    expect(spun.cautious.si / catalogue.cautious.si).toBeCloseTo(1.05, 9)
  })

  test('the cautious pulse starts from the warmest winding within the ranges, and leaves room for the hottest spot', () => {
    // Bosses of metal: no print is left that its range makes too weak for the current.
    const strong = withFields(read('mudflat-leg-revised'), {
      'bosses.kneeBoss.material': 'aluminium 6061-T6',
      'bosses.hipBoss.material': 'aluminium 6061-T6',
      'pins.kneePin.lugThickness': '34 mm',
    })
    const pulse = controlSheet(strong).joints.knee.currentLimits.find(({ duration }) => duration?.in('s') === 60)!
    for (const text of [pulse.protects, pulse.cautiousBy]) expect(text).toMatch(/motor winding: reaches its class/)
    expect(pulse.cautious.si).toBeLessThan(0.98 * pulse.peakPhase.si)
  })

  test('a check that fails without any torque only at the unfavourable ends is named as well', () => {
    expect(knee.failsAtAnyCurrent.join()).toMatch(
      /link eye on the pin: wears oval under the pin, with uncertain values at their unfavourable ends/,
    )
  })

  test('a motor whose temperatures do not converge on a walk has no pulse left', () => {
    const heavy = withFields(read('mudflat-leg-first'), { 'robot.mass': '30 kg' })
    expect(caseState(benchLeg(heavy), 'hotAfternoon').joints.knee.heat.unsettled).toBeDefined()
    for (const limit of controlSheet(heavy)
      .joints.knee.currentLimits.slice(0, -1)
      .filter(({ duration }) => duration !== undefined)) {
      expect(limit.peakPhase.si).toBe(0)
      expect(limit.cautious.si).toBe(0)
      expect(limit.condition).toMatch(/do not converge/)
    }
  })

  test('a motor that walking leaves too hot has no pulse left, said plainly', () => {
    const hot = controlSheet(read('mudflat-leg-first')).joints.knee.currentLimits
    for (const limit of hot.slice(1, -1)) if (limit.peakPhase.si === 0) expect(limit.protects).toMatch(/already/)
    // Its friction holds next to nothing in the cold: the sheet says so instead of printing the limit of a warm room.
    for (const joint of ['hip', 'knee'] as const) {
      const never = controlSheet(read('mudflat-leg-first')).joints[joint].currentLimits.at(-1)!
      expect(never.protects).toMatch(/^cord on the pinion: slips$/)
      expect(never.condition).toMatch(/air of -2 °C, cord a year old/)
    }
  })
})

test('a slow loop takes the bandwidth down to a twentieth of its rate and says so', () => {
  const slow = controlSheet(leg, { loopRate: '100 Hz' }).joints.knee.gains
  expect(slow.bandwidth.si).toBeCloseTo(5, 10)
  expect(slow.limitedBy).toMatch(/rate/)
  expect(knee.gains.limitedBy).toMatch(/resonance/)
})

test('open spans keep the sign', () => {
  expect(controlSheet(withFields(leg, { 'drives.hip.arrangement': 'open' })).joints.hip.sign).toBe(1)
})

test('the page carries conventions, cautions and both joints', () => {
  const text = controlText(sheet)
  for (const part of ['Conventions', 'Cautions', 'what each protects', 'slipped cord', '-6.2']) expect(text).toContain(part)
})

test.each([
  [{ loopRate: '0 Hz' }, /loopRate/],
  [{ durations: ['10 min'] }, /durations\[0\]/],
  [{ copperMass: '3 kg' }, /below the mass of the motor/],
  [{ loopRate: '5 mm' }, /frequency/],
  [{ settingAccuracy: '80 %' }, /from 0 to 50 %/],
  [{ busCapacitance: '0 F' }, /busCapacitance.*above zero/],
  [{ highestVoltage: '20 V' }, /highestVoltage.*above the voltage of the supply/],
  [{ brakeSwitchCurrent: '-1 A' }, /brakeSwitchCurrent/],
])('%j is refused', (options, message) => {
  expect(() => controlSheet(leg, options as never)).toThrow(message)
  expect(() => controlSheet(leg, options as never)).toThrow(InputError)
})

describe('the first start', () => {
  test('homing writes where the wound-up drive stands at its stops, and the soft limits lie inside', () => {
    for (const one of [hip, knee]) {
      const { writeAtStops, softLimits, softMotorLimits, jointTorque, current, speed } = one.homing
      // The motor is beyond the stop by the windup at the homing torque: torque over stiffness, or more where the cord is softer.
      for (const side of [0, 1] as const) {
        const beyond = Math.abs(writeAtStops[side].si) - Math.abs(one.motorLimits[side].si)
        const outward = Math.sign(one.motorLimits[side].si) * Math.sign(side === 0 ? -one.sign : one.sign) * beyond
        expect(outward / one.ratio.si).toBeGreaterThan(0)
        expect(outward / one.ratio.si).toBeLessThan(0.05)
      }
      expect(softLimits![0].si).toBeGreaterThan(one.jointLimits[0].si + Math.PI / 180)
      expect(softLimits![1].si).toBeLessThan(one.jointLimits[1].si - Math.PI / 180)
      for (const side of [0, 1] as const) expect(softMotorLimits![side].si).toBeCloseTo(one.sign * one.ratio.si * softLimits![side].si, 12)
      expect(current.si * one.jointTorquePerPeakAmpere.si).toBeCloseTo(jointTorque.si, 12)
      // A rotor that stops on a spring: half J ω² = half k θ², and k θ is the torque.
      const twist = speed.si * Math.sqrt(one.reflectedInertia.si / one.driveStiffness!.si)
      expect((twist * one.driveStiffness!.si) / jointTorque.si).toBeGreaterThan(0.5)
      expect((twist * one.driveStiffness!.si) / jointTorque.si).toBeLessThan(2)
    }
  })

  test('the sign test turns the hanging leg and stays below every limit; the standing reading has the sign of the motor', () => {
    for (const one of [hip, knee]) {
      expect(one.signTest.current.si).toBeLessThan(0.5 * one.currentLimits[0]!.peakPhase.si)
      expect(one.signTest.current.si).toBeGreaterThan(one.dragCurrent.si)
      // Torque of standing over the torque of an ampere, the other way round where the cord is crossed.
      expect(one.signTest.standing.si).toBeCloseTo((one.sign * one.standTorque.si) / one.jointTorquePerPeakAmpere.si, 12)
    }
    // Crossed spans turn the joint against the motor: a positive hip angle swings the foot backward.
    expect(hip.signTest.moves).toBe('the foot swings forward')
    const open = controlSheet(withFields(leg, { 'joints.hip.drive.arrangement': 'open' })).joints.hip.signTest
    expect(open.moves).toBe('the foot swings backward')
    const text = sheet.commissioning.join('\n')
    for (const part of ['hands clear', 'swap any two motor wires', '14 electrical turns', 'A peak phase', 'switch off'])
      expect(text).toContain(part)
  })

  test('a sign test or a homing run beyond the absolute maximum is reported, on the page too', () => {
    // Bosses of metal: no print is left that its range makes too weak to stand.
    const strong = controlSheet(withFields(read('mudflat-leg-revised'), { 'bosses.knee.material': 'aluminium 6061-T6' })).joints.knee
    expect(strong.beyondMaximum).toEqual([])
    const weak = controlSheet(read('mudflat-leg-first'))
    for (const joint of ['hip', 'knee'] as const) {
      const { homing, signTest, currentLimits, beyondMaximum } = weak.joints[joint]
      const { cautious } = currentLimits.at(-1)!
      // Its cord slips in the cold at less than what turns the leg.
      expect(Math.min(homing.current.si, signTest.current.si)).toBeGreaterThan(cautious.si)
      expect(beyondMaximum).toEqual([
        expect.stringMatching(/^The sign test .*cord on the pinion: slips/),
        expect.stringMatching(/^The homing run .*cord on the pinion: slips/),
        expect.stringMatching(/^Standing .*cord on the pinion: slips/),
      ])
      expect(controlText(weak)).toContain(`Beyond the absolute maximum of the ${joint}`)
    }
  })

  test('a homing run lifts the hanging leg, and stays below the cautious maximum where it can', () => {
    for (const one of [hip, knee]) {
      const { homing, currentLimits } = one
      const [thigh, shank] = [sheet.gravity.thigh.si, sheet.gravity.shank.si]
      const lift = (one === hip ? thigh + shank : shank) + one.ratio.si * one.dragTorque.si
      expect(homing.jointTorque.si).toBeGreaterThanOrEqual(1.5 * lift * (1 - 1e-12))
      if (homing.jointTorque.si > 1.5 * lift * (1 + 1e-9))
        expect(homing.current.si).toBeLessThanOrEqual(currentLimits.at(-1)!.cautious.si * (1 + 1e-9))
    }
  })

  test('a drive that winds up by more than its travel has no soft limits, said on the page', () => {
    // A cord of rubber.
    const soft = controlSheet(withFields(leg, { 'cords.braid.axialRigidity': '500 N' }))
    const { homing, jointLimits } = soft.joints.knee
    expect(homing.softLimits).toBeUndefined()
    expect(homing.softMotorLimits).toBeUndefined()
    expect(2 * homing.inside.si).toBeGreaterThan(jointLimits[1].si - jointLimits[0].si)
    expect(controlText(soft)).toContain('leave nothing between the stops')
  })

  test('torque to current: warm magnets need more of it, in proportion to the torque', () => {
    for (const { cold, warm, jointTorque } of knee.torqueTable) {
      expect(warm.si).toBeGreaterThan(cold.si)
      expect(cold.si * knee.jointTorquePerPeakAmpere.si).toBeCloseTo(jointTorque.si, 12)
    }
    expect(knee.torqueTable.at(-1)!.jointTorque.si).toBeCloseTo(knee.currentLimits.at(-1)!.jointTorque.si, 12)
  })

  test('the encoder errs more with offset and with tilt, less at the joint than at the motor', () => {
    const rows = sheet.encoder
    expect(rows.length).toBe(9)
    for (let i = 0; i < rows.length; i += 3) {
      expect(rows[i + 1]!.atMotor.si).toBeGreaterThan(rows[i]!.atMotor.si)
      expect(rows[i + 2]!.atMotor.si).toBeGreaterThan(rows[i + 1]!.atMotor.si)
    }
    for (const { atMotor, atJoint, torqueLeft } of rows) {
      expect(atJoint.knee.si).toBeCloseTo(atMotor.si / 5.6, 12)
      // Fourteen pole pairs: the electrical error is fourteen times that of the rotor.
      expect(torqueLeft!.si).toBeCloseTo(Math.cos(14 * atMotor.si), 12)
    }
    // The field falls as the magnet moves away.
    expect(rows[0]!.field.si).toBeGreaterThan(rows[3]!.field.si)
    expect(rows[3]!.field.si).toBeGreaterThan(rows[6]!.field.si)
  })

  test('the supply sags by Ohm and takes the energy of the fall', () => {
    const { voltage, internalResistance, currentLimit } = leg.supply
    expect(sheet.supply.lowestVoltage.si).toBeCloseTo(voltage.si - internalResistance.si * currentLimit.si, 12)
    const drop = leg.loadCases.events.drop as unknown as { height: { si: number }; travel: { si: number } }
    expect(sheet.supply.landingEnergy!.si).toBeCloseTo(leg.robot.mass.si * 9.80665 * (drop.height.si + drop.travel.si), 9)
  })

  test('what a landing returns: power of a touch-down, charge of the battery, capacitors alone, and a resistor between both limits', () => {
    const { returnedPower, charging, untakenVoltage, brake, steps } = controlSheet(leg, {
      busCapacitance: '2 mF',
      highestVoltage: '30 V',
    }).supply
    const { voltage, internalResistance } = leg.supply
    const drop = leg.loadCases.events.drop as unknown as { height: { si: number }; travel: { si: number } }
    // Force m g (1 + h/s), held over the travel, times the speed of the fall.
    const fall = Math.sqrt(2 * 9.80665 * drop.height.si)
    const power = leg.robot.mass.si * 9.80665 * (1 + drop.height.si / drop.travel.si) * fall
    expect(returnedPower!.si).toBeCloseTo(power, 9)
    // Volts times amperes at the battery's terminals is what flows back.
    expect(charging!.current.si * charging!.voltage.si).toBeCloseTo(power, 9)
    expect(charging!.voltage.si).toBeCloseTo(voltage.si + internalResistance.si * charging!.current.si, 9)
    const energy = leg.robot.mass.si * 9.80665 * (drop.height.si + drop.travel.si)
    expect(0.5 * 2e-3 * (untakenVoltage!.si ** 2 - voltage.si ** 2)).toBeCloseTo(energy, 9)
    expect(brake!.onVoltage.si).toBeCloseTo(28.5, 9)
    expect(28.5 ** 2 / brake!.highest.si).toBeCloseTo(power, 9)
    expect(28.5 / brake!.lowest.si).toBeCloseTo(20, 9)
    expect(brake!.pulseEnergy.si).toBeCloseTo(energy, 9)
    expect(steps.join()).toMatch(/A brake resistor takes it: from .* to .*it burns/)
  })

  test('a supply that takes nothing back says what must not happen; a switch that is too small is named', () => {
    const bench = controlSheet(withFields(leg, { 'supply.takesBack': false }), { brakeSwitchCurrent: '2 A' }).supply
    expect(bench.charging).toBeUndefined()
    expect(bench.steps.join()).toMatch(/takes nothing back.*must not land, nor walk downhill/)
    expect(bench.brake!.state).toBe('switchTooSmall')
    expect(bench.steps.join()).toMatch(/but its switch of 2 A bears no less than/)
    // A steeper slope never returns less; without a fall and a slope nothing is returned.
    const steep = (angle: string) => controlSheet(withFields(leg, { 'loadCases.events.slopeDown.angle': angle })).supply.returnedPower!.si
    expect(steep('-40 deg')).toBeGreaterThanOrEqual(steep('-10 deg'))
  })

  test('all of it is on the page', () => {
    const text = controlText(sheet)
    for (const part of [
      'Signs and phases',
      'motor at the lower stop',
      'soft limits',
      'Torque to current',
      'shaft magnet',
      'Supply',
      'lowest in',
    ])
      expect(text).toContain(part)
  })
})
