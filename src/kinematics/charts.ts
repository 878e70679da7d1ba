import { type Chart, lineChart, pointChart, type Series } from '../chart/index.js'
import { requireKeys } from '../formula/index.js'
import type { FootPath } from './foot-path.js'
import type { ThreeJointLeg } from './leg.js'
import type { Demand, MotorDemand } from './motor-demand.js'
import type { Walkable } from './stride-demand.js'
import { legPlaneOutlineSi } from './workspace-section.js'

const MM = 1000

/** The foot path against the edge of what the leg reaches, in the upright leg plane seen from the left (forward to the right). */
export function reachChart(leg: ThreeJointLeg, path: FootPath, title = 'Foot path in the reachable section'): Chart {
  const out = new Float64Array(9)
  const points: [number, number][] = []
  for (let i = 0; i <= 120; i++) {
    path.si.stateInto(out, 0, (path.si.period * i) / 120)
    const below = Math.sqrt(Math.max(0, out[1]! ** 2 + out[2]! ** 2 - leg.si.hipOffset ** 2))
    points.push([out[0]! * MM, -below * MM])
  }
  // A leg that turns all the way round is bounded by two circles, which a single outline would join by a line.
  const bounded = [2, 3].every((i) => Number.isFinite(leg.limitsSi[i]!))
  const { upperLink: l1, lowerLink: l2 } = leg.si
  const circle = (radius: number): [number, number][] =>
    Array.from({ length: 97 }, (_, i) => [radius * Math.sin((2 * Math.PI * i) / 96) * MM, -radius * Math.cos((2 * Math.PI * i) / 96) * MM])
  const edges: Series[] = bounded
    ? [{ name: 'edge of reach', points: legPlaneOutlineSi(leg).map(([x, z]) => [x * MM, z * MM] as const) }]
    : [
        { name: 'furthest reach', points: circle(l1 + l2) },
        { name: 'nearest reach', points: circle(Math.abs(l1 - l2)) },
      ]
  return lineChart({
    title,
    description: 'Edge of the area the foot reaches in the leg plane, and the path of the foot inside it. The hip is at the origin.',
    x: { title: 'Forward of hip', unit: 'mm' },
    y: { title: 'Above hip', unit: 'mm' },
    series: [...edges, { name: 'foot path', points }],
  })
}

/** A line of torque against speed that a motor can give, in SI units, from the highest torque to the highest speed. */
export type MotorLimitSi = readonly (readonly [speed: number, torque: number])[]

/** Speed and torque of a motor over the stride, driving (torque along speed) and driven, against what the motor can give where that is known. */
export function torqueSpeedChart(motor: MotorDemand, limit: MotorLimitSi = [], title = 'Torque and speed over the stride'): Chart {
  const driving: [number, number][] = []
  const driven: [number, number][] = []
  motor.cloud.speed.forEach((speed, i) => {
    const torque = motor.cloud.torque[i]!
    const point: [number, number] = [(Math.abs(speed) * 30) / Math.PI, Math.abs(torque)]
    if (torque * speed >= 0) driving.push(point)
    else driven.push(point)
  })
  return pointChart({
    title,
    description: `Each mark is one moment of the stride. Peak torque ${motor.peakTorque}, peak speed ${motor.peakSpeed}, rms torque ${motor.rmsTorque}.`,
    x: { title: 'Motor speed', unit: 'rpm', zero: true },
    y: { title: 'Motor torque', unit: 'N m', zero: true },
    series: [
      { name: 'motor drives', points: driving },
      { name: 'load drives', points: driven },
    ].filter(({ points }) => points.length > 0),
    lines:
      limit.length === 0
        ? []
        : [{ name: 'what the motor gives', points: limit.map(([speed, torque]) => [(speed * 30) / Math.PI, torque] as const) }],
    rules: [{ name: `rms ${motor.rmsTorque}`, at: motor.rmsTorque.si }],
  })
}

