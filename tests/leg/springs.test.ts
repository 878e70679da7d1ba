import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { LOAD_CASES } from '../../src/leg/cases/events.js'
import {
  ALL_CASE_IDS,
  assemblyPlan,
  assemblyText,
  assess,
  assessRobot,
  checkReserves,
  controlSheet,
  controlText,
  legNumbers,
  shoppingCsv,
  strideTrajectory,
  withFields,
} from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { driveMotion, jointMotion } from '../../src/leg/parts/motion/values.js'
import { motorTorque, motorTorqueAlone } from '../../src/leg/parts/motors/values.js'
import { springForce, stretchOfTravel, torsionLaw } from '../../src/leg/parts/springs/values.js'
import { poseOf } from '../../src/leg/pose.js'
import { caseState } from '../../src/leg/what-if.js'
import hand from '../oracles/leg-springs.json' with { type: 'json' }
import { EXTENSION, extension, plain, TORSION, torsion } from './sprung-legs.js'
import { beltRevised, sprungBelt } from './through-legs.js'

const off = (one: number, other: number) => Math.abs(one / other - 1)
const place = (leg: typeof plain, names: Parameters<typeof placeOf>[1]) => {
  const calculation = calculationOf(legNumbers(leg))
  return { calculation, where: calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names })) as never }
}
const motion = (leg: typeof plain, id: Parameters<typeof caseState>[1]) => caseState(legModel(legNumbers(leg)), id).joints
const checkOf = (leg: typeof plain, id: string, cases: readonly (typeof ALL_CASE_IDS)[number][] = ['stand', 'shelf', 'trot', 'season']) =>
  assess(leg, { cases }).checks.find((one) => one.id === id)!

describe('against the balance of the lower link and the energy of the spring (oracles/leg-springs.py)', () => {
  test('pose and knee', () => {
    const [, hip, knee] = poseOf(legModel(legNumbers(plain)))
    expect(off(hip, hand.pose.hip)).toBeLessThan(1e-12)
    expect(off(knee, hand.pose.knee)).toBeLessThan(1e-12)
    expect(off(motion(torsion, 'stand').knee.motion.torque, hand.joint)).toBeLessThan(1e-9)
  })

  test.each([
    ['torsion', torsion, hand.torsion],
    ['extension', extension, hand.extension],
  ] as const)('the drive of a knee with a %s spring holds the harder of the loaded and the lifted foot', (_, leg, found) => {
    const [loaded, lifted] = [found.loaded, found.lifted]
    const hardest = Math.abs(loaded) > Math.abs(lifted) ? loaded : lifted
    expect(off(motion(leg, 'stand').knee.drum.torque, hardest)).toBeLessThan(1e-7)
    expect(off(motion(leg, 'shelf').knee.drum.torque, lifted)).toBeLessThan(1e-7)
    // The links still bear what the whole joint does, and the hip does not know the spring of the knee.
    expect(motion(leg, 'stand').knee.motion.torque).toBe(motion(plain, 'stand').knee.motion.torque)
    expect(motion(leg, 'walk').hip.drum.torque).toBe(motion(plain, 'walk').hip.drum.torque)
  })

  test('rate, stresses, room in the coil and seat of the torsion spring', () => {
    const { calculation, where } = place(torsion, { joint: 'knee' })
    expect(off(calculation.get(torsionLaw, where).rate, hand.torsion.rate)).toBeLessThan(1e-12)
    expect(off(calculation.get(springForce, where)!, hand.torsion.force)).toBeLessThan(1e-12)
    const coil = checkOf(torsion, 'spring.coil')
    expect(off(coil.demand.si, hand.torsion.stress)).toBeLessThan(1e-9)
    expect(off(coil.capacity.si, hand.torsion.allowed)).toBeLessThan(1e-9)
    expect(off(checkOf(torsion, 'spring.mandrel').capacity.si, hand.torsion.room)).toBeLessThan(1e-9)
    expect(off(checkOf(torsion, 'spring.seat').demand.si, hand.torsion.seat)).toBeLessThan(1e-9)
  })

  test('lengths, stresses, pins and surge of the extension spring', () => {
    const { calculation, where } = place(extension, { joint: 'knee' })
    const { longest, shortest, mostForce } = calculation.get(stretchOfTravel, where)
    expect(off(longest, hand.extension.longest)).toBeLessThan(1e-8)
    expect(off(shortest, hand.extension.shortest)).toBeLessThan(1e-8)
    expect(off(mostForce, hand.extension.pull)).toBeLessThan(1e-8)
    const { checks } = assess(extension, { cases: ['stand', 'shelf', 'trot', 'season'] })
    const of = (id: string) => checks.find((one) => one.id === id)!
    expect(off(of('spring.body').demand.si, hand.extension.body)).toBeLessThan(1e-8)
    expect(off(of('spring.body').capacity.si, hand.extension.bodyAllowed)).toBeLessThan(1e-9)
    expect(off(of('spring.hook').demand.si, hand.extension.hook)).toBeLessThan(1e-8)
    expect(off(of('spring.hookBend').demand.si, hand.extension.hookBend)).toBeLessThan(1e-8)
    // Cells of the pin: the oracle sums twenty thousand.
    expect(off(of('spring.anchor').demand.si, hand.extension.pressure)).toBeLessThan(1e-6)
    expect(off(of('spring.pin').demand.si, hand.extension.bending)).toBeLessThan(1e-3)
    expect(off(of('spring.surge').capacity.si, hand.extension.surge)).toBeLessThan(1e-9)
  })

  test('fatigue: range and mean of a stride on the Goodman line', () => {
    const { calculation, where } = place(torsion, { joint: 'knee', event: 'season' })
    const { lowest, highest } = calculation.get(jointMotion, where)
    const free = (10 * Math.PI) / 180
    const perAngle = hand.torsion.stress / (hand.range[1]! - free)
    const [low, high] = [perAngle * Math.max(0, lowest - free), perAngle * (highest - free)]
    const strength = hand.torsion.allowed / 0.7
    const limit = hand.goodman.capacity
    const check = checkOf(torsion, 'spring.coilFatigue')
    expect(off(check.capacity.si, limit)).toBeLessThan(1e-9)
    expect(off(check.demand.si, (high - low) / 2 + (((high + low) / 2) * limit) / strength)).toBeLessThan(1e-9)
  })
})

