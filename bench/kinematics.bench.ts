import { type ChainJointSi, ChainKernel, LegDynamicsKernel, LegKernel } from '../src/kinematics/index.js'
import { buildC, program, type Row } from './harness.js'

// The leg of the guide, and the same random poses as bench/c/leg.c draws.
const leg = new LegKernel(0.058, 0.165, 0.18)
const dynamics = new LegDynamicsKernel(
  0.058,
  0.165,
  0.18,
  [
    [0.6, 0, 0.04, 0, 0.0005, 0.0006, 0.0004, 0, 0, 0],
    [0.35, 0.002, 0.005, -0.06, 0.001, 0.0011, 0.0002, 1e-5, 2e-5, -1e-5],
    [0.18, 0.003, 0, -0.08, 0.0006, 0.0006, 0.00008, 0, 1e-5, 0],
  ],
  [0, 0, -9.80665],
)

const N = 1024
const MASK = (1n << 64n) - 1n
let seed = 88172645463325252n
function draw(): number {
  seed ^= (seed << 13n) & MASK
  seed ^= seed >> 7n
  seed ^= (seed << 17n) & MASK
  return Number(seed >> 11n) / 2 ** 53
}
const out = new Float64Array(16)
const targets = new Float64Array(3 * N)
const poses = Array.from({ length: N }, (_, i) => {
  const q = Float64Array.from([0.8 * (draw() - 0.5), 1.4 * (draw() - 0.5), 0.3 + 1.8 * draw()])
  const w = new Float64Array(3)
  const a = new Float64Array(3)
  for (let j = 0; j < 3; j++) {
    w[j] = 10 * (draw() - 0.5)
    a[j] = 200 * (draw() - 0.5)
  }
  leg.footInto(targets, 3 * i, q[0]!, q[1]!, q[2]!)
  return { q, w, a }
})
const angles = Float64Array.from(poses.flatMap(({ q }) => [...q]))

const generic = buildC('chain.cpp', ['-O3', '-I/usr/include/eigen3', '-lorocos-kdl'], {
  headers: ['kdl/chain.hpp'],
  called: "Debian's kinematics library",
})
const c = buildC('leg.c')

/** The chain of bench/c/chain.cpp: joints about x, y, y in turn, each body 100 mm long. */
function chainOf(n: number): ChainKernel {
  const joints = Array.from({ length: n }, (_, i): ChainJointSi => {
    // z of the joint's frame along the joint's axis: x for every third joint, else y.
    const axes = (k: number) => (k % 3 === 0 ? [0, 0, 1, 1, 0, 0, 0, 1, 0] : [0, 1, 0, 0, 0, 1, 1, 0, 0])
    const own = axes(i)
    const before = i === 0 ? [1, 0, 0, 0, 1, 0, 0, 0, 1] : axes(i - 1)
    const into = (R: number[], v: number[]) => [0, 1, 2].map((k) => R[k]! * v[0]! + R[3 + k]! * v[1]! + R[6 + k]! * v[2]!)
    const turn = Array.from({ length: 9 }, (_, at) => {
      const [row, column] = [Math.floor(at / 3), at % 3]
      return [0, 1, 2].reduce((sum, k) => sum + before[3 * k + row]! * own[3 * k + column]!, 0)
    })
    const place = into(before, i === 0 ? [0, 0, 0] : [0, 0.02, -0.1])
    // The reference places a body's centre from the body's far end.
    const centre = into(own, [0.01, 0.02, -0.05])
    const inertia = into(
      own.map((x) => x * x),
      [0.003, 0.0032, 0.0004],
    )
    return { sliding: false, frame: [...turn, ...place], link: [0.5, ...centre, ...inertia, 0, 0, 0] }
  })
  return new ChainKernel(joints, [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0], [0, 0, -9.80665], new Float64Array(n * n))
}
const motion = (n: number) =>
  Array.from({ length: N }, () => {
    const [q, w, a] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)]
    for (let j = 0; j < n; j++) {
      q[j] = 2 * (draw() - 0.5)
      w[j] = 4 * (draw() - 0.5)
      a[j] = 20 * (draw() - 0.5)
    }
    return { q, w, a }
  })

export const rows: Row[] = [
  {
    work: 'leg inverse, one branch',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let total = 0
        for (let i = 0; i < times; i++) {
          const k = 3 * (i & (N - 1))
          leg.jointAnglesInto(out, 0, targets[k]!, targets[k + 1]!, targets[k + 2]!, 0)
          total += out[0]! + out[1]! + out[2]!
        }
        return total
      },
    },
    against: [
      { ...program('C at -O3', c, 'inverse'), ratioAtMost: 1.3 },
      { ...program('generic iterative inverse in C++, 1e-9', generic, 'inverse'), timesFaster: 150 },
    ],
  },
  {
    work: 'foot position, Jacobian and statics',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let total = 0
        for (let i = 0; i < times; i++) {
          const k = 3 * (i & (N - 1))
          leg.stateInto(out, 0, angles[k]!, angles[k + 1]!, angles[k + 2]!, 5, -3, -60)
          total += out[0]! + out[14]!
        }
        return total
      },
    },
    against: [{ ...program('C at -O3', c, 'state'), ratioAtMost: 2 }],
  },
  {
    work: 'inverse dynamics of the leg',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let total = 0
        for (let i = 0; i < times; i++) {
          const { q, w, a } = poses[i & (N - 1)]!
          dynamics.torqueInto(out, 0, q, w, a, 5, -3, 60)
          total += out[0]! + out[1]! + out[2]!
        }
        return total
      },
    },
    against: [{ ...program('C at -O3', c, 'dynamics'), ratioAtMost: 2.2 }],
  },
  ...[3, 6, 12].map((n): Row => {
    const chain = chainOf(n)
    const moves = motion(n)
    const torque = new Float64Array(n)
    return {
      work: `inverse dynamics of a chain of ${n} joints`,
      ours: {
        name: 'limbwright',
        run: (times) => {
          let total = 0
          for (let i = 0; i < times; i++) {
            const { q, w, a } = moves[i & (N - 1)]!
            chain.torqueInto(torque, 0, q, w, a)
            total += torque[0]!
          }
          return total
        },
      },
      against: [{ ...program('generic kinematics library in C++', generic, 'dynamics', String(n)), timesFaster: 1 }],
    }
  }),
]