/** Torque of one joint or drum over the stride. */
export function strideTorqueChart(stride: Walkable, title = 'Drum torque over the stride'): Chart {
  const { samples } = stride
  const order = Array.from(samples.time.keys()).sort((i, j) => samples.time[i]! - samples.time[j]!)
  const series = (['sidewaysHip', 'hip', 'knee'] as const).map((name, j) => ({
    name,
    points: order.map((i) => [samples.time[i]! * 1000, samples.actuatorTorque[3 * i + j]!] as const),
  }))
  const peak = (demand: Demand) => demand.peakTorque
  return lineChart({
    title,
    description: `Torque at the drums after touch-down. Peaks: sideways hip ${peak(stride.actuators.sidewaysHip)}, hip ${peak(stride.actuators.hip)}, knee ${peak(stride.actuators.knee)}.`,
    x: { title: 'Time after touch-down', unit: 'ms' },
    y: { title: 'Torque', unit: 'N m' },
    series,
  })
}

/**
 * Ellipses of the foot's error in the x–z plane along a stride, enlarged so that they can be seen.
 * `covarianceAt` gives the covariance of the foot (9 numbers, m², row-major) at joint angles, as `footError` returns it.
 */
export function footErrorChart(
  leg: ThreeJointLeg,
  path: FootPath,
  covarianceAt: (q: Float64Array) => ArrayLike<number>,
  options: {
    /** Factor by which the ellipses are drawn larger than they are. Default 10. */
    readonly enlarged?: number
    /** Number of ellipses along the stride. Default 8. */
    readonly ellipses?: number
    /** Title of the chart. */
    readonly title?: string
  } = {},
): Chart {
  requireKeys('kinematics.footErrorChart', 'options', options, ['enlarged', 'ellipses', 'title'])
  const { enlarged = 10, ellipses = 8, title = 'Error of the foot along the stride' } = options
  const out = new Float64Array(9)
  const trace: [number, number][] = []
  for (let i = 0; i <= 120; i++) {
    path.si.stateInto(out, 0, (path.si.period * i) / 120)
    trace.push([out[0]! * MM, out[2]! * MM])
  }
  const nearest = new Float64Array(6)
  const series: Series[] = [{ name: 'foot path', points: trace }]
  for (let k = 0; k < ellipses; k++) {
    path.si.stateInto(out, 0, (path.si.period * k) / ellipses)
    const centre = [out[0]!, out[2]!] as const
    leg.si.nearestInto(nearest, 0, leg.limitsSi, out[0]!, out[1]!, out[2]!)
    const c = covarianceAt(nearest.slice(0, 3))
    const [xx, xz, zz] = [c[0]!, c[2]!, c[8]!]
    const mean = (xx + zz) / 2
    const spread = Math.hypot((xx - zz) / 2, xz)
    const angle = 0.5 * Math.atan2(2 * xz, xx - zz)
    const [a, b] = [Math.sqrt(mean + spread), Math.sqrt(Math.max(0, mean - spread))]
    series.push({
      name: `1 σ at ${Math.round((100 * k) / ellipses)} % of the stride, × ${enlarged}`,
      points: Array.from({ length: 33 }, (_, i) => {
        const t = (2 * Math.PI * i) / 32
        const [u, v] = [a * Math.cos(t), b * Math.sin(t)]
        return [
          (centre[0] + enlarged * (u * Math.cos(angle) - v * Math.sin(angle))) * MM,
          (centre[1] + enlarged * (u * Math.sin(angle) + v * Math.cos(angle))) * MM,
        ] as const
      }),
    })
  }
  return lineChart({
    title,
    description: `Path of the foot with the ellipse of one standard deviation of its place at ${ellipses} moments, enlarged ${enlarged} times.`,
    x: { title: 'Forward of hip', unit: 'mm' },
    y: { title: 'Above hip', unit: 'mm' },
    series,
  })
}