describe('never flatters', () => {
  test.each([
    ['torsion', torsion],
    ['extension', extension],
  ] as const)('in every load case the drive of a knee with a %s spring holds it with the foot lifted too', (_, leg) => {
    const { calculation, where } = place(leg, { joint: 'knee' })
    const most = calculation.get(springForce, where)!
    for (const id of ALL_CASE_IDS) {
      const { motion, drum } = caseState(legModel(legNumbers(leg)), id).joints.knee
      const shelf = LOAD_CASES[id].event === 'shelf'
      if (!shelf) expect(motion.torque).toBe(caseState(legModel(legNumbers(plain)), id).joints.knee.motion.torque)
      expect(Math.abs(drum.torque)).toBeGreaterThan(0.05)
    }
    expect(most).toBeGreaterThan(0)
  })

  test('a spring that relieves the stance loads the swing, and one that winds the wrong way loads the stance', () => {
    const wrong = withFields(plain, { 'joints.knee.spring': { ...TORSION, winds: 'falling', freeAngle: '140 deg' } })
    const stand = (leg: typeof plain) => Math.abs(motion(leg, 'stand').knee.drum.torque)
    expect(stand(torsion)).toBeLessThan(stand(plain))
    expect(stand(wrong)).toBeGreaterThan(stand(plain))
    const strong = withFields(torsion, { 'joints.knee.spring.rate': '4 N m/rad' })
    expect(stand(strong)).toBeGreaterThan(stand(plain))
    expect(motion(strong, 'walk').knee.drum.shaftRms).toBeGreaterThan(motion(plain, 'walk').knee.drum.shaftRms)
  })

  test('the leg without its spring needs the current of a leg that never had one', () => {
    for (const leg of [torsion, extension])
      for (const event of ['stand', 'walk', 'trot', 'slopeDown'] as const) {
        const [now, before] = [place(leg, { joint: 'knee', event }), place(plain, { joint: 'knee', event })]
        expect(now.calculation.get(motorTorqueAlone, now.where)).toBe(before.calculation.get(motorTorque, before.where))
      }
    const weak = withFields(torsion, { 'controllers.main.currentLimit': '12 A' })
    expect(checkOf(weak, 'spring.lost', ['trot']).reserve).toBeLessThan(1)
  })

  test('both ends of the rate are tried: at its softest it relieves less, at its stiffest it loads more', () => {
    const { range } = checkOf(torsion, 'spring.coil')
    expect(range.worst).toBeCloseTo(checkOf(torsion, 'spring.coil').reserve / 1.1, 9)
    const current = assess(torsion, { cases: ['trot'] }).checks.find(({ id, joint }) => id === 'motor.current' && joint === 'knee')!
    expect(current.range.worst).toBeLessThan(current.reserve)
  })

  const cases = ['stand', 'trot', 'season', 'shelf'] as const
  const before = { torsion: checkReserves(legNumbers(torsion), cases), extension: checkReserves(legNumbers(extension), cases) }
  test.each([
    ['torsion', 'mandrel', '20 mm'],
    ['torsion', 'coils', 7],
    ['torsion', 'freeAngle', '0 deg'],
    ['torsion', 'wire', 'hardDrawn'],
    ['torsion', 'fixedLeg', '45 mm'],
    ['torsion', 'seat.length', '20 mm'],
    ['extension', 'freeLength', '70 mm'],
    ['extension', 'initialTension', '25 N'],
    ['extension', 'coils', 20],
    ['extension', 'wire', 'hardDrawn'],
    ['extension', 'bendRadius', '2.5 mm'],
    ['extension', 'hookRadius', '5 mm'],
    ['extension', 'anchor.arm', '9 mm'],
    ['extension', 'anchor.depth', '14 mm'],
    ['extension', 'anchor.pinDiameter', '5 mm'],
  ] as const)('worse never looks better: %s, %s of %s', (kind, field, worse) => {
    const leg = kind === 'torsion' ? torsion : extension
    const after = checkReserves(legNumbers(withFields(leg, { [`joints.knee.spring.${field}`]: worse })), cases)
    // Stiffer coils swing faster, and a shallow pin is bent less than it crushes its hole.
    const beside = field === 'coils' ? ['spring.surge knee'] : field === 'anchor.depth' ? ['spring.pin knee'] : []
    const rose = [...before[kind]].filter(
      ([key, reserve]) => /^(spring|pin|boss)\./.test(key) && !beside.includes(key) && (after.get(key) as number) > reserve * (1 + 1e-9),
    )
    expect(rose).toEqual([])
  })
})

