import { describe, expect, test } from 'vitest'
import { chainFromDenavitHartenberg, chainFromScrews, threeJointLeg } from '../../src/kinematics/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { lynchThreeLink } from './textbook.js'

const legChain = chainFromScrews({
  screws: [
    { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 mm', y: '0 mm', z: '0 mm' } },
    { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '0 mm' } },
    { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '-165 mm' } },
  ],
  tool: { position: { x: '0 mm', y: '58 mm', z: '-345 mm' } },
})
const ranges = {
  sidewaysHip: { lowest: '-35 deg', highest: '40 deg' },
  hip: { lowest: '-75 deg', highest: '60 deg' },
  knee: { lowest: '12 deg', highest: '140 deg' },
} as const
const limits = Object.values(ranges)
const geometry = { hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' } as const
const exact = threeJointLeg({ ...geometry, limits: ranges })
const rad = (values: readonly number[]) => values.map((x) => [x, 'rad'] as const)
const place = ([x, y, z]: readonly number[]) => ({ x: [x!, 'm'], y: [y!, 'm'], z: [z!, 'm'] }) as const

describe('inverse of a chain', () => {
  test('a target out of reach that took thousands of iterations without the curvature ends within thirty', () => {
    const target = { position: place([0.2612, -0.343, 0.0345]), seed: rad([-0.492, 0.032, -0.837]), limits } as const
    const answer = legChain.inverse(target)
    expect(answer.ended).toBe('localStop')
    expect(answer.iterations).toBeLessThan(30)
    const nearest = exact.jointAngles(target.position)
    if (nearest.reachable) throw new Error('out of reach')
    expect(answer.positionError.si).toBeCloseTo(nearest.miss.si, 9)
  })

  test('between limits: no search runs out of iterations, and what is called nearest is nearest in 99 of 100', () => {
    const random = randomStream(5)
    let wrong = 0
    const ended = { reached: 0, nearestFound: 0, localStop: 0, iterationLimit: 0 }
    for (let n = 0; n < 150; n++) {
      const position = place([0, 1, 2].map(() => (random.uniform() - 0.5) * 1.1))
      const seed = rad([0, 1, 2].map(() => 2 * (random.uniform() - 0.5)))
      const answer = legChain.inverse({ position, seed, limits, restarts: 11 })
      ended[answer.ended]++
      const truth = exact.jointAngles(position)
      const miss = truth.reachable ? 0 : truth.miss.si
      expect(answer.positionError.si).toBeGreaterThan(miss - 1e-9)
      expect(answer.searches).toBe(12)
      if (answer.ended !== 'localStop' && answer.positionError.si > miss + 1e-7) wrong++
    }
    expect(ended.iterationLimit).toBe(0)
    expect(wrong).toBeLessThanOrEqual(1)
    expect(ended.nearestFound).toBeGreaterThan(100)
  })

  test('several searches find all four ways of a leg to a point, each once', () => {
    const free = threeJointLeg(geometry)
    const position = place([0.05, 0.09, -0.24])
    const answer = legChain.inverse({ position, seed: rad([0, 0, 0.5]), restarts: 40 })
    const truth = free.jointAngles(position)
    if (!truth.reachable) throw new Error('in reach')
    expect(truth.branches.length).toBe(4)
    const sorted = (all: readonly (readonly number[])[]) =>
      all.map((q) => q.map((x) => Math.atan2(Math.sin(x), Math.cos(x)))).sort((a, b) => a[0]! - b[0]! || a[2]! - b[2]!)
    const ours = sorted(answer.solutions.map((values) => values.map(({ si }) => si)))
    const theirs = sorted(truth.branches.map(({ sidewaysHip, hip, knee }) => [sidewaysHip.si, hip.si, knee.si]))
    expect(ours.length).toBe(4)
    for (const [i, q] of theirs.entries()) for (const [j, x] of q.entries()) expect(ours[i]![j]).toBeCloseTo(x, 6)
  })

  test('joints to spare come near to preferred values without moving the tool', () => {
    const rows = Array.from(
      { length: 7 },
      (_, i) => ({ alpha: i % 2 === 0 ? '90 deg' : '-90 deg', d: i % 2 === 0 ? '120 mm' : '0 mm', a: '20 mm' }) as const,
    )
    const arm = chainFromDenavitHartenberg({ convention: 'standard', rows })
    const start = [0.2, -0.4, 0.3, 0.9, -0.2, 0.7, 0.1]
    const { position, rotation } = arm.pose(rad(start))
    const target = { position, rotation: rotation.map((row) => row.map((x) => x.si)), seed: rad(start) }
    // Half a radian along the one direction in joint space that leaves the tool where it is.
    const along = new Float64Array(7)
    arm.si.ratesInto(along, 0, start, new Float64Array(6), 1e-9, 0.1, [1, -1, 1, -1, 1, -1, 1])
    const preferred = rad(start.map((x, i) => x + (0.5 * along[i]!) / Math.hypot(...along)))
    const distance = (values: readonly { si: number }[]) => Math.hypot(...values.map(({ si }, i) => si - preferred[i]![0]))
    const plain = arm.inverse(target)
    const near = arm.inverse({ ...target, preferred })
    expect(near.ended).toBe('reached')
    expect(near.positionError.si).toBeLessThan(1e-9)
    expect(distance(near.values)).toBeLessThan(0.5 * distance(plain.values))
    // Nearest: what is left to the preferred values is across the directions that do not move the tool.
    const q = Float64Array.from(near.values, ({ si }) => si)
    const rest = new Float64Array(7)
    expect(
      arm.si.ratesInto(
        rest,
        0,
        q,
        new Float64Array(6),
        1e-9,
        0.1,
        q.map((x, i) => preferred[i]![0] - x),
      ),
    ).toBe(true)
    expect(Math.hypot(...rest)).toBeLessThan(1e-3)
  })

  test('a chain that slides needs limits for drawn seeds; numbers that are not finite are refused', () => {
    const slide = chainFromScrews({ screws: [{ type: 'sliding', axis: { x: 0, y: 0, z: 1 } }], tool: { position: place([0, 0, 0]) } })
    const target = { position: place([0, 0, 0.2]), seed: ['0 mm'] } as const
    expect(() => slide.inverse({ ...target, restarts: 4 })).toThrow(/restarts.*needs limits for the sliding joint 0/)
    expect(slide.inverse({ ...target, restarts: 4, limits: [{ lowest: '0 mm', highest: '300 mm' }] }).ended).toBe('reached')
    expect(slide.si.ratesInto(new Float64Array(1), 0, [0], [0, 0, Number.NaN], 0.01, 0.1)).toBe(false)
  })
})

describe('rates of a chain by damped least squares', () => {
  const chain = lynchThreeLink
  test('without damping they move the tool as asked; with it they stay bounded at a singular pose', () => {
    const q = [0.3, -0.4, 0.9]
    const J = chain.jacobian(rad(q)).slice(3)
    const rates = new Float64Array(3)
    const v = [0.1, -0.2, 0.05]
    expect(chain.si.ratesInto(rates, 0, q, v, 0, 0.1)).toBe(true)
    for (const [i, row] of J.entries()) expect(row.reduce((sum, x, j) => sum + x * rates[j]!, 0)).toBeCloseTo(v[i]!, 12)
    for (const knee of [0, 1e-9, 1e-4, 1e-2]) {
      const pose = [0, -0.4, knee]
      expect(legChain.si.ratesInto(rates, 0, pose, [0, 0, 0.1], 0.01, 0.1)).toBe(true)
      expect(Math.hypot(...rates)).toBeLessThan(0.1 / (2 * 0.01) + 1e-9)
    }
    expect(legChain.si.ratesInto(rates, 0, [0, 0, 0], [0, 0, 0.1], 0, 0.1)).toBe(false)
  })
})

describe('forward dynamics of a chain', () => {
  test('three-link example: the accelerations that its inverse dynamics started from', () => {
    const random = randomStream(3)
    for (let n = 0; n < 50; n++) {
      const [q, w, a, push] = [3, 3, 3, 6].map((size) => Array.from({ length: size }, () => random.uniformBetween(-2, 2))) as number[][]
      const torque = new Float64Array(3)
      const back = new Float64Array(3)
      lynchThreeLink.si.torqueInto(torque, 0, q!, w!, a!, push)
      expect(lynchThreeLink.si.accelerationsInto(back, 0, q!, w!, torque, push)).toBe(true)
      for (let i = 0; i < 3; i++) expect(back[i]).toBeCloseTo(a![i]!, 9)
    }
    const values = rad([0.1, 0.2, 0.3])
    const fallen = lynchThreeLink.forwardDynamics({ values, rates: [0, 0, 0], efforts: lynchThreeLink.gravity(values).map(({ si }) => si) })
    for (const x of fallen) expect(Math.abs(x)).toBeLessThan(1e-12)
    const massless = chainFromScrews({
      screws: [{ axis: { x: 0, y: 0, z: 1 }, point: place([0, 0, 0]) }],
      tool: { position: place([1, 0, 0]) },
    })
    expect(() => massless.forwardDynamics({ values: ['0 rad'], rates: [0], efforts: [1] })).toThrow(/a joint moves no mass/)
  })
})

test('singular values: the isotropic two-link arm of the textbooks, and the leg', () => {
  // J. K. Salisbury and J. J. Craig: links in the ratio √2 to 1 at 135° move alike in all directions.
  const arm = chainFromDenavitHartenberg({ convention: 'standard', rows: [{ a: [Math.SQRT2, 'm'] }, { a: '1 m' }] })
  const [large, small] = arm.singularValues(['20 deg', '135 deg']).velocity
  expect(large).toBeCloseTo(1, 12)
  expect(small).toBeCloseTo(1, 12)
  // Unit links at 60°: σ² = 2 + 2 cos 60° ± …, product |sin 60°|.
  const unit = chainFromDenavitHartenberg({ convention: 'standard', rows: [{ a: '1 m' }, { a: '1 m' }] }).singularValues([
    '30 deg',
    '60 deg',
  ]).velocity
  expect(unit[0]).toBeCloseTo(1.950070675061, 11)
  expect(unit[1]).toBeCloseTo(0.444099495911, 11)
  const { velocity, rotation } = legChain.singularValues(rad([0.2, -0.5, 1]))
  const volume = 0.165 * 0.18 * Math.sin(1) * (0.165 * Math.cos(-0.5) + 0.18 * Math.cos(0.5))
  expect(velocity[0]! * velocity[1]! * velocity[2]!).toBeCloseTo(volume, 14)
  expect(rotation[2]).toBeLessThan(1e-15)
})

test('a chain on a base that turns is the chain with one more joint', () => {
  const links = [0, 1, 2].map((i) => ({
    mass: [0.4 + 0.1 * i, 'kg'] as const,
    centreOfMass: place([0.01 * i, 0.03, -0.08 * i]),
    inertia: { xx: '900 kg mm^2', yy: '800 kg mm^2', zz: '300 kg mm^2', xy: '40 kg mm^2' } as const,
  }))
  const screws = [
    { axis: { x: 1, y: 0, z: 0 }, point: place([0.05, 0, 0]) },
    { axis: { x: 0, y: 1, z: 0 }, point: place([0.05, 0.058, 0]) },
    { axis: { x: 0, y: 1, z: 0 }, point: place([0.05, 0.058, -0.165]) },
  ]
  const tool = { position: place([0.05, 0.058, -0.345]) }
  const alone = chainFromScrews({ screws, tool, links })
  const none = { mass: '0 kg', centreOfMass: place([0, 0, 0]) } as const
  const turning = chainFromScrews({
    screws: [{ axis: { x: 0, y: 0, z: 1 }, point: place([0, 0, 0]) }, ...screws],
    tool,
    links: [none, ...links],
  })
  const random = randomStream(9)
  for (let n = 0; n < 40; n++) {
    const [q, w, a, push] = [3, 3, 3, 6].map((size) => Array.from({ length: size }, () => random.uniformBetween(-3, 3))) as number[][]
    const [angle, rate, acceleration] = [0, 1, 2].map(() => random.uniformBetween(-3, 3)) as [number, number, number]
    const whole = new Float64Array(4)
    turning.si.torqueInto(whole, 0, [angle, ...q!], [rate, ...w!], [acceleration, ...a!], push)
    const out = new Float64Array(9)
    // The base turns about its own upright axis: in its axes gravity stays where it is.
    alone.si.movingBaseInto(out, 0, q!, w!, a!, Float64Array.of(0, 0, rate, 0, 0, acceleration, 0, 0, 9.80665), push)
    for (let i = 0; i < 3; i++) expect(out[i]).toBeCloseTo(whole[i + 1]!, 10)
    expect(out[5]).toBeCloseTo(whole[0]!, 10)
  }
  // At rest the base carries the weight, and its moment about the base's origin.
  const out = new Float64Array(9)
  alone.si.movingBaseInto(out, 0, [0.2, -0.4, 0.9], [0, 0, 0], [0, 0, 0], Float64Array.of(0, 0, 0, 0, 0, 0, 0, 0, 9.80665))
  const { position, mass } = alone.centreOfMass(rad([0.2, -0.4, 0.9]))
  const weight = mass.si * 9.80665
  for (const [i, x] of [position.y.si * weight, -position.x.si * weight, 0, 0, 0, weight].entries()) expect(out[3 + i]).toBeCloseTo(x, 12)
})
