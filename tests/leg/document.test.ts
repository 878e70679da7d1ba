import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { describeLeg } from '../../src/leg/document/describe.js'
import type { LegSpecification } from '../../src/leg/document/fields.js'
import { migrate } from '../../src/leg/document/migrate.js'
import { InputError, type Issue, Quantity } from '../../src/units/index.js'

const FILES = { first: '../../examples/mudflat-leg-first.yaml', revised: './legs/workbench.yaml' } as const
const old = (name: string) => parse(readFileSync(new URL(FILES[name as keyof typeof FILES], import.meta.url), 'utf8'))
const heavier = (name: string) => {
  const data = old(name)
  data.links.upper.mass = '0.7 kg'
  return data
}
const lighter = () => {
  const data = old('revised')
  data.links.upper.mass = '0.46 kg'
  return data
}
const current = stringify(migrate(heavier('revised')), { aliasDuplicateObjects: false })

const issuesOf = (document: unknown): readonly Issue[] => {
  try {
    describeLeg(document as LegSpecification)
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  return []
}

/** The document with one text replaced. */
const edited = (from: string, to: string) => {
  expect(current).toContain(from)
  return current.replace(from, to)
}
// biome-ignore lint/suspicious/noExplicitAny: a document as it is parsed, to be spoilt
type Draft = any
const changed = (change: (data: Draft) => void) => {
  const data = parse(current)
  change(data)
  return data
}

describe('a document of version 3', () => {
  test.each(['first', 'revised'])('the %s leg is read with every number where it now belongs', (name) => {
    const before = heavier(name)
    const leg = describeLeg(migrate(before) as never)
    expect(leg.joints.hip.drive).toMatchObject({ kind: 'cord', cord: 'braid' })
    expect(leg.joints.hip.range.highest.in('deg')).toBeCloseTo(45, 9)
    expect(leg.joints.sidewaysHip?.drive).toMatchObject({ kind: 'held' })
    expect(leg.plates.kneePlate?.mountedOn).toBe('upper')
    expect(leg.plates.kneePlate?.distance.in('mm')).toBeCloseTo(165 - 118, 9)
    expect(leg.plates.bodyPlate?.size.height.in('mm')).toBeCloseTo(96, 9)
    expect(leg.loadCases.events.slopeDown).toMatchObject({ kind: 'slope', gait: 'walk', direction: 'along' })
    expect(leg.loadCases.airs.cold?.temperature.in('degC')).toBeCloseTo(-2, 9)
    expect(leg.loadCases.ages.season?.daysWalked.si).toBe(70)
    expect(leg.motors.main?.mass.toString()).toBe(new Quantity(name === 'first' ? 0.26 : 0.41, 'mass').toString())
  })

  test('the mass of what a link carries is taken off it, and a link lighter than that is an issue that names the parts', () => {
    // Motor 0.41 kg, ASA plate 84 x 96 x 7 mm and aluminium sink 84 x 96 x 4 mm: 0.41 + 0.0604 + 0.0871 kg.
    const leg = describeLeg(migrate(heavier('revised')) as never)
    expect(leg.links.upper.mass.in('kg')).toBeCloseTo(0.7 - 0.41 - 0.084 * 0.096 * (0.007 * 1070 + 0.004 * 2700), 4)
    expect(() => migrate(lighter())).toThrow(/links.upper.mass is '0.46 kg'; must be above what the link carries: motor 410 g/)
  })

  test('versions 1 and 2 come along, and an unknown version is named', () => {
    const { environment, ...rest } = heavier('first')
    const first = migrate({ ...rest, schemaVersion: 1, air: '18 degC' })
    expect(first).toMatchObject({ schemaVersion: 4, loadCases: { airs: { normal: { temperature: '18 degC' } } } })
    expect(environment).toBeDefined()
    expect(() => migrate({ schemaVersion: 5 })).toThrow('schemaVersion is 5; must be a whole number from 1 to 4')
  })
})

describe('a document of version 4', () => {
  test('reads back what it wrote', () => {
    const leg = describeLeg(current)
    const again = describeLeg(JSON.stringify(leg))
    expect(JSON.stringify(again)).toBe(JSON.stringify(leg))
  })

  test('names what it leaves open, library entries included', () => {
    const { defaults } = describeLeg(current)
    const paths = defaults.map(({ path }) => path)
    expect(paths).toContain('joints.hip.drive.efficiency')
    expect(paths).toContain('loadCases.events.trot')
    expect(paths).not.toContain('loadCases.events.drop')
    for (const { path, value, why } of defaults) {
      expect(value, path).not.toMatch(/undefined|\[object/)
      expect(why.where.length, path).toBeGreaterThan(3)
    }
  })

  test('a knee that a rod drives from the body, belts, gears and direct drives are layouts', () => {
    const knee = changed((data: Draft) => {
      data.plates.kneePlate = { ...data.plates.bodyPlate, bolts: undefined, distance: '0 mm' }
      data.joints.knee.through = {
        kind: 'rod',
        crank: '32 mm',
        rocker: '32 mm',
        rod: '165 mm',
        // With the rocker square to the link in mid travel, crank and rod stay away from their dead points.
        rockerAngle: '-165 deg',
        diameter: '6 mm',
        material: 'aluminium 6061-T6',
      }
      data.joints.knee.drive.pinion.length = '40 mm'
      data.joints.knee.drive.drum.length = '40 mm'
      data.belts = {
        strap: {
          pitch: '3 mm',
          teeth: 118,
          width: '9 mm',
          allowableTension: '250 N',
          breakingStrength: '1 kN',
          toothForce: '40 N',
          axialRigidity: '40 kN',
          toothRootWidth: '1.6 mm',
          toothHeight: '1.2 mm',
        },
      }
      data.joints.hip.drive = {
        kind: 'belt',
        belt: 'strap',
        smallTeeth: 16,
        largeTeeth: 96,
        centreDistance: '80 mm',
        adjustment: '3 mm',
        pretension: '90 N',
        material: 'PC',
      }
      data.joints.sidewaysHip = {
        range: ['-25 deg', '30 deg'],
        motor: 'main',
        controller: 'main',
        plate: 'bodyPlate',
        drive: { kind: 'direct' },
      }
    })
    const leg = describeLeg(knee)
    expect(leg.joints.knee.through).toMatchObject({ kind: 'rod', material: 'aluminium 6061-T6' })
    expect(leg.joints.hip.drive).toMatchObject({ kind: 'belt', belt: 'strap' })
  })
})

describe('mistakes', () => {
  test.each([
    ['pretension: 185 N', 'pretenson: 185 N', 'joints.hip.drive.pretenson', 'did you mean pretension'],
    ['kind: cord', 'kind: chord', 'joints.hip.drive.kind', 'must be one of'],
    ['motor: main', 'motor: mian', 'joints.hip.motor', 'did you mean main'],
    ['cord: braid', 'cord: brade', 'joints.hip.drive.cord', 'did you mean braid'],
    ['mass: 10.5 kg', 'mass: 10,5 kg', 'robot.mass', "write '10.5 kg'"],
    ['standHeight: 295 mm', 'standHeight: 295 m', 'robot.standHeight', 'did you mean mm'],
    ['speedConstant: 110 rpm/V', 'speedConstant: 110 KV', 'motors.main.speedConstant', "write '110 rpm/V'"],
    ['angle: 14 deg', 'angle: 14°', 'loadCases.events.slopeUp.angle', "write '14 deg'"],
    ['time: 2 h', 'time: 2 hours', 'loadCases.events.stall.time', "write '2 h'"],
    ['material: TPU 95A', 'material: TPU 96A', 'foot.material', 'TPU 95A'],
    ['travel: 90 mm', 'travel: 300 mm', 'loadCases.events.hop.travel', 'to the most folded leg'],
    ['grooveDiameter: 14.4 mm', 'centreLineRadius: 8 mm\n        grooveDiameter: 14.4 mm', 'joints.hip.drive.pinion', 'exactly one of'],
    ['mountedOn: upper', 'mountedOn: body', 'joints.knee.through', 'is needed because'],
    ['gait: walk', 'gait: wlak', 'loadCases.events.slopeUp.gait', 'did you mean walk'],
    ['schemaVersion: 4', 'schemaVersion: 4\nairs: {}', 'airs', 'is not a field'],
  ])('%s written as %s is named at %s', (from, to, path, says) => {
    const issues = issuesOf(edited(from, to))
    const issue = issues.find((one) => one.path === path)
    expect(issue, JSON.stringify(issues)).toBeDefined()
    expect(issue?.accepts).toContain(says)
    expect(issue?.line).toBeGreaterThan(0)
  })

  test('a word that is no kind of drive does not ask for what a drive needs', () => {
    const document = changed((data: Draft) => {
      data.joints.hip.drive.kind = 'capstan'
      delete data.joints.hip.plate
    })
    const found = issuesOf(document)
    expect(found.map(({ path }) => path)).toContain('joints.hip.drive.kind')
    expect(found.filter(({ accepts }) => accepts.includes('is needed because joints.hip.drive.kind'))).toEqual([])
  })

  test('one friction number is answered with a range to write', () => {
    const document = changed((data: Draft) => {
      data.joints.hip.drive.friction = 0.14
    })
    expect(issuesOf(document)[0]?.accepts).toContain('[0.098, 0.14, 0.18]')
  })

  test('a thing that nothing names is an issue', () => {
    const document = changed((data: Draft) => {
      data.motors.spare = data.motors.main
    })
    expect(issuesOf(document)).toEqual([{ path: 'motors.spare', given: 'used by nothing', accepts: expect.stringContaining('or removed') }])
  })

  test('a link that outweighs the robot is an issue', () => {
    const document = changed((data: Draft) => {
      data.links.upper.mass = '11 kg'
    })
    expect(issuesOf(document).map(({ path }) => path)).toEqual(['links.upper.mass'])
  })

  test('several mistakes come together, each once', () => {
    const document = changed((data: Draft) => {
      data.robot.mass = '10 N'
      delete data.supply.voltage
      data.links.upper.section.tube = '20 mm'
      data.joints.knee.range = ['135 deg', '20 deg']
    })
    expect(
      issuesOf(document)
        .map(({ path }) => path)
        .sort(),
    ).toEqual(['joints.knee.range', 'links.upper.section', 'robot.mass', 'supply.voltage'])
  })
})
