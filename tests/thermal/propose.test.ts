import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assessMount, motorMount, proposeMount, typicalMotor } from '../../src/thermal/index.js'

const can63 = typicalMotor({
  canDiameter: '63 mm',
  canLength: '32 mm',
  speedConstant: '110 rpm/V',
  terminalResistance: '75 mohm',
  ratedCurrent: '30 A',
})
const wish = {
  motor: can63,
  torque: '0.5 N m',
  polymer: { conductivity: '0.2 W/(m K)', density: '1070 kg/m^3', specificHeat: '1300 J/(kg K)', limit: '85 degC' },
  width: '84 mm',
  height: '96 mm',
  thickness: '8 mm',
  finSpace: '20 mm',
  air: '30 degC',
} as const

describe('a motor from five numbers', () => {
  test('has ranges with sources, each with its typical value inside', () => {
    const properties = Object.values(can63).filter((each) => typeof each === 'object' && 'low' in each)
    expect(properties).toHaveLength(11)
    for (const { low, high, si, source } of properties as never as { low: number; high: number; si: number; source: { where: string } }[]) {
      expect(low).toBeLessThan(si)
      expect(high).toBeGreaterThan(si)
      expect(source.where).not.toBe('')
    }
  })

  test('spans the resistance that was measured on a geared outer-rotor actuator', () => {
    // Lin, Thomas and Best, University of Michigan, open repository: winding to case 1.070 K/W. Its can was not read: 80 mm by 27 mm is a likely one.
    const { windingToStator } = typicalMotor({
      canDiameter: '80 mm',
      canLength: '27 mm',
      speedConstant: '100 rpm/V',
      terminalResistance: '186 mohm',
      ratedCurrent: '20 A',
    })
    expect(windingToStator.low).toBeLessThan(1.07)
    expect(windingToStator.high).toBeGreaterThan(1.07)
  })

  test('parts weigh no more than the whole', () => {
    expect(can63.windingMass.si + can63.statorMass.si + can63.canMass.si).toBeLessThan(can63.mass.si)
  })

  test('bad numbers are listed at once', () => {
    expect(() => typicalMotor({ canDiameter: '0 mm' } as never)).toThrow(/canDiameter[\s\S]*canLength[\s\S]*ratedCurrent/)
  })
})

describe('mounts for a wish', () => {
  test('are found, the lightest first', () => {
    const { state, proposals } = proposeMount(wish)
    expect(state).toBe('met')
    const masses = proposals.map(({ design }) => design.mass.si)
    expect(masses).toEqual([...masses].sort((a, b) => a - b))
  })

  test('keep every part below its limit when the network is solved again', () => {
    let met = 0
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.8, noNaN: true }), fc.double({ min: 0, max: 45, noNaN: true }), (torque, air) => {
        const { proposals } = proposeMount({ ...wish, torque: [torque, 'N m'], air: [air, 'degC'] })
        met += proposals.length
        for (const { design } of proposals) {
          const mount = motorMount(can63.motor, design.specification)
          const { parts } = assessMount(mount, { torque: [torque, 'N m'] }, [
            { part: 'plate', node: 'mount', limit: '75.000001 degC' },
            { part: 'magnets', node: 'can', limit: '70.000001 degC' },
            { part: 'winding', node: 'hottestPhase', limit: '120.000001 degC' },
          ])
          expect(parts).toHaveLength(3)
          expect(parts.map(({ state }) => state)).not.toContain('fails')
          expect(mount.mass.si).toBeCloseTo(design.mass.si, 12)
        }
      }),
      { numRuns: 4 },
    )
    expect(met).toBeGreaterThan(3)
  })

  test('a torque that no mount holds is refused with the torque that can be held', () => {
    const { state, refusal, message } = proposeMount({ ...wish, torque: '3 N m' })
    expect(state).toBe('refused')
    const torque = refusal!.nearest[0]!.met!
    expect(proposeMount({ ...wish, torque: [torque.si, 'N m'] }).state).toBe('met')
    expect(proposeMount({ ...wish, torque: [1.01 * torque.si, 'N m'] }).state).toBe('refused')
    expect(message).toContain('instead of 3 N m')
  })

  test('a small torque that hot air does not allow is refused with a smaller one', () => {
    // The magnets may have 70 °C: the air leaves them next to nothing.
    const hot = { ...wish, air: '69.99 degC', torque: '0.02 N m' } as const
    const { state, refusal } = proposeMount(hot)
    expect(state).toBe('refused')
    const torque = refusal!.nearest[0]!.met!.si
    expect(torque).toBeLessThan(0.02)
    expect(proposeMount({ ...hot, torque: [torque, 'N m'] }).state).toBe('met')
  })
})

describe('a space for the plate', () => {
  test('that does not hold the ring of the motor is named, with the ring', () => {
    expect(() => proposeMount({ ...wish, width: '35 mm', height: '30 mm' })).toThrow(
      /width is '35 mm'; must be larger than the ring of the motor, 39\.06 mm[\s\S]*height is '30 mm'/,
    )
    expect(() => proposeMount({ ...wish, motor: undefined } as never)).toThrow('must be made by typicalMotor')
    expect(() => proposeMount(undefined as never)).toThrow('must be made by typicalMotor')
  })

  test('that is longer than any plate gives plates of the longest form', () => {
    const { state, proposals } = proposeMount({ ...wish, height: '900 mm' })
    expect(state).toBe('met')
    for (const { design } of proposals) expect(design.plate.height.si).toBeLessThanOrEqual(5 * design.plate.width.si * (1 + 1e-12))
  })
})
