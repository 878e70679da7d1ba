import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bearingRules } from '../../src/leg/document/rules-of-bearings.js'
import { pulleyRatio } from '../../src/leg/document/rules-of-through.js'
import { assess, checkReserves, describeLeg, type LegNumbers, legFormula, legNumbers, withFields } from '../../src/leg/index.js'
import { solveFor } from '../../src/study/index.js'
import { Quantity } from '../../src/units/index.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const heath = read('heath-leg-revised')
const shingle = read('shingle-leg-revised')

describe('sizes that do not lie one within another are refused, and score nothing', () => {
  test.each([
    [
      'a post at the rim of its drum',
      heath,
      'joints.knee.drive.anchor.edgeDistance',
      '1.9 mm',
      /edgeDistance is 1\.9 mm; must be above half the post/,
    ],
    [
      'a post as thick as that',
      heath,
      'joints.hip.drive.anchor.postDiameter',
      '20 mm',
      /hip\.drive\.anchor\.edgeDistance is 9 mm; must be above/,
    ],
    [
      'teeth as wide as the pitch',
      shingle,
      'belts.link.toothRootWidth',
      '5 mm',
      /belts\.link\.toothRootWidth is 5 mm; must be below the pitch/,
    ],
    ['a pitch below the teeth', shingle, 'belts.wide.pitch', '2 mm', /belts\.wide\.toothRootWidth is 2\.65 mm; must be below the pitch/],
    [
      'a bearing without a ring',
      heath,
      'bearings.hipBearings.own.outerDiameter',
      '11 mm',
      /own\.outerDiameter is 11 mm; must be larger than the bore/,
    ],
    [
      'a cap narrower than its shaft',
      heath,
      'shafts.hipShaft.capSpan',
      '8 mm',
      /shafts\.hipShaft\.capSpan is 8 mm; must be larger than the shaft/,
    ],
    [
      'a sink under half of the motor',
      heath,
      'plates.hipPlate.sink.size.width',
      '30 mm',
      /hipPlate\.sink\.size\.width is 30 mm; must be larger/,
    ],
    [
      'screws beside the motor',
      heath,
      'bolts.motorBolts.pattern.diameter',
      '70 mm',
      /pattern\.diameter is 70 mm; must be below the diameter of its motor/,
    ],
  ])('%s', (_, leg, path, value, message) => {
    expect(() => withFields(leg, { [path]: value })).toThrow(message)
  })

  /** A sweep writes numbers past the document. */
  const swept = (leg: typeof heath, change: (x: LegNumbers) => void) => {
    const x = structuredClone(legNumbers(leg))
    change(x)
    return checkReserves(x, ['walk', 'stand', 'season'])
  }
  test('an edge within its hole fails in a sweep', () => {
    const reserves = swept(heath, (x) => Object.assign((x.joints.knee.drive as { anchor: object }).anchor, { edgeDistance: 0.0019 }))
    expect(reserves.get('anchor.tearOut knee')).toBe(0)
    expect(reserves.get('anchor.tearOut hip')).toBeGreaterThan(1)
  })
  test('pulley teeth of no width fail in a sweep', () => {
    const reserves = swept(shingle, (x) => Object.assign(x.belts!.link as object, { toothRootWidth: 0.006 }))
    expect(reserves.get('kneePulley.shear')).toBe(0)
  })
  test('a pin at the free edge of its boss fails in a sweep', () => {
    const reserves = swept(heath, (x) => Object.assign(x.bosses!.kneeBoss as object, { edgeDistance: 0.0024 }))
    expect(reserves.get('boss.tearOut knee')).toBe(0)
  })
  test('a search for an edge distance finds the one beyond the hole', () => {
    const tearOut = legFormula(heath, { check: 'anchor.tearOut knee', cases: ['walk', 'shelf'] })
    const now = tearOut({}) as { readonly si: number }
    const found = solveFor(tearOut, 'joints.knee.drive.anchor.edgeDistance', { joints: { knee: { drive: { anchor: {} } } } }, now.si)
    expect(found.value.in('mm')).toBeCloseTo(9, 6)
  })
})

describe('a motor has a plate of its own', () => {
  test('two motors on one plate get no verdict', () => {
    const shared = withFields(driven, { 'joints.sidewaysHip.plate': 'hipPlate', 'plates.sidePlate': undefined })
    expect(() => assess(shared)).toThrow(
      /joints\.hip\.plate is 'hipPlate'; is not calculated yet: it carries the motor of joints\.sidewaysHip as well/,
    )
  })
  test('the motor of the hip does not sit on the lower link', () => {
    const shank = withFields(heath, { 'plates.hipPlate.mountedOn': 'lower', 'plates.hipPlate.distance': '30 mm' })
    expect(() => assess(shank)).toThrow(/plates\.hipPlate\.mountedOn is 'lower'; is not calculated yet/)
  })
  test.each(['sidewaysHip', 'hip', 'knee'])('no plate is warmed by the controller of joints.%s', (joint) => {
    const on = withFields(driven, { [`joints.${joint}.controllerOn`]: 'kneePlate' })
    expect(() => assess(on)).toThrow(/controllerOn is 'kneePlate'; is not calculated yet: a controller must hang in free air/)
  })
  test('a plate is not a strip', () => {
    const strip = withFields(heath, { 'plates.hipPlate.sink.size': { width: '44 mm', height: '240 mm' } })
    expect(() => assess(strip)).toThrow(/plates\.hipPlate\.sink\.size .*at most 5 times as long as it is wide/)
  })
})

test("a joint's own bearing has a bore below its outer diameter", () => {
  const refusedBy = (millimetres: number) => {
    const [inner, outer, width] = [millimetres, 13, 5].map((size) => new Quantity(size / 1000, 'length'))
    const refused: string[] = []
    const pin = { bearing: { own: { bore: inner, outerDiameter: outer, width } } }
    bearingRules({ pins: { knee: pin } } as never, (path) => refused.push(path))
    return refused
  }
  expect([refusedBy(4), refusedBy(13)]).toEqual([[], ['pins.knee.bearing.own.bore']])
})

test('the pulley on the hip axis turns as often for one turn of the knee as the knee has more teeth', () => {
  const through = { kind: 'belt', hipTeeth: 20, kneeTeeth: 30 }
  expect(pulleyRatio({ joints: { knee: { through } } } as never)).toBe(1.5)
  expect(pulleyRatio({ joints: { knee: { through: { ...through, hipTeeth: undefined } } } } as never)).toBe(1)
})
