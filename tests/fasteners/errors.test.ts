import { describe, expect, test } from 'vitest'
import {
  bondedPin,
  clampLoadOverTime,
  hexNut,
  isoTolerance,
  jointReserves,
  metricThread,
  pressFit,
  propertyClass,
  threadStrip,
} from '../../src/fasteners/index.js'
import { InputError } from '../../src/units/index.js'

const strengths = { partShearStrength: '20 MPa', screwShearStrength: '480 MPa', screwTensileStrength: '800 MPa' } as const

describe('bad input is named', () => {
  test('unknown designations list the near ones', () => {
    expect(() => metricThread('M3.5')).toThrow(InputError)
    expect(() => metricThread('M3.5')).toThrow(/designation is 'M3.5'; .*near it are .*M3/)
    expect(() => hexNut('m4')).toThrow(/M4/)
    expect(() => propertyClass('8.9')).toThrow(/near it are .*8\.8/)
    expect(() => metricThread('constructor')).toThrow(InputError)
    expect(() => hexNut('toString')).toThrow(InputError)
    expect(() => isoTolerance({ diameter: '4 mm', zone: 'm9' as 'm6' })).toThrow(/zone is 'm9'/)
  })

  test('a boss no larger than its bore', () => {
    const material = { modulus: '2 GPa', poissonRatio: 0.4 } as const
    const act = () => pressFit({ diameter: '4 mm', diametralInterference: '40 um', bossDiameter: '4 mm', boss: material, pin: material })
    expect(act).toThrow("fasteners.pressFit: bossDiameter is '4 mm'; must be larger than the bore")
  })

  test('engagement longer than the thread', () => {
    const act = () => threadStrip({ thread: metricThread('M4'), engagement: '9 mm', threadLength: '8 mm', ...strengths })
    expect(act).toThrow("engagement is '9 mm'; must not exceed the length of thread")
  })

  test('a temperature beyond the glass transition fails instead of giving a number', () => {
    const pin = { diameter: '4 mm', length: '6 mm', shearStrength: '20 MPa', glassTransitionTemperature: '55 degC' } as const
    expect(() => bondedPin({ ...pin, temperature: '60 degC' })).toThrow(/temperature is '60 degC'; must stay below the glass transition/)
    expect(bondedPin({ ...pin, temperature: '23 degC' }).state).toBe('usable')
  })

  test('a creep curve that does not start at 1', () => {
    const creepingLayers = [{ compliance: '1 um/N', creep: () => 1.2 }] as const
    const act = () => clampLoadOverTime({ clampLoad: '1 kN', elasticCompliance: '0.1 um/N', creepingLayers, times: ['1 h'] })
    expect(act).toThrow(/creepingLayers .*1 at time 0/)
  })
})

test('preload above the proof load is answered, with a note', () => {
  const { yieldReserve } = jointReserves({ clampLoad: '6 kN', externalLoad: '200 N', loadFactor: 0.9, proofLoad: '5.1 kN' })
  expect(yieldReserve.si).toBeLessThan(1)
  expect(yieldReserve.notes?.[0]?.text).toContain('preload below the proof load')
})

test('table look-ups after the first are the same object', () => {
  expect(metricThread('M4')).toBe(metricThread('M4'))
  expect(metricThread.si('M4')).toBe(metricThread.si('M4'))
  expect(hexNut('M4')).toBe(hexNut('M4'))
  expect(hexNut.si('M4')).toBe(hexNut.si('M4'))
})
