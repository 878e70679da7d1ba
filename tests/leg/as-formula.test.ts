import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { NoResultError } from '../../src/formula/index.js'
import {
  assess,
  CASE_IDS,
  checkReserves,
  describeLeg,
  governingReserve,
  type LegNumbers,
  legFigures,
  legFormula,
  legNumbers,
  withFields,
} from '../../src/leg/index.js'
import { driveOf } from '../../src/leg/numbers.js'
import { withMaterialValues } from '../../src/leg/ranges.js'
import { materialOf } from '../../src/leg/schema/tables.js'
import { PROPERTY_KINDS, type PropertyName } from '../../src/materials/index.js'
import { optimise, scalarPaths, sensitivity, solveFor, sweep, uncertainty } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'
import { cordDrive } from './cord-drive.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8'))

describe('a leg as a formula', () => {
  test('without anything given it is the leg itself', () => {
    expect(legFormula(leg)({}).si).toBe(governingReserve(legNumbers(leg)).margin)
  })

  test('fields are given at their places, checked and with units', () => {
    const reserve = legFormula(leg, { check: 'cord.slack knee', cases: ['walk'] })
    const half = reserve({ drives: { knee: { pretension: '45 N' } } }).si
    const full = reserve({ drives: { knee: { pretension: '90 N' } } }).si
    expect(full / half).toBeCloseTo(2, 12)
    expect(() => reserve({ drives: { knee: { pretension: '45 mm' } } } as never)).toThrow(/force/)
    expect(() => reserve({ wings: 2 } as never)).toThrow(InputError)
  })

  test('sizes that cannot be have no figures, and a study passes over them', () => {
    const good = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
    const figures = legFigures(good, { cases: ['walk'], uncertain: [] })
    expect(() => figures({ plates: { bodyPlate: { sink: { thickness: '-1 mm' } } } })).toThrow(NoResultError)
    const table = sweep(figures, { over: { 'plates.bodyPlate.sink.thickness': ['-1 mm', '4 mm'] } })
    expect(Array.from(table.in('hottestMount', 'degC'), Number.isNaN)).toEqual([true, false])
  })

  test('it can be solved for any field', () => {
    const reserve = legFormula(leg, { check: 'cord.slack knee', cases: ['walk'] })
    const { value } = solveFor(reserve, 'drives.knee.pretension', { drives: { knee: {} } }, 1.25, { between: ['10 N', '500 N'] })
    const stiffer = withFields(leg, { 'joints.knee.drive.pretension': [value.si, 'N'] })
    const check = assess(stiffer, { cases: ['walk'] }).checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')
    expect(check?.reserve).toBeCloseTo(1.25, 8)
  })

  test('it can be swept', () => {
    const reserve = legFormula(leg, { check: 'motor.plate hip', cases: ['walk'] })
    const table = sweep(reserve, { over: { 'motor.terminalResistance': ['0.05 ohm', '0.1 ohm', '0.15 ohm'] } })
    const [little, middle, much] = Array.from(table.in('result', '1')) as [number, number, number]
    expect(little).toBeGreaterThan(middle)
    expect(middle).toBeGreaterThan(much)
  })

  test('words are given at their places too, from their tables', () => {
    const reserve = legFormula(leg, { check: 'motor.plate knee', cases: ['walk'] })
    const asIs = reserve({}).si
    expect(reserve({ plate: { material: 'ASA' } }).si).toBe(asIs)
    expect(reserve({ plate: { material: 'PC' } }).si).toBeGreaterThan(asIs)
    expect(reserve({ plate: { material: 'PLA' } }).si).toBeLessThan(asIs)
    const changed = assess(withFields(leg, { 'plate.material': 'PC' }), { cases: ['walk'] }).checks
    expect(reserve({ plate: { material: 'PC' } }).si).toBe(
      changed.find(({ id, joint }) => id === 'motor.plate' && joint === 'knee')?.reserve,
    )
    expect(() => reserve({ plate: { material: 'PCC' } })).toThrow(/PC/)
    expect(() => reserve({ drives: { hip: { cord: 'rope' } } })).toThrow(/braid/)
    expect(() => reserve({ drives: { hip: { arrangement: 'twisted' } } } as never)).toThrow(/crossed/)
  })

  test('a check that applies to none of the load cases throws, and one that does not apply has no answer', () => {
    expect(() => legFormula(leg, { check: 'cord.shelf knee', cases: ['walk'] })).toThrow(
      /must include a load case that cord.shelf knee applies to: shelf/,
    )
    // The ferrule's bond is asked of bonded ends only; this leg's are knots.
    expect(() => legFormula(leg, { check: 'ferrule.bond knee' })({})).toThrow(NoResultError)
  })

  test('an unknown check is refused with the near name', () => {
    expect(() => legFormula(leg, { check: 'cord.slak knee' })).toThrow(/did you mean cord.slack knee/)
    expect(() => legFormula(leg, { check: 'cord.slack' })).toThrow(InputError)
  })
})

