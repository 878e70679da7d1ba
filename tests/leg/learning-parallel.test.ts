import { describe, expect, test } from 'vitest'
import { type Leg, learn, learntText, standPlan, standText, withFields } from '../../src/leg/index.js'
import { measuredJoints } from '../../src/leg/learning/measured-joints.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { extension, sprungAndBalanced, torsion } from './sprung-legs.js'
import { beltRevised, cordKnee } from './through-legs.js'

const degree = Math.PI / 180
/** Scatter of readings, always the same: a sine of irregular step. */
const scatter = (i: number) => Math.sin(12.9898 * (i + 1)) * Math.SQRT2
const csv = (header: string, rows: readonly (readonly number[])[]) =>
  `${header}\n${rows.map((row) => row.map((x) => x.toPrecision(8)).join(',')).join('\n')}\n`
const learnt = (leg: Leg, log: string, text: string) => learn(leg, { [log]: text }, { cases: ['stand'] })
const moved = (from: ReturnType<typeof learnt>, path: string) => from.moved.find((one) => one.path === path)!
const plans = new Map<Leg, ReturnType<typeof standPlan>>()
const planOf = (leg: Leg) => {
  const plan = plans.get(leg) ?? standPlan(leg)
  plans.set(leg, plan)
  return plan
}
const planned = (leg: Leg, log: string) => planOf(leg).measurements.find((one) => one.log === log)!

const SPRING = 'joint angle [deg],torque with spring [N m],torque without spring [N m]'
/** The weight of the link, which both readings hold. */
const link = (angle: number) => -0.4 * Math.sin(angle)

describe('a torsion spring', () => {
  const angles = [20, 40, 60, 80, 100, 120, 110, 90, 70, 50, 30]
  // Wound by a growing angle, it pushes back: 1.9 N m/rad from 14 degrees on.
  const rows = angles.map((a, i) => {
    const bare = link(a * degree)
    return [a, bare - 1.9 * (a - 14) * degree + 0.01 * scatter(i), bare + 0.01 * scatter(i + 20)]
  })
  const from = learnt(torsion, 'springTorque knee', csv(SPRING, rows))

  test('gets its rate and free angle, and scatters no more than the measurement', () => {
    const spring = from.leg.joints.knee.spring!
    expect(spring.rate!.si / 1.9).toBeGreaterThan(0.97)
    expect(spring.rate!.si / 1.9).toBeLessThan(1.03)
    const rate = moved(from, 'joints.knee.spring.rate')
    expect(rate.before).not.toBe(rate.after)
    expect(rate.interval!.join()).toContain('N m/rad')
    expect(rate.why).toContain('rateScatter')
    expect(spring.rateScatter.si).toBeLessThan(0.06)
    expect(spring.rateScatter.si).toBeGreaterThanOrEqual(0.01)
    const free = moved(from, 'joints.knee.spring.freeAngle')
    expect(free.interval!.join()).toContain('deg')
    expect((spring as unknown as { freeAngle: { si: number } }).freeAngle.si / degree).toBeCloseTo(14, -0.3)
  })

  test('is not believed with its columns or the sign swapped, and the slip is named', () => {
    const swapped = csv(
      SPRING,
      rows.map(([a, b, c]) => [a!, c!, b!]),
    )
    const wrong = moved(learnt(torsion, 'springTorque knee', swapped), 'joints.knee.spring.rate')
    expect(wrong.state).toBe('notApplied')
    expect(wrong.explanations.join()).toMatch(/swapped/)
  })

  test('the plan predicts what its wire gives, wound from its free angle', () => {
    const one = planned(torsion, 'springTorque knee')
    // E d^4 / (64 D n) per radian: coils of 9.5 and a third of both legs over pi D (EN 13906-3), music wire of 3 mm.
    const turns = 9.5 + 0.12 / (3 * Math.PI * 0.026)
    const { highest } = torsion.joints.knee.range
    const rate = Math.abs(one.predicted.si) / (highest.si - 10 * degree)
    const modulus = (rate * 64 * 0.026 * turns) / 0.003 ** 4
    expect(modulus / 1e9).toBeGreaterThan(190)
    expect(modulus / 1e9).toBeLessThan(215)
    expect(one.band[1].si / one.band[0].si).toBeCloseTo(0.8 / 1.25, 6)
    expect(one.corrects).toBe('joints.knee.spring.rate')
    expect(standText(planOf(torsion))).toContain('torque without spring [N m]')
  })
})

