import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { fourBarDeadPoint } from '../../src/kinematics/index.js'
import { checkReserves, describeLeg, legNumbers, unusualValues, withFields } from '../../src/leg/index.js'
import { type Kind, Quantity, quantity, unitNames } from '../../src/units/index.js'

const data = (name: string) => parse(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')) as Section
type Section = { [name: string]: unknown }
type Document = Parameters<typeof describeLeg>[0]

const reserves = (document: unknown) => checkReserves(legNumbers(describeLeg(document as Document)))

/** The same reserves, to a billionth. */
function same(one: Map<string, number>, other: Map<string, number>) {
  expect([...other.keys()]).toEqual([...one.keys()])
  for (const [key, reserve] of one) {
    const found = other.get(key) as number
    expect(Math.abs(found - reserve), `${key}: ${found}, not ${reserve}`).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(reserve), 1e-9))
  }
}

/** A copy of plain data with each text and each list of fields as they are made anew. */
function remade(
  x: unknown,
  text: (x: string, name: string) => unknown,
  order: (names: string[]) => string[] = (names) => names,
  at = '',
): unknown {
  if (typeof x === 'string') return text(x, at)
  if (Array.isArray(x)) return x.map((item) => remade(item, text, order, at))
  if (typeof x !== 'object' || x === null) return x
  return Object.fromEntries(order(Object.keys(x)).map((name) => [name, remade((x as Section)[name], text, order, name)]))
}

const examples = ['desk-leg-revised', 'heath-leg-revised', 'shingle-leg-revised'] as const
const document = fc.constantFrom(...examples)
const runs = { numRuns: 4, seed: 20_261_130 }
const known = new Map(examples.map((name) => [name, reserves(data(name))]))

describe('the verdict on a leg does not depend', () => {
  test('on the units of its document', () => {
    const lengths = { mm: 1e-3, m: 1, in: 0.0254, cm: 1e-2 } as const
    const units = fc.array(fc.constantFrom('mm', 'm', 'in', 'cm'), { minLength: 40, maxLength: 40 })
    fc.assert(
      fc.property(document, units, (name, chosen) => {
        let i = 0
        const inOthers = remade(data(name), (text) => {
          const [, number, unit] = /^(-?[\d.]+) (mm|m)$/.exec(text) ?? []
          if (number === undefined) return text
          const to = chosen[i++ % chosen.length] as keyof typeof lengths
          return `${(Number(number) * lengths[unit as 'mm']) / lengths[to]} ${to}`
        })
        same(known.get(name) as Map<string, number>, reserves(inOthers))
      }),
      runs,
    )
  })

  test.each(examples)('on the unit of any quantity: %s', (name) => {
    const leg = describeLeg(data(name) as Document)
    const { defaults: _, ...fields } = leg
    let changed = 0
    const inLast = (x: unknown): unknown => {
      if (x instanceof Quantity) {
        const names: readonly string[] = unitNames(x.kind as Kind)
        const unit = names.at(-1) as string
        changed++
        return unit === '1' || names.length === 0 ? x : [(x.in as (unit: string) => number).call(x, unit), unit]
      }
      if (Array.isArray(x)) return x.map(inLast)
      return typeof x !== 'object' || x === null ? x : Object.fromEntries(Object.entries(x).map(([key, inner]) => [key, inLast(inner)]))
    }
    same(known.get(name) as Map<string, number>, reserves(inLast(fields)))
    expect(changed).toBeGreaterThan(80)
  })

  test('on the order of its fields', () => {
    fc.assert(
      fc.property(document, fc.integer({ min: 1, max: 1e6 }), (name, seed) => {
        const key = (text: string) => [...text].reduce((sum, sign) => (sum * 31 + sign.charCodeAt(0) * seed) % 9973, seed)
        const shuffled = remade(
          data(name),
          (text) => text,
          (names) => names.sort((a, b) => key(a) - key(b)),
        )
        const [one, other] = [known.get(name) as Map<string, number>, reserves(shuffled)]
        same(new Map([...one].sort()), new Map([...other].sort()))
      }),
      runs,
    )
  })

  test('on the names of its parts', () => {
    const sections = ['motors', 'controllers', 'plates', 'cords', 'belts', 'pins', 'bosses', 'bolts', 'shafts', 'bearings'] as const
    fc.assert(
      fc.property(document, fc.stringMatching(/^[A-Za-z]\w{0,8}$/), (name, prefix) => {
        const given = data(name)
        const own = new Map<string, string>()
        for (const section of sections)
          for (const [i, part] of Object.keys((given[section] ?? {}) as Section).entries()) own.set(part, `${prefix}${section}${i}`)
        // Parts of several sections may share a name: each gets the one of its own section where it is defined, and all alike where it is used.
        const renamed = remade(given, (text, at) =>
          /^(name|remark|kind|size|thread|mountedOn)$/.test(at) ? text : (own.get(text) ?? text),
        ) as Section
        for (const section of sections)
          if (renamed[section] !== undefined)
            renamed[section] = Object.fromEntries(
              Object.entries(renamed[section] as Section).map(([part, value]) => [own.get(part) as string, value]),
            )
        same(known.get(name) as Map<string, number>, reserves(renamed))
      }),
      runs,
    )
  })

  test.each(['mudflat-leg-first', 'orchard-leg-revised'])('on the side that the load hangs to: %s', (name) => {
    const leg = describeLeg(data(name) as Document)
    const [left, right] = ['12 mm', '-12 mm'].map((x) => checkReserves(legNumbers(withFields(leg, { 'robot.centreOfMassLeft': x }))))
    same(left as Map<string, number>, right as Map<string, number>)
  })

  test('on whether the middle of a link is written out or left open', () => {
    const leg = describeLeg(data('heath-leg-revised') as Document)
    const middle = withFields(leg, { 'links.upper.centreOfMass': '82.5 mm', 'links.lower.centreOfMass': '90 mm' })
    same(known.get('heath-leg-revised') as Map<string, number>, checkReserves(legNumbers(middle)))
  })

  test('on which of two parts at one place has the mass', () => {
    const box = { kind: 'gearbox', ratio: 6, efficiency: 0.9, backlash: '0.2 deg', ratedTorque: '20 N m', peakTorque: '40 N m' }
    const bearings = { highestSpeed: '6000 rpm', radialLoad: '2 kN', tiltingMoment: '40 N m' }
    const leg = describeLeg(data('mudflat-leg-revised') as Document)
    // The heat capacity of the motor stays.
    const [one, other] = (
      [
        ['0.41 kg', '0.3 kg', '450 J/(kg K)'],
        ['0.5125 kg', '0.1975 kg', '360 J/(kg K)'],
      ] as const
    ).map(([motor, gearbox, specificHeat]) =>
      checkReserves(
        legNumbers(
          withFields(leg, {
            'joints.knee.drive': { ...box, ...bearings, mass: gearbox },
            'joints.hip.drive': { ...box, ...bearings, mass: gearbox },
            'motors.main.mass': motor,
            'motors.main.specificHeat': specificHeat,
            cords: undefined,
          }),
        ),
      ),
    )
    same(one as Map<string, number>, other as Map<string, number>)
  })
})

