import { describe, expect, test } from 'vitest'
import { floatingRobot, legDynamics, threeJointLeg } from '../../src/kinematics/index.js'
import { randomStream } from '../../src/numeric/index.js'

const links = {
  hipLink: { mass: '620 g', centreOfMass: { x: '0 mm', y: '35 mm', z: '4 mm' } },
  upperLink: {
    mass: '340 g',
    centreOfMass: { x: '3 mm', y: '5 mm', z: '-70 mm' },
    inertia: { xx: '900 kg mm^2', yy: '900 kg mm^2', zz: '150 kg mm^2', xy: '20 kg mm^2' },
  },
  lowerLink: {
    mass: '160 g',
    centreOfMass: { x: '-2 mm', y: '0 mm', z: '-85 mm' },
    inertia: { xx: '500 kg mm^2', yy: '500 kg mm^2', zz: '40 kg mm^2', yz: '-12 kg mm^2' },
  },
} as const
const leg = (side: 1 | -1) => threeJointLeg({ hipOffset: [58 * side, 'mm'], upperLink: '165 mm', lowerLink: '180 mm' })
const at = (x: number, y: number) => ({ x: [x, 'mm'], y: [y, 'mm'], z: '-20 mm' }) as const
const robot = floatingRobot({
  body: {
    mass: '6 kg',
    centreOfMass: { x: '10 mm', y: '-4 mm', z: '25 mm' },
    inertia: { xx: '0.03 kg m^2', yy: '0.09 kg m^2', zz: '0.1 kg m^2', xy: '0.002 kg m^2', xz: '-0.001 kg m^2' },
  },
  legs: [
    { leg: leg(1), at: at(190, 60), ...links },
    { leg: leg(-1), at: at(190, -60), ...links },
    { leg: leg(1), at: at(-190, 60), ...links },
  ],
})
const random = randomStream(17)
const draw = (n: number, size: number) => Float64Array.from({ length: n }, () => random.uniformBetween(-size, size))
const cross = (a: ArrayLike<number>, b: ArrayLike<number>) => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
]

describe('a robot fixed to nothing', () => {
  test('with the body held still, each leg has the torques of legDynamics', () => {
    const alone = legDynamics(leg(1), links)
    for (let n = 0; n < 20; n++) {
      const [angles, rates, accelerations, groundReaction] = [draw(9, 1.2), draw(9, 6), draw(15, 60), draw(9, 50)]
      accelerations.fill(0, 0, 6)
      const out = robot.inverseDynamics({ twist: new Float64Array(6), angles, rates, groundReaction }, accelerations)
      for (const i of [0, 2]) {
        const torque = new Float64Array(3)
        const of = (x: Float64Array, first = 0) => x.slice(first + 3 * i, first + 3 * i + 3)
        const [rx, ry, rz] = of(groundReaction) as unknown as [number, number, number]
        alone.si.torqueInto(torque, 0, of(angles), of(rates), of(accelerations, 6), rx, ry, rz)
        for (let k = 0; k < 3; k++) expect(out[6 + 3 * i + k]).toBeCloseTo(torque[k]!, 10)
      }
    }
  })

  test('in flight momentum changes by gravity alone, whatever the drives do', () => {
    for (let n = 0; n < 20; n++) {
      const state = { twist: draw(6, 2), angles: draw(9, 1), rates: draw(9, 5), gravity: draw(3, 9) }
      const accelerations = robot.forwardDynamics(state, draw(9, 8))
      // Along the motion for a moment: body's twist in its own axes, its velocity's own change less what turning the axes takes.
      const h = 1e-6
      const turning = cross(state.twist, state.twist.subarray(3))
      const moved = (s: number) => ({
        twist: state.twist.map((x, k) => x + s * (k < 3 ? accelerations[k]! : accelerations[k]! - turning[k - 3]!)),
        angles: state.angles.map((x, k) => x + s * state.rates[k]!),
        rates: state.rates.map((x, k) => x + s * accelerations[6 + k]!),
      })
      const [before, here, after] = [-h, 0, h].map((s) => robot.momentum(moved(s))) as [Float64Array, Float64Array, Float64Array]
      const change = here.map((_, k) => (after[k]! - before[k]!) / (2 * h))
      const [mass, ...centre] = robot.centreOfMass(state.angles)
      const weight = state.gravity.map((g) => mass! * g)
      const [angular, linear] = [here.slice(0, 3), here.slice(3)]
      // In turning axes at a moving origin: dp/dt + ω × p = m g, dL/dt + ω × L + v × p = c × m g.
      const spun = cross(state.twist, linear)
      for (let k = 0; k < 3; k++) expect(Math.abs(change[3 + k]! + spun[k]! - weight[k]!)).toBeLessThan(1e-5)
      const [turned, carried, moment] = [cross(state.twist, angular), cross(state.twist.subarray(3), linear), cross(centre, weight)]
      for (let k = 0; k < 3; k++) expect(Math.abs(change[k]! + turned[k]! + carried[k]! - moment[k]!)).toBeLessThan(1e-5)
    }
  })

  test('forward dynamics undoes inverse dynamics; the mass matrix has the mass and is positive', () => {
    for (let n = 0; n < 10; n++) {
      const motion = { twist: draw(6, 2), angles: draw(9, 1), rates: draw(9, 5), groundReaction: draw(9, 40) }
      const wanted = draw(15, 20)
      const needed = robot.inverseDynamics(motion, wanted)
      const M = robot.massMatrix(motion.angles)
      const found = robot.forwardDynamics(motion, needed.subarray(6))
      // Without the wrench on the body the accelerations differ by M⁻¹ of it: M (wanted − found) is that wrench.
      for (let i = 0; i < 15; i++) {
        const sum = found.reduce((total, x, j) => total + M[15 * i + j]! * (wanted[j]! - x), 0)
        expect(sum).toBeCloseTo(i < 6 ? needed[i]! : 0, 7)
      }
      for (let k = 3; k < 6; k++) expect(M[16 * k]).toBeCloseTo(6 + 3 * 1.12, 10)
      const v = draw(15, 1)
      expect(v.reduce((sum, x, i) => sum + x * v.reduce((s, y, j) => s + M[15 * i + j]! * y, 0), 0)).toBeGreaterThan(0)
    }
    expect(robot.notes).toBeUndefined()
    expect(() =>
      robot.forwardDynamics(
        { twist: new Float64Array(6), angles: new Float64Array(9).fill(Number.NaN), rates: new Float64Array(9) },
        new Float64Array(9),
      ),
    ).toThrow(/not a finite number|moves no mass/)
    expect(() =>
      floatingRobot({ body: { mass: '1 kg', centreOfMass: at(0, 0) }, legs: [{ leg: {} as never, at: at(0, 0), ...links }] }),
    ).toThrow(/legs\[0\]\.leg/)
    expect(() => floatingRobot({ body: { mass: '1 kg', centreOfMass: at(0, 0) }, legs: [null as never] })).toThrow(
      /floatingRobot: legs\[0\] .*must be an object/,
    )
  })
})