describe('everywhere', () => {
  test('the robot draws less while it stands on relieved knees, and the trajectory of the drum is that of the joint less the spring', () => {
    const power = (leg: typeof plain) => assessRobot(leg).stand.motorHeat.si
    expect(power(torsion)).toBeLessThan(power(plain))
    const column = (leg: typeof plain, name: string) =>
      (strideTrajectory(leg, { rate: '50 Hz' }).column(name) as { readonly values: Float64Array }).values
    const [with_, without, angle] = [
      column(torsion, 'drum torque knee'),
      column(plain, 'drum torque knee'),
      column(torsion, 'joint angle knee'),
    ]
    const free = (10 * Math.PI) / 180
    for (let i = 0; i < with_.length; i++)
      expect(with_[i]! - without[i]! - hand.torsion.rate * Math.max(0, angle[i]! - free)).toBeCloseTo(0, 10)
  })

  test.each([
    ['torsion', torsion],
    ['extension', extension],
  ] as const)('a %s spring is in plan, list, cautions and control sheet', (kind, leg) => {
    const plan = assemblyPlan(leg)
    expect(shoppingCsv(plan)).toContain(`${kind} spring,"music wire`)
    expect(plan.cautions.join()).toContain('A spring beside a joint stores energy')
    const text = assemblyText(plan)
    expect(text).toContain('Measure the rate of the spring of the knee')
    expect(text).toContain('spring of the knee')
    expect(plan.problems.filter((one) => one.includes('spring'))).toEqual([])
    expect(controlText(controlSheet(leg))).toContain('Subtract the torque of the springs on the joints: knee')
    expect(controlText(controlSheet(plain))).not.toContain('spring')
  })

  test('a spring that never touches is a problem of the plan', () => {
    const idle = withFields(plain, { 'joints.knee.spring': { ...TORSION, freeAngle: '140 deg' } })
    expect(assemblyPlan(idle).problems.join()).toContain('the spring touches at no angle')
    const loose = withFields(plain, { 'joints.knee.spring': { ...EXTENSION, freeLength: '200 mm' } })
    expect(assemblyPlan(loose).problems.join()).toContain('hangs loose over the whole travel')
  })

  test('a leg without a spring lists its checks as not made', () => {
    const { notEvaluated } = assess(plain, { cases: ['stand'] })
    expect(notEvaluated).toContainEqual({ id: 'spring.lost', why: 'no spring stands beside its drive' })
    expect(assess(torsion, { cases: ['stand'] }).notEvaluated.map(({ id }) => id)).toContain('spring.hook')
  })
})