test('a parallelogram keeps its dead point in whatever units its links are written', () => {
  const linkage = { kneeLowest: '25 deg', kneeHighest: '125 deg', rockerAngleAtStraightKnee: '-165 deg', crankSide: 'negative' } as const
  for (const inch of [0.0254, 0.3048, 0.9144, 1 / 3, 1 / 7])
    for (const [long, short] of [
      [0.165, 0.034],
      [0.2, 0.04],
      [0.1537, 0.0411],
    ] as const) {
      const [a, b] = [(long / inch) * inch, (short / inch) * inch]
      for (const [ground, coupler] of [
        [a, long],
        [long, a],
      ] as const)
        for (const [crank, rocker] of [
          [b, short],
          [short, b],
        ] as const) {
          const { margin } = fourBarDeadPoint.si({
            ground,
            coupler,
            crank,
            rocker,
            rockerAngleAtStraightKnee: quantity('angle', linkage.rockerAngleAtStraightKnee).si,
            crankSide: linkage.crankSide,
            kneeLowest: quantity('angle', linkage.kneeLowest).si,
            kneeHighest: quantity('angle', linkage.kneeHighest).si,
          })
          expect(margin).toBeCloseTo((40 * Math.PI) / 180, 5)
        }
    }
})

test('nor do the remarks on it depend on units and order', () => {
  const odd = { ...data('heath-leg-revised'), supply: { currentLimit: '60 A', internalResistance: '0.00007 ohm', voltage: '0.022 kV' } }
  const plain = { ...data('heath-leg-revised'), supply: { voltage: '22 V', internalResistance: '0.07 mohm', currentLimit: '60000 mA' } }
  const [one, other] = [odd, plain].map((each) => unusualValues(describeLeg(each as Document)))
  expect(one).toHaveLength(1)
  expect(other).toEqual(one)
})