test('an extension spring gets its rate from the pull along the line of its pins', () => {
  // Pins at (x forward, z up) about the knee; the moving one turns with the lower link, positive about y.
  const at = (angle: number) => {
    const fixed = [10e-3, 90e-3] as const
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    const [x, z] = [25e-3, 15e-3]
    const end = [c * x + s * z, -s * x + c * z] as const
    const along = [fixed[0] - end[0], fixed[1] - end[1]] as const
    const length = Math.hypot(...along)
    const pull = length <= 74e-3 ? 0 : 10 + 1250 * (length - 74e-3)
    // Moment about +y of a force at a place: z Fx - x Fz.
    return (pull * (end[1] * along[0] - end[0] * along[1])) / length
  }
  const rows = [30, 45, 60, 75, 90, 105, 120].map((a, i) => {
    const bare = link(a * degree)
    return [a, bare + at(a * degree) + 0.003 * scatter(i), bare + 0.003 * scatter(i + 9)]
  })
  const text = csv(SPRING, rows)
  const from = learnt(extension, 'springTorque knee', text)
  const rate = moved(from, 'joints.knee.spring.rate')
  expect(rate.state, rate.why).toMatch(/corrected|confirmed/)
  expect(from.leg.joints.knee.spring!.rate!.si / 1250).toBeGreaterThan(0.95)
  expect(from.leg.joints.knee.spring!.rate!.si / 1250).toBeLessThan(1.05)
  expect(rate.restsOn.map(({ what }) => what).join()).toMatch(/free length|gain of the torque|initial tension/)
})

test('a counterweight gets its distance from the axis by the balance of its link', () => {
  const header = 'link angle [deg],torque with weight [N m],torque without weight [N m]'
  const rows = [-80, -60, -40, 40, 60, 80].map((a, i) => {
    const balance = 0.25 * 9.80665 * 0.052 * Math.sin(a * degree)
    return [a, link(a * degree) + balance + 5e-4 * scatter(i), link(a * degree) + 5e-4 * scatter(i + 7)]
  })
  const from = learnt(sprungAndBalanced, 'weightTorque knee', csv(header, rows))
  expect(from.leg.links.lower.counterweight!.beyond.si / 0.052).toBeGreaterThan(0.98)
  expect(from.leg.links.lower.counterweight!.beyond.si / 0.052).toBeLessThan(1.02)
  expect(moved(from, 'links.lower.counterweight.beyond').interval!.join()).toContain('mm')
  expect(planned(sprungAndBalanced, 'weightTorque knee').predicted.si).toBeCloseTo(0.25 * 9.80665 * 0.045, 9)
  expect(() => learnt(torsion, 'weightTorque knee', csv(header, rows))).toThrow(/weightTorque/)
  expect(learntText(from)).toContain('links.lower.counterweight.beyond')
})

