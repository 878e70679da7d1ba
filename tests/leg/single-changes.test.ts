import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { describeLeg, type LegNumbers, legNumbers } from '../../src/leg/index.js'
import { reservesOf } from './reserves-of.js'

const revised = legNumbers(describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')))
const reserves = reservesOf(revised)
const before = reserves(revised)

type Change = readonly [name: string, path: string, by: number, mayRise?: Readonly<Record<string, string>>]

const WIDER = 'a wider fork holds a couple across the leg with less force'
const COUPLE = Object.fromEntries(
  ['pin.shear', 'boss.bearing', 'boss.mouth', 'boss.tearOut', 'boss.netSection', 'boss.fatigue', 'boss.prised', 'pin.bearingTongue'].map(
    (id) => [id, WIDER],
  ),
)

/**
 * Changes of one field that a builder meets, each a factor for the worse. What may rise is named with its reason; everything else must stay or fall, and
 * something must fall.
 */
const CHANGES: readonly Change[] = [
  ['a heavier probe', 'robot.mass', 1.3],
  [
    'hips closer together front to back',
    'robot.hipSpacing',
    0.8,
    {
      'motor.touch': 'on the level the weight only passes to other times of the stance',
      'motor.current': 'as motor.touch: the magnets of a landing are cooler',
      'motor.winding': 'as motor.touch: a stall begins cooler',
      'controller.heat': 'as motor.touch: the magnets of a stall are cooler',
      'stackBolt.overload': 'as motor.touch: the plates are cooler',
      'stackBolt.headPressure': 'as motor.touch: the plates are cooler',
      'motorBolt.headPressure': 'as motor.touch: the plates are cooler',
    },
  ],
  ['hips closer together left to right', 'robot.hipTrack', 0.8],
  ['a load carried high', 'robot.centreOfMassHeight', 1.3],
  ['a harder push along the ground', 'gaits.walk.traction.highest', 2.667],
  ['harder braking', 'gaits.walk.traction.lowest', 2.667],
  ['a harder push in the trot', 'gaits.trot.traction.highest', 2],
  ['a sideways push in the walk', 'gaits.walk.lateral', 2],
  ['more strides a day', 'usage.stridesPerDay', 3],
  ['a longer season', 'loadCases.ages.season.daysWalked', 5],
  ['longer walks', 'usage.walkingTime', 4],
  ['longer on the shelf', 'loadCases.ages.aged.time', 4],
  ['a higher drop', 'loadCases.events.drop.height', 2],
  ['a drop on one foot', 'loadCases.events.drop.feet', 0.5],
  ['touch-down on a bent leg', 'loadCases.events.drop.touchDownHeight', 0.95],
  ['an oblique landing', 'loadCases.events.drop.traction', 2],
  ['a landing that slides sideways', 'loadCases.events.drop.lateral', 2],
  ['a steeper way up', 'loadCases.events.slopeUp.angle', 1.5],
  ['a steeper way down', 'loadCases.events.slopeDown.angle', 1.5],
  ['a steeper slope to cross', 'loadCases.events.slopeAcross.angle', 1.3],
  ['stuck for longer', 'loadCases.events.stall.time', 2],
  ['hotter air', 'loadCases.airs.hot.temperature', 1.05],
  ['a warmer year', 'loadCases.airs.normal.temperature', 1.02],
  ['a colder morning', 'loadCases.airs.cold.temperature', 0.91],
  ['a hot shelf', 'loadCases.airs.shelf.temperature', 1.08],
  ['a motor of many turns', 'motors.main.phaseInductance', 3],
  ['thin air', 'environment.altitude', 3000],
  ['cooling worse than thought', 'environment.coolingFactor.typical', 0.7],
  ['a rough drive at the hip', 'joints.hip.drive.efficiency', 0.8],
  ['a rough drive at the knee', 'joints.knee.drive.efficiency', 0.8],
  ['a cord that relaxes', 'cords.braid.pretensionLeft.typical', 0.8],
  ['a weaker cord', 'cords.braid.breakingStrength', 0.7],
  ['a cord that shortens more in heat', 'cords.braid.thermalExpansion', 3],
  ['a cord that bears less sharp bends', 'cords.braid.leastBendRatio', 1.5],
  ['anchors near the edge', 'joints.knee.drive.anchor.edgeDistance', 0.6],
  ['short anchor posts', 'joints.knee.drive.anchor.postLength', 0.6],
  ['a short tensioner', 'joints.knee.drive.tensioner.travel', 0.6],
  ['more slack at assembly', 'joints.hip.drive.tensioner.slackAtAssembly', 3],
  ['a thin wall of the upper link', 'links.upper.section.wall', 0.7],
  ['a thin wall of the lower link', 'links.lower.section.wall', 0.7],
  ['a flat lower link', 'links.lower.section.box.depth', 0.8],
  ['soft pins', 'pins.kneePin.strength', 0.6],
  ['a wide fork', 'pins.kneePin.cheekThickness', 1.4, COUPLE],
  ['a gap in the fork', 'pins.kneePin.gap', 4, COUPLE],
  ['a thin boss', 'bosses.kneeBoss.outerDiameter', 0.8],
  ['a short boss', 'bosses.kneeBoss.engagement', 0.7],
  ['holes that scatter', 'bosses.kneeBoss.holeScatter', 2],
  ['a boss near the edge', 'bosses.hipBoss.edgeDistance', 0.7],
  ['a bolt left out', 'bolts.motor.count', 0.75],
  ['motor bolts on a small circle', 'bolts.motor.pattern.diameter', 0.7],
  ['a long arm of the stack', 'bolts.stack.pattern.leverArm', 1.4],
  ['shallow threads in the motor', 'motors.main.tapDepth', 0.6],
  ['a winding of thin wire', 'motors.main.terminalResistance', 1.3, { 'motorBolt.slip': 'warmer plates press harder on their bolts' }],
  ['a draggy motor', 'motors.main.noLoadCurrent', 2],
  [
    'a heavy rotor',
    'motors.main.rotorInertia',
    3,
    {
      'controller.delay': 'a heavier rotor has a slower resonance',
      'motorBolt.slip': 'warmer plates press harder on their bolts',
    },
  ],
  ['a winding that is badly bonded', 'motors.main.windingToMount', 2],
  ['a smaller sink', 'plates.kneePlate.sink.emissivity', 0.2],
  ['a weaker controller', 'controllers.main.currentLimit', 0.7],
  ['a slow loop', 'controllers.main.loopRate', 0.4],
  ['a tired battery', 'supply.internalResistance', 3],
  ['a long overhang of the hip', 'bearings.hip.overhang', 1.4],
  ['thin toes', 'foot.thickness', 0.85],
]

const changed = (path: string, by: number): LegNumbers => {
  const copy = structuredClone(revised) as unknown as Record<string, unknown>
  const names = path.split('.')
  const section = names.slice(0, -1).reduce<unknown>((of, name) => (of as Record<string, unknown>)[name], copy) as Record<string, number>
  const last = names.at(-1) as string
  if (typeof section[last] !== 'number') throw new Error(`${path} is no number of the leg`)
  // From nothing, by that much.
  section[last] = section[last] === 0 ? by : (section[last] as number) * by
  return copy as unknown as LegNumbers
}

test('there are 62 of them, each once', () => {
  expect(new Set(CHANGES.map(([name]) => name)).size).toBe(62)
  expect(new Set(CHANGES.map(([, path]) => path)).size).toBe(62)
  // Few may raise anything.
  expect(CHANGES.filter(([, , , mayRise]) => mayRise !== undefined)).toHaveLength(5)
})

test.each(CHANGES.map(([name, path, by, mayRise = {}]) => ({ name, path, by, mayRise })))(
  '$name raises no reserve, and lowers some',
  ({ path, by, mayRise }) => {
    const after = reserves(changed(path, by))
    const rose = [...before]
      .filter(([key, reserve]) => after.has(key) && (after.get(key) as number) > reserve * (1 + 1e-9))
      .map(([key, reserve]) => `${key} ${reserve} -> ${after.get(key)}`)
      .filter((text) => mayRise[text.split(' ')[0] as string] === undefined)
    expect(rose).toEqual([])
    expect([...before].some(([key, reserve]) => (after.get(key) as number) < reserve * (1 - 1e-9))).toBe(true)
  },
)
