import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { documentFields } from '../../src/leg/document/fields.js'
import { assess, describeLeg, textReport, unusualValues, withFields } from '../../src/leg/index.js'
import { eachLeaf } from '../../src/leg/schema/index.js'
import { InputError } from '../../src/units/index.js'
import { putting } from './changed-document.js'
import { cordKnee } from './through-legs.js'

const folder = new URL('../../examples/', import.meta.url)
const read = (name: string) => readFileSync(new URL(`${name}.yaml`, folder), 'utf8')
const examples = readdirSync(folder).flatMap((name) => (name.endsWith('.yaml') ? [name.replace('.yaml', '')] : []))
const [heath, orchard] = [describeLeg(read('heath-leg-revised')), describeLeg(read('orchard-leg-revised'))]

/** What a document is told: the fields that it is refused for, or the values to check. */
function toldOf(make: () => ReturnType<typeof describeLeg>): { refused: string[]; remarked: string[] } {
  try {
    return { refused: [], remarked: unusualValues(make()).map(({ path }) => path) }
  } catch (error) {
    if (error instanceof InputError) return { refused: error.issues.map(({ path }) => path), remarked: [] }
    throw error
  }
}

test.each(examples)('%s has no unusual value', (name) => {
  expect(unusualValues(describeLeg(read(name)))).toEqual([])
})

test('nor has a leg with a knee driven by cord through the hip', () => {
  expect(unusualValues(cordKnee)).toEqual([])
})

describe('a slip of a unit is refused by its name', () => {
  test.each([
    ['millikelvin per watt', heath, 'motors.outrunner.windingToMount', '700 K/W', 'at most 100 K/W'],
    ['a controller in millikelvin', heath, 'controllers.bridge.toAir', '9000 K/W', 'at most 200 K/W'],
    ['grams as kilograms', heath, 'motors.outrunner.mass', '410 kg', 'at most 20 kg'],
    ['a motor heavier than copper', heath, 'motors.outrunner.mass', '4.1 kg', 'can only be 100 kg/m^3 to 15000 kg/m^3'],
    ['micrometres as millimetres', heath, 'bosses.hipBoss.holeScatter', '1 mm', 'at most 0.3 mm'],
    ['a cord ten times as strong as its fibre', heath, 'cords.braid.breakingStrength', '290 kN', 'at most 200 kN'],
    ['a cord stronger than its fibre', heath, 'cords.braid.breakingStrength', '29 kN', 'can only be'],
    ['a cord too thin for its strength', heath, 'cords.braid.diameter', '0.16 mm', 'must fit'],
    ['a cord of a thousandth of its rigidity', heath, 'cords.braid.axialRigidity', '24 N', 'at least 50 N'],
    ['an inertia in kg m^2', heath, 'motors.outrunner.rotorInertia', '0.096 kg m^2', 'can only be'],
    ['a motor lighter than its rotor', heath, 'motors.outrunner.mass', '41 g', 'can only be 0.0001 to 1'],
    ['a resistance of a hundredth', heath, 'motors.outrunner.terminalResistance', '0.75 mohm', 'the motor constant that follows'],
    ['legs heavier than the robot', heath, 'robot.mass', '0.7 kg', 'must fit'],
    ['more days of walking than days', heath, 'loadCases.ages.season.daysWalked', 700, 'can only be'],
    ['a plate of glue', heath, 'plates.hipPlate.material', 'anaerobic adhesive', 'an adhesive, which bonds parts and is none'],
    ['a sink of print', heath, 'plates.hipPlate.sink.material', 'PC', 'must be a metal'],
    ['a belt in newtons of something else', orchard, 'belts.wide.allowableTension', '1700 kN', 'at most 100 kN'],
  ])('%s', (_, leg, path, value, accepts) => {
    const change = () => withFields(leg, { [path]: value } as never)
    const { refused } = toldOf(change)
    expect(refused.length).toBeGreaterThan(0)
    expect(change).toThrow(accepts)
  })

  test('which names the other fields that may be wrong', () => {
    expect(() => withFields(heath, { 'cords.braid.diameter': '0.16 mm' })).toThrow(
      /cords\.braid\.breakingStrength .*must fit cords\.braid\.diameter, cords\.braid\.fibre/,
    )
  })
})

