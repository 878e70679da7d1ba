import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type BondSurface, bondedNut, bondedPin, bondPrior, bondStrength } from '../../src/fasteners/index.js'
import { isPrior } from '../../src/formula/index.js'

const metals: BondSurface[] = ['steel', 'stainlessSteel', 'aluminium']
const prints: BondSurface[] = ['printedPLA', 'printedPETG', 'printedABS', 'printedPA']
const nut = {
  acrossFlats: '7 mm',
  height: '3 mm',
  substrateShearStrength: '15 MPa',
  acrossLayersStrength: '15 MPa',
} as const

describe('priors of adhesives', () => {
  test('every one has a range, a source that says it is a prior, and conditions', () => {
    const all = [
      ...metals.flatMap((surface) => [bondPrior('anaerobicRetaining', surface), bondPrior('anaerobicRetaining', surface, 'wide')]),
      ...[...metals, ...prints].flatMap((surface) => [bondPrior('roomCureEpoxy', surface), bondPrior('roomCureEpoxy', surface, 'wide')]),
    ]
    for (const prior of all) {
      for (const value of Object.values(prior)) {
        expect(value.low).toBeLessThanOrEqual(value.si)
        expect(value.high).toBeGreaterThanOrEqual(value.si)
        expect(isPrior(value.source)).toBe(true)
        expect(value.conditions).not.toBe('')
      }
    }
  })

  test('spread into a pin and a nut they give a force that only the factors lower', () => {
    const { shearStrength, glassTransitionTemperature } = bondPrior('roomCureEpoxy', 'printedPETG')
    const plain = { shearStrength, glassTransitionTemperature, temperature: '23 degC' } as const
    const whole = { ...bondPrior('roomCureEpoxy', 'printedPETG'), temperature: '23 degC' } as const
    const pin = { diameter: '4 mm', length: '6 mm' } as const
    expect(bondedPin({ ...pin, ...whole }).axialForce.si / bondedPin({ ...pin, ...plain }).axialForce.si).toBeCloseTo(0.125, 12)
    expect(bondedNut({ ...nut, ...whole }).axialForce.si / bondedNut({ ...nut, ...plain }).axialForce.si).toBeCloseTo(0.125, 12)
  })

  test('an anaerobic on a print, a name nobody knows', () => {
    expect(() => bondPrior('anaerobicRetaining', 'printedABS')).toThrow(
      "surface is 'printedABS'; must be a metal (steel, stainlessSteel, aluminium) for an anaerobic",
    )
    expect(() => bondPrior('anaerobic' as 'roomCureEpoxy', 'steel')).toThrow(/an adhesive: near it are anaerobicRetaining/)
    expect(() => bondPrior('roomCureEpoxy', 'printedPTEG' as 'printedPETG')).toThrow(/a surface: near it are printedPETG/)
    expect(() => bondPrior('roomCureEpoxy', 'steel', 'huge' as 'wide')).toThrow(/a gap: .*best, wide/)
  })
})

describe('bonds and temperature', () => {
  const bond = { shearStrength: '5 MPa', glassTransitionTemperature: '55 degC' } as const

  test('beyond the glass transition of the adhesive or of the part they fail by name', () => {
    const beyond = { ...bond, temperature: '56 degC' } as const
    expect(() => bondedNut({ ...nut, ...beyond })).toThrow(
      /bondedNut: temperature is '56 degC'; must stay below the glass transition of the adhesive/,
    )
    expect(() => bondStrength(beyond)).toThrow(/bondStrength: temperature is '56 degC'/)
    const warm = { ...bond, temperature: '50 degC', partGlassTransitionTemperature: '48 degC' } as const
    expect(() => bondedNut({ ...nut, ...warm })).toThrow(/partGlassTransitionTemperature is '48 degC'; must be above the temperature/)
    expect(() => bondedPin({ diameter: '4 mm', length: '6 mm', ...warm })).toThrow(/partGlassTransitionTemperature/)
  })

  test('warmer never holds more', () => {
    fc.assert(
      fc.property(fc.double({ min: 250, max: 320, noNaN: true }), fc.double({ min: 0.01, max: 8, noNaN: true }), (temperature, more) => {
        const x = {
          materialFactor: 1,
          gapFactor: 1,
          fatigueFactor: 1,
          ageingFactor: 1,
          shearStrength: 1,
          glassTransitionTemperature: 328.15,
        }
        const at = (t: number) => bondStrength.si({ ...x, temperature: t, partGlassTransitionTemperature: undefined }).shearStrength
        expect(at(temperature + more)).toBeLessThanOrEqual(at(temperature))
      }),
    )
  })
})