describe('ranges of a leg', () => {
  const revised = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
  const ranges = (of: typeof leg) =>
    scalarPaths(legFormula(of).def.inputs).filter((path) => /friction|Left|Retention|^materials/.test(path))

  test('friction, what is left, what an end keeps and materials scatter without being given', () => {
    const slip = legFormula(leg, { check: 'cord.slip knee', cases: ['walk'] })
    const { friction } = cordDrive(leg, 'knee')
    const spread = uncertainty(slip, {}, { samples: 200 })
    const first = spread.linear.contributions[0]
    expect(first?.path).toBe('joints.knee.drive.friction')
    expect(first?.scatters).toContain(`${friction.low} to ${friction.high}`)
    expect(spread.linear.value.si).toBe(slip({}).si)
    const [low, high] = [friction.low, friction.high].map((value) => slip({ drives: { knee: { friction: value } } }).si) as [number, number]
    expect(spread.monteCarlo.sorted[0]).toBeGreaterThanOrEqual(low)
    expect(spread.monteCarlo.sorted.at(-1)).toBeLessThanOrEqual(high)
    expect(uncertainty(slip, {}, { samples: 200 }).monteCarlo.sorted).toEqual(spread.monteCarlo.sorted)
  })

  test('a value that is given is sure, and then the rest still scatters', () => {
    const slip = legFormula(leg, { check: 'cord.slip knee', cases: ['walk'] })
    const paths = uncertainty(slip, { joints: { knee: { drive: { friction: 0.12 } } } }, { samples: 200 }).linear.contributions.map(
      ({ path }) => path,
    )
    expect(paths).not.toContain('joints.knee.drive.friction')
    expect(paths).toContain('joints.hip.drive.friction')
  })

  test('a material as a formula input is the same as an own material of the document', () => {
    const check = 'drum.groove knee'
    const { material } = cordDrive(leg, 'knee').drum
    const weaker = legFormula(leg, { check })({ materials: { [material]: { tensileStrength: '40 MPa' } } }).si
    const written = withFields(leg, {
      'materials.weaker': { basedOn: material, tensileStrength: '40 MPa' },
      'joints.knee.drive.drum.material': 'weaker',
    })
    expect(weaker).toBe(legFormula(written, { check })({}).si)
    expect(weaker).toBeLessThan(legFormula(leg, { check })({}).si)
  })

  test('with chosen paths only those scatter; an unknown one is refused with the near name', () => {
    const one = legFormula(leg, { uncertain: ['joints.knee.drive.friction'] })
    expect(sensitivity(one, {}).inputs.map(({ path }) => path)).toEqual(['joints.knee.drive.friction'])
    expect(() => legFormula(leg, { uncertain: ['joints.knee.drive.fricton'] })).toThrow(/did you mean joints.knee.drive.friction/)
    expect(() => uncertainty(legFormula(leg, { uncertain: [] }), {})).toThrow(/something uncertain/)
  })

  test('no property with a range that acts on a check is missing among the inputs', { timeout: 180_000 }, () => {
    const dampAndBare = withFields(revised, {
      'bolts.stack.sleeves': false,
      'bolts.motor.sleeves': false,
      'bearings.hip.retained': false,
      'environment.humidity': 0.5,
    })
    for (const each of [leg, revised, dampAndBare]) {
      const x = legNumbers(each)
      const listed = ranges(each)
      const reserves = (values: LegNumbers) => JSON.stringify([...checkReserves(values, CASE_IDS)])
      const asItIs = reserves(x)
      const names = new Set(listed.flatMap((path) => (path.startsWith('materials.') ? [path.split('.')[1] as string] : [])))
      for (const name of names) {
        for (const property of Object.keys(PROPERTY_KINDS) as PropertyName[]) {
          const value = materialOf(name, x.materials as never)[property]
          if (value === undefined || listed.includes(`materials.${name}.${property}`)) continue
          for (const end of [value.low, value.high]) {
            const moved = { ...x, materials: withMaterialValues(x.materials, { [name]: { [property]: end } }) }
            expect(reserves(moved) === asItIs, `${name}.${property}`).toBe(true)
          }
        }
      }
    }
  })
})

