import { describe, expect, test } from 'vitest'
import {
  boltGroupLoads,
  bondedPin,
  clampLoadOverTime,
  clampLoadThroughHeat,
  compareClampRemedies,
  hexNut,
  isoTolerance,
  jointReserves,
  looseningTorque,
  memberCompliance,
  metricThread,
  nutFactor,
  nutInPocket,
  parallelPin,
  preloadBand,
  preloadFromTorque,
  pressFit,
  pressFitOverTime,
  propertyClass,
  smallBallBearing,
  threadStrip,
  tighteningTorque,
} from '../../src/fasteners/index.js'
import { InputError } from '../../src/units/index.js'

const strengths = { partShearStrength: '20 MPa', screwShearStrength: '480 MPa', screwTensileStrength: '800 MPa' } as const

describe('bad input is named', () => {
  test('unknown designations list the near ones', () => {
    expect(() => metricThread('M3.5')).toThrow(InputError)
    expect(() => metricThread('M3.5')).toThrow(/designation is 'M3.5'; .*near it are .*M3/)
    expect(() => metricThread('M7')).toThrow(/near it are M6, M8/)
    expect(() => metricThread('m 14')).toThrow(/near it are M12, M10, M8/)
    expect(() => parallelPin('7')).toThrow(/near it are 6, 8, 5; the table lists 1, 1\.5, 2, 2\.5, 3/)
    expect(() => parallelPin('3.5 mm')).toThrow(/near it are 3, 4, 2\.5/)
    expect(() => parallelPin(4 as never)).toThrow(/designation is 4; .*near it are 4, /)
    expect(() => propertyClass('8')).toThrow(/near it are 8\.8, /)
    expect(() => smallBallBearing('10x20x5')).toThrow(/near it are 10x19x5/)
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

  test('a modulus that falls in place of a compliance that grows', () => {
    const relaxing = (time: { in: (unit: 'h') => number }) => 1 / (1 + 0.1 * time.in('h') ** 0.2)
    const told = /a number that is no smaller \(a modulus that falls is its inverse\)/
    const creepingLayers = [{ compliance: '1 um/N', creep: relaxing }] as const
    expect(() => clampLoadOverTime({ clampLoad: '1 kN', elasticCompliance: '0.1 um/N', creepingLayers, times: ['2 h'] })).toThrow(told)
    expect(() => pressFitOverTime({ pressure: '1 MPa', creep: relaxing, times: ['2 h'] })).toThrow(told)
    const joint = {
      clampLoad: '1 kN',
      boltCompliance: '0.01 um/N',
      printCompliance: '0.1 um/N',
      creep: relaxing,
      spring: { compliance: '1 um/N', flatForce: '2 kN' },
      sleeve: { compliance: '0.01 um/N', shortfall: '0 um' },
      retightenAt: '1 h',
      times: ['2 h'],
    } as const
    expect(() => compareClampRemedies(joint)).toThrow(/compareClampRemedies: creep is 0\.896966 at 7200 s; .*is its inverse/)
    const creep = (time: { in: (unit: 'h') => number }) => (time.in('h') > 1 ? Number.NaN : 1)
    expect(() => compareClampRemedies({ ...joint, creep })).toThrow(
      /compareClampRemedies: creep is NaN at 7200 s; must be creep compliance/,
    )
    expect(() => compareClampRemedies({ ...joint, creep: () => 1.2 })).toThrow(/creep is 1\.2 at 0 s/)
  })

  test('curves that end before they are needed, or stop the clock', () => {
    const ends = (time: { in: (unit: 'h') => number }) => (time.in('h') > 1 ? Number.NaN : 1)
    const creepingLayers = [{ compliance: '1 um/N', creep: ends }] as const
    const over = () => clampLoadOverTime({ clampLoad: '1 kN', elasticCompliance: '0.1 um/N', creepingLayers, times: ['2 h'] })
    expect(over).toThrow(/creepingLayers .*from then on a number/)
    const joint = {
      clampLoad: '1 kN',
      elasticCompliance: '0.1 um/N',
      creepingCompliance: '1 um/N',
      creep: () => 1,
      speedUp: () => 1,
      softening: () => 1,
      mismatchPerKelvin: '0 um',
      spells: [{ duration: '3 h', temperatureChange: '5 K' }],
    } as const
    expect(clampLoadThroughHeat(joint).state).toBe('clamped')
    expect(() => clampLoadThroughHeat({ ...joint, creep: ends })).toThrow(/creep .*from then on a number/)
    expect(() => clampLoadThroughHeat({ ...joint, speedUp: (d) => (d.si === 0 ? 1 : 0) })).toThrow(/speedUp .*positive in every spell/)
    expect(() => clampLoadThroughHeat({ ...joint, softening: () => 1.2 })).toThrow(/softening .*1 at no temperature difference/)
  })

  test('a head narrower than its hole is told whichever way torque and preload are asked', () => {
    const ring = { bearingDiameter: '4 mm', holeDiameter: '4.5 mm' } as const
    const friction = { threadFriction: 0.14, headFriction: 0.14 } as const
    const { pitch, pitchDiameter } = metricThread('M4')
    const thread = metricThread('M4')
    const told = "bearingDiameter is '4 mm'; must be larger than the hole"
    expect(() => tighteningTorque({ preload: '1 kN', thread, ...friction, ...ring })).toThrow(told)
    expect(() => looseningTorque({ preload: '1 kN', pitch, pitchDiameter, ...friction, ...ring })).toThrow(told)
    expect(() => preloadFromTorque({ torque: '1 N m', thread, ...friction, ...ring })).toThrow(told)
    expect(() => preloadBand({ torque: '1 N m', thread, lowestFriction: 0.1, highestFriction: 0.2, ...ring })).toThrow(told)
  })

  test('a thread that friction would lock is no answer', () => {
    const ring = { bearingDiameter: '7 mm', holeDiameter: '4.5 mm', headFriction: 0.1 } as const
    const thread = metricThread('M4')
    const locks = 'must let the screw turn'
    expect(() => tighteningTorque({ preload: '1 kN', thread, threadFriction: 14, ...ring })).toThrow(`threadFriction is 14; ${locks}`)
    expect(() => preloadFromTorque({ torque: '1 N m', thread, threadFriction: 14, ...ring })).toThrow(locks)
    const band = { torque: '1 N m', thread, bearingDiameter: '7 mm', holeDiameter: '4.5 mm', lowestFriction: 0.1 } as const
    expect(() => preloadBand({ ...band, highestFriction: 14 })).toThrow('and must let the screw turn')
    const screw = { diameter: '4 mm', meanDiameter: '3.5 mm', lead: '0.7 mm', headFriction: 0.1 } as const
    expect(() => nutFactor({ ...screw, threadFriction: 14 })).toThrow(locks)
  })

  test('a hole wider than the cone of pressure, from the head or from the nut', () => {
    const washer = { thickness: '0.5 mm', modulus: '207 GPa', outerDiameter: '9 mm', holeDiameter: '4.3 mm' } as const
    const plate = { thickness: '5 mm', modulus: '2 GPa', outerDiameter: '20 mm', holeDiameter: '8 mm' } as const
    const told = 'its hole narrower than the cone of pressure that reaches it'
    expect(() => memberCompliance({ layers: [washer, plate], headBearing: '5 mm', nutBearing: '10 mm' })).toThrow(told)
    expect(() => memberCompliance({ layers: [plate, washer], headBearing: '10 mm', nutBearing: '5 mm' })).toThrow(told)
    expect(() => memberCompliance({ layers: [plate, washer], headBearing: '10 mm', nutBearing: '5 mm', end: 'tapped' })).not.toThrow()
    const ring = { ...plate, outerDiameter: '7 mm' } as const
    expect(() => memberCompliance({ layers: [ring], headBearing: '10 mm', nutBearing: '10 mm' })).toThrow('wider than its hole')
  })

  test('bolts in one line hold no moment about it', () => {
    const bolts = [0, 10, 30].map((x) => ({ x: [x, 'mm'] as const, y: [2 * x, 'mm'] as const, area: '5 mm^2' as const }))
    const nowhere = { x: '0 mm', y: '0 mm', z: '0 mm' } as const
    const act = () => boltGroupLoads({ bolts, force: { x: '1 N', y: '0 N', z: '0 N' }, at: nowhere, moment: {} })
    expect(act).toThrow(/bolts .*three or more that are not in one line/)
  })

  test('five flats do not hold a nut', () => {
    const nut = { torque: '1 N m', acrossFlats: '7 mm', height: '3 mm', clearance: '0.1 mm', compressiveStrength: '60 MPa' } as const
    expect(() => nutInPocket({ ...nut, flats: 5 })).toThrow('flats is 5; must be 2, 3, 4 or 6')
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
