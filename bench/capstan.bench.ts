import { cordDrive, driveWindup, loadPath, travelPath } from '../src/capstan/index.js'
import type { Row } from './harness.js'

const hip = cordDrive({
  pinionRadius: '7.5 mm',
  drumRadius: '46.5 mm',
  centreDistance: '62 mm',
  pinionTurns: 3,
  drumWrap: '200 deg',
  axialRigidity: '35 kN',
  pretension: '140 N',
  friction: { low: 0.1, high: 0.18 },
}).si.atLowFriction

const inputs = Array.from({ length: 64 }, (_, i) => ({
  ...hip,
  drumFriction: hip.drumFriction,
  contactStiffness: undefined,
  torque: 0.1 + (i * 9) / 64,
}))
const history = Float64Array.from({ length: 1000 }, (_, i) => 8 * Math.sin(i / 30) * Math.cos(i / 200))
const stroke = (40 * Math.PI) / 180
const cycles = 100
const angles = Float64Array.from({ length: 4 * cycles }, (_, i) => (i % 4 === 1 || i % 4 === 2 ? -stroke : 0))
const torques = Float64Array.from({ length: 4 * cycles }, (_, i) => (i % 4 < 2 ? 6 : 0))

export const rows: Row[] = [
  {
    work: 'windup of the demo drive at a torque, SI',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += driveWindup.si(inputs[i & 63]!).windup
        return sum
      },
    },
    bound: { atMostSeconds: 2e-6 },
  },
  {
    work: 'history of 1000 torques at one pose',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += loadPath(hip, 'torque', history).at(-1)!.windup
        return sum
      },
    },
    bound: { atMostSeconds: 2e-3 },
  },
  {
    work: '100 travel cycles of the demo drive, steps of 0.01 rad',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += travelPath(hip, angles, torques, 0.01).points.at(-1)!.tautTension
        return sum
      },
    },
    bound: { atMostSeconds: 1 },
    rounds: 5,
  },
]