describe('the second stage', () => {
  const logsOf = (leg: Leg) =>
    planOf(leg)
      .measurements.filter(({ joint }) => joint === 'throughHip')
      .map(({ log }) => log.split(' ')[0]!)
  const gripped = withFields(cordKnee, { 'joints.knee.through.hold': 'frictionOnly' })

  test('is in the plan with the measurements of a belt or of a cord', () => {
    expect(logsOf(beltRevised).sort()).toEqual(['beltPitch', 'efficiency', 'freePlay', 'slipTorque', 'windup'])
    expect(logsOf(cordKnee).sort()).toEqual(['cordFriction', 'efficiency', 'pretension', 'pullOut', 'windup'])
    expect(measuredJoints(legNumbers(gripped), 'slipTorque')).toContain('throughHip')
    expect(measuredJoints(legNumbers(cordKnee), 'slipTorque')).not.toContain('throughHip')
    expect(planned(beltRevised, 'windup throughHip').how).toMatch(/pulley on the hip axis by a pin/)
  })

  const belt = beltRevised.belts.link!
  const through = beltRevised.joints.knee.through as unknown as { pretension: { si: number } }
  const radius = (48 * belt.pitch.si) / (2 * Math.PI)
  const other = (40 * belt.pitch.si) / (2 * Math.PI)
  // Both spans between pulleys that differ: their length by Pythagoras at the distance that the belt sets.
  const span = Math.sqrt(beltRevised.links.upper.length.si ** 2 - (radius - other) ** 2)

  test('a loop of the knee with its pulley on the hip axis pinned gives the rigidity of the belt', () => {
    const rigidity = 0.8 * belt.axialRigidity.si
    const stiffness = (2 * rigidity * radius ** 2) / span
    const torques = [0, 5, 10, 15, 20, 25, 20, 15, 10, 5, 0, -5, -10, -15, -20, -25, -20, -15, -10, -5, 0]
    const rows = torques.map((m, i) => [
      m,
      (m / stiffness + ((2 * belt.clearance.si) / radius / 2) * Math.sign(m)) / degree + 4e-4 * scatter(i),
    ])
    const from = learnt(beltRevised, 'windup throughHip', csv('joint torque [N m],joint angle [deg]', rows))
    const one = moved(from, 'belts.link.axialRigidity')
    expect(one.state, one.why).toMatch(/corrected|confirmed/)
    expect(from.leg.belts.link!.axialRigidity.si / rigidity).toBeGreaterThan(0.88)
    expect(from.leg.belts.link!.axialRigidity.si / rigidity).toBeLessThan(1.12)
  })

  test('the pitch of its plucked span gives the pretension that was set', () => {
    const decades = Math.log10(365.25 * 24)
    const set = 0.9 * through.pretension.si
    const rows = [0.0417, 0.17, 0.5, 1, 3, 7, 14, 21, 30].map((days, i) => {
      const left = 1 - (0.2 * Math.max(0, Math.log10(days * 24))) / decades
      return [days, Math.sqrt((set * left) / belt.massPerLength.si) / (2 * span) + 0.2 * scatter(i)]
    })
    const from = learnt(beltRevised, 'beltPitch throughHip', csv('time [day],pitch [Hz]', rows))
    const now = (from.leg.joints.knee.through as unknown as typeof through).pretension.si
    expect(now / set).toBeGreaterThan(0.97)
    expect(now / set).toBeLessThan(1.03)
    expect(moved(from, 'belts.link.pretensionLeft').state).toMatch(/corrected|confirmed/)
  })

  test('torques at which the belt jumps give its friction beside its pitch, by the balance of its last tooth', () => {
    const friction = 0.18
    // The last tooth on the slack side: its tension over its pitch angle against the outward part of the flank force.
    const wrap = Math.PI - 2 * Math.asin((radius - other) / beltRevised.links.upper.length.si)
    const pull = through.pretension.si / (0.5 + Math.tan(belt.flankAngle.si - Math.atan(friction)) / wrap)
    const jumps = csv(
      'joint torque [N m]',
      [0, 1, 2, 3, 4, 5].map((i) => [pull * radius * (1 + 0.01 * scatter(i))]),
    )
    const alone = moved(learnt(beltRevised, 'slipTorque throughHip', jumps), 'belts.link.friction')
    expect([alone.state, alone.why]).toEqual(['undetermined', expect.stringMatching(/pretension of the belt .* hides it: log beltPitch/)])
    const pitch = csv(
      'time [day],pitch [Hz]',
      [0.0417, 0.0417, 0.0417, 1, 7, 30].map((days, i) => {
        const left = 1 - (0.2 * Math.max(0, Math.log10(days * 24))) / Math.log10(365.25 * 24)
        return [days + 1e-4 * i, Math.sqrt((through.pretension.si * left) / belt.massPerLength.si) / (2 * span) + 0.1 * scatter(i)]
      }),
    )
    const exact = `# span gain: 0.2 %\n# mass gain: 0.5 %\n# temperature drift: 0 K\n${pitch}`
    const both = learn(
      beltRevised,
      { 'slipTorque throughHip': `# torque gain: 0.5 %\n${jumps}`, 'beltPitch throughHip': exact },
      { cases: ['stand'] },
    )
    const one = both.moved.find(({ path }) => path === 'belts.link.friction')!
    expect(one.interval, one.why).toBeDefined()
    expect(Number(one.interval![0])).toBeLessThan(friction)
    expect(Number(one.interval![1])).toBeGreaterThan(friction)
  })

  test('torques at which its cord slips give the friction: tensions integrated around drums and spans', () => {
    const [hip, knee, centres] = [26.8e-3, 32.8e-3, gripped.links.upper.length.si]
    const lean = Math.asin((hip + knee) / centres)
    const free = Math.sqrt(centres ** 2 - (hip + knee) ** 2)
    const [wrap, arc] = [2 * Math.PI * 3 + Math.PI + 2 * lean, (Math.PI + 2 * lean) / 2]
    const friction = 0.11
    /** What a tension that changes by friction along an arc stretches there beyond the pretension; it changes no farther than to that. */
    const stretched = (start: number, sign: 1 | -1, angle: number, radius: number, stops: boolean) => {
      let sum = 0
      for (let i = 0; i < 4000; i++) {
        const tension = start * Math.exp((sign * friction * angle * (i + 0.5)) / 4000)
        const beyond = tension - 330
        sum += stops && Math.sign(beyond) !== Math.sign(start - 330) ? 0 : (beyond * radius * angle) / 4000
      }
      return sum
    }
    // The loop keeps its length: what the taut side takes the slack side gives.
    const surplus = (slack: number) => {
      const taut = slack * Math.exp(friction * wrap)
      const drums = stretched(taut, -1, arc, knee, true) + stretched(slack, 1, arc, knee, true)
      return (taut + slack - 660) * free + drums + stretched(taut, -1, wrap, hip, false)
    }
    let [low, high] = [1, 330]
    for (let i = 0; i < 60; i++) [low, high] = surplus((low + high) / 2) > 0 ? [low, (low + high) / 2] : [(low + high) / 2, high]
    const torque = knee * low * (Math.exp(friction * wrap) - 1)
    const rows = [0, 1, 2, 3, 4].map((i) => [torque * (1 + 0.01 * scatter(i))])
    const from = learnt(gripped, 'slipTorque throughHip', csv('joint torque [N m]', rows))
    const one = moved(from, 'joints.knee.through.friction')
    const value = (from.leg.joints.knee.through as unknown as { friction: { typical: number } }).friction.typical
    expect(value / friction).toBeGreaterThan(0.97)
    expect(value / friction).toBeLessThan(1.03)
    expect(one.restsOn[0]!.what).toContain('pretension')
  })

  test('losses of both stages together are told apart by what is known of the first', () => {
    const eta = 0.9 * 0.92
    // A constant of 1 N m at the knee for each ampere: what matters is the ratio of both slopes.
    const rows = [3, 6, 9, 12, 15].map((m, i) => [m, m / eta + 0.5 + 0.01 * scatter(i), m * eta - 0.5 + 0.01 * scatter(i + 9)])
    const from = learnt(cordKnee, 'efficiency throughHip', csv('joint torque [N m],lifting current [A],lowering current [A]', rows))
    const one = moved(from, 'joints.knee.through.efficiency')
    const { drive } = cordKnee.joints.knee as unknown as { drive: { efficiency: { si: number } } }
    expect(Number(one.after)).toBeCloseTo(eta / drive.efficiency.si, 2)
    expect(one.restsOn[0]!.what).toBe('the efficiency of the drive of the knee')
  })
})
