import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import type { AnyFormula } from '../../src/formula/index.js'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import { CASE_IDS, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { geared } from './gear-legs.js'
import { oddBeside, oddSingle } from './rod-bearing-legs.js'
import { workAgain } from './run/second-reader.js'
import { EXTENSION, extension, torsion } from './sprung-legs.js'
import { beltOnGearbox, beltRevised, cordKnee, sprungBelt } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
// A four-bar whose links are all of different lengths: of a parallelogram, torques of knee and drum are the same number.
const fourBar = withFields(read('heath-leg-first'), {
  'joints.knee.through.rocker': '30 mm',
  'joints.knee.through.rod': '157 mm',
  'links.upper.centreOfMass': '80 mm',
  'joints.knee.drive.drum.grooveDiameter': '96 mm',
  'links.lower.mass': '0.153 kg',
})
// Rotors of different inertia: those of a direct drive count as they are.
const desk = read('desk-leg-first')
const twoMotors = withFields(desk, {
  'motors.other': { ...desk.motors.pancake, rotorInertia: '51 kg mm^2' },
  'joints.knee.motor': 'other',
})
const legs: (readonly [string, ReturnType<typeof legNumbers>])[] = [
  ...['mudflat-leg-first', 'mudflat-leg-revised'].map((name) => [name, legNumbers(read(name))] as const),
  ['a knee driven by a four-bar', legNumbers(fourBar)] as const,
  ['joints driven directly', legNumbers(twoMotors)] as const,
  ['a gearbox and a pair of gears', legNumbers(withFields(geared, { 'joints.knee.drive.contactStrength': '60 MPa' }))] as const,
]
// Hip and knee with belts of their own, so that no two numbers are equal by chance.
const orchard = read('orchard-leg-revised')
const twoBelts = withFields(orchard, {
  'belts.other': { ...orchard.belts.wide, axialRigidity: '380 kN', toothForce: '171 N' },
  'joints.knee.drive.belt': 'other',
  'joints.knee.drive.pretension': '655 N',
  'joints.knee.drive.largeTeeth': 109,
  'gaits.walk.traction': [-0.14, 0.17],
  'gaits.trot.traction': [-0.12, 0.16],
})
legs.push(['joints driven by belts', legNumbers(twoBelts)])
// The belt of each stage another one, so that no two numbers are equal by chance.
const twoStages = withFields(beltRevised, {
  'belts.link': { ...beltRevised.belts.link, axialRigidity: '380 kN', toothForce: '171 N', massPerLength: '0.1 kg/m', width: '24 mm' },
  'joints.knee.drive.largeTeeth': 119,
  'joints.hip.drive.pretension': '433 N',
  'links.upper.centreOfMass': '96 mm',
})
legs.push(['a knee driven by a belt along the upper link', legNumbers(twoStages)])
const threeCords = withFields(cordKnee, {
  'joints.knee.drive.drum.grooveDiameter': '96 mm',
  'joints.knee.through.friction': [0.07, 0.13, 0.19],
})
legs.push(['a knee driven by a crossed cord along the upper link', legNumbers(threeCords)])
legs.push(['a knee whose gearbox turns the pulley on the hip axis', legNumbers(beltOnGearbox)])
legs.push(['a spring beside a knee that a belt drives from the hip axis', legNumbers(sprungBelt)])
legs.push(['a rod beside the links on ball bearings', legNumbers(oddBeside)])
legs.push([
  'a flat on the hip shaft',
  legNumbers(withFields(oddBeside, { 'shafts.hipShaft.stack.flat': { depth: '2 mm', length: '14.5 mm', hubMaterial: 'PC' } })),
])
legs.push(['a rod on single bearings', legNumbers(oddSingle)])
legs.push(
  [
    'a knee with a torsion spring',
    legNumbers(withFields(torsion, { 'joints.knee.spring.fixedLeg': '53 mm', 'joints.knee.spring.movingLeg': '61 mm' })),
  ],
  [
    'a hip and a knee with extension springs',
    legNumbers(
      withFields(extension, {
        'joints.hip.spring': {
          ...EXTENSION,
          wire: 'stainless',
          wireDiameter: '1.7 mm',
          coilDiameter: '15 mm',
          coils: 27,
          freeLength: '79 mm',
          hookRadius: '7 mm',
          bendRadius: '3.5 mm',
        },
      }),
    ),
  ],
)
const formulas = new Map<string, AnyFormula>([...catalogue, [strideLoads.id, strideLoads as unknown as AnyFormula]])

/** Constants that the materials' own functions write. */
const OF_MATERIALS = ['material.transitionMargin', 'material.creepReference']
/** Shares that are equal where a material keeps all: the later one may not be the larger. Air as warm as that of the workshop may not become the colder. */
const ORDERED = ['material.kept1Year', 'environment.assemblyTemperature']

/** Numbers that a call may write itself; equal ones say nothing of their origin. */
const WRITTEN = [0, 1, 2, -1, Number.POSITIVE_INFINITY]

describe.each(legs)('%s', (_, x) => {
  const calculation = calculationOf(x, { recording: true })
  const comparisons = comparisonsOf(calculation, CHECKS, CASE_IDS)
  const made = comparisons.flatMap((one, i) => {
    const found = compare(calculation, one)
    return typeof found === 'string' ? [] : [{ one, i, found }]
  })
  const sheet = new SheetMaker(calculation as unknown as Calculation<never>).sheet(made.flatMap(({ one }) => [one.demand, one.capacity]))
  const worked = workAgain(sheet, formulas)

  test('the sheet of all checks has no gap, and the second reader no question', () => {
    expect({ gaps: sheet.gaps, problems: worked.problems }).toEqual({ gaps: [], problems: [] })
    expect(worked.results).toHaveLength(2 * made.length)
  })

  test.each(CHECKS.map((check) => [check.id, check] as const))('the second reader works %s again', (_, check) => {
    for (const [k, { one, found }] of made.entries())
      if (one.check === check)
        expect(worked.results.slice(2 * k, 2 * k + 2), `${one.id} ${one.joint}`).toEqual([found.demand, found.capacity])
  })

  test('a formula prints every input of its steps: no two formulas share a name', () => {
    const strange = sheet.steps.flatMap(({ formula, x: given }) =>
      Object.keys(given as object)
        .filter((name) => !(name in (sheet.formulas.get(formula)?.def.inputs ?? {})))
        .map((name) => `${formula}: ${name}`),
    )
    expect([...new Set(strange)]).toEqual([])
  })

  test('links are right: with every leaf moved a little, so that no two numbers are equal by chance, they are the same', () => {
    const twin = calculationOf(x, { recording: true })
    const others = comparisonsOf(twin, CHECKS, CASE_IDS)
    for (const one of others) compare(twin, one)
    for (const [i, cell] of [...twin.instances.leaves].entries())
      if (typeof cell.value === 'number' && cell.of.leaf?.kind !== 'word' && ![...OF_MATERIALS, ...ORDERED].includes(cell.of.id))
        twin.put(cell, cell.value * (1 + 1e-8 * (i + 1)) || 0)
    const both = made.filter(({ i }) => typeof compare(twin, others[i]!) !== 'string')
    const moved = new SheetMaker(twin as unknown as Calculation<never>).sheet(
      both.flatMap(({ i }) => [others[i]!.demand, others[i]!.capacity]),
    )
    const own =
      both.length === made.length
        ? sheet
        : new SheetMaker(calculation as unknown as Calculation<never>).sheet(both.flatMap(({ one }) => [one.demand, one.capacity]))
    const at = (x: unknown, path: string) => path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], x)
    const links = (of: typeof own) =>
      of.steps.flatMap(({ formula, from }, k) =>
        Object.entries(from)
          .filter(([path]) => !WRITTEN.includes(at(own.steps[k]?.x, path) as number))
          .map(([path, link]) => `${formula} ${path} <- ${link.of === 'leaf' ? of.leaves[link.number]?.id : link.number} ${link.path}`)
          .sort(),
      )
    expect(links(own)).toEqual(links(moved))
    expect(both.length).toBeGreaterThan(0.9 * made.length)
  })
})