describe('an unusual value is accepted with a remark', () => {
  test.each([
    ['milliohms left out', heath, 'supply.internalResistance', '0.07 mohm', 'usual is 2 mohm to 1 ohm'],
    ['a drop of a hair', heath, 'loadCases.events.drop.height', '0.4 mm', 'usual is 1 mm to 1 m'],
    ['a drop of some millimetres', heath, 'loadCases.events.drop.height', '4 mm', 'the height of the fall over the standing height'],
    ['a motor that conducts too well', heath, 'motors.outrunner.windingToMount', '0.07 K/W', 'usual is 0.08 K/W to 10 K/W'],
    ['a can ten times as long', heath, 'motors.outrunner.canLength', '320 mm', 'usual is 900 kg/m^3'],
    ['a resistance of a tenth', heath, 'motors.outrunner.terminalResistance', '7.5 mohm', ''],
    ['a motor that turns ten times too fast', heath, 'motors.outrunner.speedConstant', '1100 rpm/V', ''],
    ['a weak cord', heath, 'cords.braid.breakingStrength', '290 N', 'over the cross-section of a cord of LCP'],
    ['a heavy link', heath, 'links.upper.mass', '1.4 kg', 'the mass of the link over that of its section'],
    ['a drum of rubber', heath, 'joints.knee.drive.drum.material', 'TPU 95A', 'a soft polymer is unusual for this part'],
    ['a current limit of a tenth', heath, 'controllers.bridge.currentLimit', '5.5 A', 'over the current that holds the standing robot'],
    ['a no-load current tenfold', heath, 'motors.outrunner.noLoadCurrent', '6 A', 'no-load current over'],
    ['a controller in kelvin per centiwatt', heath, 'controllers.bridge.toAir', '0.9 K/W', 'rise of the controller in temperature'],
    ['a loop of a tenth of its rate', heath, 'controllers.bridge.loopRate', '200 Hz', 'mechanical time constant'],
    ['a walk of a tenth of its speed', heath, 'gaits.walk.speed', '0.03 m/s', 'least on the ground'],
    ['a slope of a tenth', heath, 'loadCases.events.slopeUp.angle', '1.2 deg', 'the slope up over the slope down'],
    ['a hop as high as a drop', heath, 'loadCases.events.hop.height', '200 mm', 'the drop over the hop'],
    ['a season of some years', heath, 'loadCases.ages.season.time', '700 day', 'the share of days with a walk'],
    ['walks on one day of ten', heath, 'loadCases.ages.season.daysWalked', 7, 'the share of days with a walk'],
    ['holes that scatter more than the pin is larger', heath, 'bosses.kneeBoss.holeScatter', '0.05 mm', 'interference of its pin'],
    ['a belt of ten times its teeth', orchard, 'belts.wide.teeth', 1230, 'the length of the belt over its way'],
    ['a belt for pulleys of ten times the size', orchard, 'belts.wide.leastTeeth', 180, 'over the fewest'],
    ['an adjustment of a tenth', orchard, 'joints.knee.drive.adjustment', '0.3 mm', 'over the pitch of the belt'],
    ['a light belt', orchard, 'belts.wide.massPerLength', '0.011 kg/m', 'the mass per length'],
  ])('%s', (_, leg, path, value, why) => {
    const found = unusualValues(withFields(leg, { [path]: value } as never))
    expect(found.length).toBeGreaterThan(0)
    expect(found.some((one) => one.path === path || one.others.includes(path) || one.others.some((other) => path.startsWith(other)))).toBe(
      true,
    )
    expect(found.map((one) => one.why).join('; ')).toContain(why)
  })

  test('which the verdict and the report carry', () => {
    const verdict = assess(withFields(heath, { 'supply.internalResistance': '0.07 mohm' }), { cases: ['stand'] })
    expect(verdict.unusual).toEqual(unusualValues(verdict.leg))
    const report = textReport(verdict)
    expect(report).toMatch(/values to check first/i)
    expect(report.replaceAll(/\s+/g, ' ')).toContain('0.07 mohm: usual is 2 mohm to 1 ohm.')
    expect(textReport(assess(heath, { cases: ['stand'] }))).not.toMatch(/values to check first/i)
  })

  test('unless the document left it open', () => {
    const data = parse(read('desk-leg-revised'))
    data.robot = { mass: '2.4 kg', standHeight: '162 mm' }
    // The distances of the hips that are assumed for it suit a larger robot.
    expect(unusualValues(describeLeg(data))).toEqual([])
  })
})

describe('a digit that slipped by some places', () => {
  const given = parse(read('heath-leg-revised')) as object
  const quantities: [path: string, text: string][] = []
  eachLeaf(documentFields, given, (path, field, value) => {
    if ('kind' in field && typeof value === 'string' && !/^-?0 /.test(value)) quantities.push([path, value])
  })
  const silent = (factor: number) =>
    quantities.flatMap(([path, text]) => {
      const [, number, unit] = /^(\S+) (.+)$/.exec(text) as unknown as [string, string, string]
      const told = toldOf(() => describeLeg(putting(given, path, `${Number((Number(number) * factor).toPrecision(12))} ${unit}`) as never))
      return told.refused.length + told.remarked.length === 0 ? [path] : []
    })

  test('three places up is never accepted silently', () => {
    expect(quantities.length).toBeGreaterThan(100)
    expect(silent(1000)).toEqual([])
  })

  test('three places down is only where a value may be nearly 0', () => {
    expect(silent(0.001)).toEqual([
      'joints.knee.through.rockerAngle',
      'cords.braid.thermalExpansion',
      'bearings.hipBearings.seatInterference',
      'loadCases.airs.cold.temperature',
      'loadCases.airs.normal.temperature',
      'loadCases.airs.shelf.temperature',
    ])
  })
})