describe('a leg as several figures', () => {
  const good = withFields(describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8')), {
    'bosses.hipBoss.material': 'PC',
    'bosses.kneeBoss.material': 'PC',
  })
  const figures = legFigures(good)({})
  const verdict = assess(good)

  test('they are those of the assessment', () => {
    expect(figures.margin.si).toBe(verdict.governing.reserve / verdict.governing.requiredReserve)
    expect(figures.reserve.si).toBe(verdict.governing.reserve)
    expect(figures.footGive.si).toBe(Math.abs(verdict.foot.deflection!.z.si))
    expect(figures.footError.si).toBe(verdict.foot.error.together.worstCorner.si)
    const mounts = verdict.cases.flatMap(({ joints }) => [joints.hip.mountTemperature!.si, joints.knee.mountTemperature!.si])
    expect(figures.hottestMount.si).toBeCloseTo(Math.max(...mounts), 6)
    expect(figures.walkingLoss.si).toBeGreaterThan(0)
  })

  test('mass of the drives, by hand', () => {
    // Two motors, two plates of ASA, two sinks of aluminium 84 x 96 x 4 mm, two drums of polycarbonate 14 mm long.
    const x = legNumbers(good)
    const names = [x.plates.bodyPlate!.material, x.plates.bodyPlate!.sink!.material, driveOf(x, 'hip', 'cord').drum.material]
    const [asa, aluminium, pc] = names.map((name) => materialOf(name).density!.si) as [number, number, number]
    const ring = (outside: number, bore: number) => (Math.PI / 4) * (outside ** 2 - bore ** 2) * 0.014
    const hand =
      2 * (0.41 + 0.084 * 0.096 * x.plates.bodyPlate!.thickness * asa + 0.084 * 0.096 * 0.004 * aluminium) +
      pc * (ring(0.0976 + 0.0016, 0.022) + ring(0.088 + 0.0016, 0.016))
    expect(figures.driveMass.si).toBeCloseTo(hand, 12)
  })

  test('optimise trades them: lighter mounts within a margin, and a polymer chosen from the table', () => {
    const found = optimise(legFigures(good, { cases: ['walk', 'hotAfternoon'], uncertain: [] }), {
      vary: { 'sink.thickness': { from: '1 mm', to: '6 mm' } },
      choices: { plate: { ASA: { plate: { material: 'ASA' } }, PC: { plate: { material: 'PC' } }, PLA: { plate: { material: 'PLA' } } } },
      goals: { minimise: 'driveMass' },
      constraints: { margin: { min: 0.85 } },
      evaluations: 120,
    })
    expect(found.state).toBe('found')
    expect(found.best.results.driveMass!.si).toBeLessThan(figures.driveMass.si)
    const changed = withFields(good, {
      'sink.thickness': found.best.inputs['sink.thickness'],
      'plate.material': found.best.choices.plate,
    })
    const { governing } = assess(changed, { cases: ['walk', 'hotAfternoon'] })
    expect(governing.reserve / governing.requiredReserve).toBeGreaterThan(0.85)
  })
})

test('numbers that are changed in place are seen, at any depth', () => {
  const x = structuredClone(legNumbers(leg))
  const before = governingReserve(x, ['walk'])
  ;(x as { robot: { mass: number } }).robot.mass *= 1.5
  const after = governingReserve(x, ['walk'])
  expect(after.margin).toBeLessThan(before.margin)
  expect(after).toEqual(governingReserve(structuredClone(x), ['walk']))
})