describe('documents that cannot be', () => {
  test.each([
    [{ ...TORSION, kind: 'spiral' }, /spring.kind/],
    [{ ...TORSION, coilDiameter: '4 mm' }, /spring.coilDiameter .*must be more than one and a half times the wire/],
    [{ ...TORSION, mandrel: '24 mm' }, /spring.mandrel .*must be thinner than the inside of the coil \(23 mm\)/],
    [{ ...TORSION, winds: 'forward' }, /spring.winds/],
    [{ ...TORSION, seat: { material: 'cheese', length: '4 mm' } }, /seat.material/],
    [{ ...TORSION, rate: '1 N/mm' }, /spring.rate/],
    [{ ...TORSION, coils: Number.NaN }, /spring.coils/],
    [{ ...TORSION, coils: -3 }, /spring.coils/],
    [{ ...EXTENSION, freeLength: '30 mm' }, /spring.freeLength .*must be at least that of its closed coils \(50 mm\)/],
    [{ ...EXTENSION, bendRadius: '0.9 mm' }, /spring.bendRadius .*must be more than half the wire/],
    [{ ...EXTENSION, hookRadius: '9 mm' }, /spring.hookRadius .*must be at most half the coil \(8 mm\)/],
    [{ ...EXTENSION, movingEnd: { down: '0 mm', forward: '0 mm' } }, /spring.movingEnd .*must be at least 1 mm from the axis/],
    [{ ...EXTENSION, movingEnd: { down: '90 mm', forward: '10 mm' } }, /spring.movingEnd .*both pins could meet/],
    [{ ...EXTENSION, anchor: undefined }, /spring.anchor/],
    ['a strong one', /joints.knee.spring/],
  ])('%o', (spring, message) => {
    expect(() => withFields(plain, { 'joints.knee.spring': spring })).toThrow(message)
  })

  test('the sideways hip has no spring', () => {
    expect(() => withFields(plain, { 'joints.sidewaysHip.spring': TORSION })).toThrow(/joints.sidewaysHip.spring/)
  })
})

describe('a landing in which the spring breaks', () => {
  const LANDINGS = ['hop', 'hopEnd', 'drop', 'dropEnd'] as const
  test.each([
    ['torsion', torsion],
    ['extension', extension],
  ] as const)('the drive beside a %s spring bears no less than one that never had it, and no less than with it whole', (_, leg) => {
    for (const stance of LANDINGS)
      for (const joint of ['hip', 'knee'] as const) {
        const [sprung, bare] = [leg, plain].map((one) => {
          const { calculation, where } = place(one, { joint, stance } as Parameters<typeof placeOf>[1])
          return calculation.get(driveMotion, where).torque
        }) as [number, number]
        expect(Math.abs(sprung), `${stance} ${joint}`).toBeGreaterThanOrEqual(Math.abs(bare) * (1 - 1e-12))
      }
    // Neither does any reserve of the drive rise above that of the leg without a spring.
    const [sprung, bare] = [leg, plain].map((one) => checkReserves(legNumbers(one), ['coldDrop', 'drop', 'hop'])) as [
      Map<string, number>,
      Map<string, number>,
    ]
    const rose = [...bare].filter(([key, reserve]) => /^cord\./.test(key) && (sprung.get(key) as number) > reserve * (1 + 1e-9))
    expect(rose).toEqual([])
  })

  test('a spring that loads the landing counts whole: broken it would relieve', () => {
    const wrong = withFields(plain, { 'joints.knee.spring': { ...TORSION, winds: 'falling', freeAngle: '140 deg' } })
    const torque = (leg: typeof plain) => Math.abs(motion(leg, 'drop').knee.drum.torque)
    expect(torque(wrong)).toBeGreaterThan(torque(plain))
  })

  test('the second stage of a knee bears the whole knee in a landing, and the rest of it in a walk', () => {
    const at = (leg: typeof plain, stance: string) => {
      const { calculation, where } = place(leg, { joint: 'throughHip', stance } as Parameters<typeof placeOf>[1])
      return Math.abs(calculation.get(driveMotion, where).torque)
    }
    expect(at(sprungBelt, 'drop')).toBeCloseTo(at(beltRevised, 'drop'), 9)
    expect(at(sprungBelt, 'stand')).not.toBeCloseTo(at(beltRevised, 'stand'), 2)
  })
})
