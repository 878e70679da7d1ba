import { type Chart, lineChart } from '../chart/index.js'
import { readInputs } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'
import type { CordDrive } from './drive.js'
import { loadPath } from './load-path.js'

const ENDS = [
  ['low friction', 'atLowFriction'],
  ['high friction', 'atHighFriction'],
] as const
const DEGREE = Math.PI / 180
const TORQUE = { torque: 'torque' } as const
const AMPLITUDE = { amplitude: { kind: 'torque', above: 0 } } as const

/**
 * Tension along the cord at a torque, from anchor to anchor through both drums, spans and the pinion: where it slips and where it rests.
 * The pose is mid travel, the load comes from rest. Throws an `InputError` for a torque that cannot be read.
 */
export function tensionAlongWrapChart(drive: CordDrive, torque: In<'torque'>): Chart {
  const size = Math.abs(readInputs('capstan.tensionAlongWrapChart', TORQUE, { torque }).torque)
  const beyond: string[] = []
  const series = ENDS.map(([name, end]) => {
    const d = drive.si[end]
    const point = loadPath(d, 'torque', [size])[0]
    if (point === undefined) throw new Error('a path of one step has one point')
    const { tautTension: Ta, slackTension: Tb, state } = point
    if (state === 'slips') beyond.push(`At ${name} the pinion slips: the line holds for ${new Quantity(point.torque, 'torque')}.`)
    if (state === 'slackSpan') beyond.push(`At ${name} the slack span is loose.`)
    const clamp = d.hold === 'clampedMidPinion' ? d.pinionWrap / 2 : undefined
    const muDrum = d.drumFriction ?? d.friction
    const points: [number, number][] = []
    let along = 0
    const wrap = (radius: number, angle: number, tension: (theta: number) => number) => {
      const pieces = Math.max(24, Math.ceil(angle / 0.1))
      for (let i = 0; i <= pieces; i++) points.push([(along + (radius * angle * i) / pieces) * 1000, tension((angle * i) / pieces)])
      along += radius * angle
    }
    const taut = (mu: number) => (theta: number) => Math.max(d.pretension, Ta * Math.exp(-mu * theta))
    const slack = (mu: number) => (theta: number) => Math.min(d.pretension, Tb * Math.exp(mu * theta))
    wrap(d.drumRadius, d.drumWrapTaut, (theta) => taut(muDrum)(d.drumWrapTaut - theta))
    along += d.span
    wrap(d.pinionRadius, d.pinionWrap, (theta) => {
      const fromTaut = taut(d.friction)(theta)
      // A clamp parts the two sides; without one they meet where the slip of the taut side ends.
      const onTautSide = clamp === undefined ? fromTaut > d.pretension : theta <= clamp
      return onTautSide ? fromTaut : slack(d.friction)(d.pinionWrap - theta)
    })
    along += d.span
    wrap(d.drumRadius, d.drumWrapSlack, slack(muDrum))
    return { name, points }
  })
  return lineChart({
    title: 'Tension along the cord',
    description: `Cord tension from the taut anchor through drum, span, pinion, span and drum to the slack anchor at a torque of ${[new Quantity(size, 'torque'), ...beyond].join('. ').replace(/\.$/, '')}.`,
    x: { title: 'length along the cord from the taut anchor', unit: 'mm' },
    y: { title: 'tension', unit: 'N' },
    series,
    rules: [{ name: 'pretension', at: drive.si.atLowFriction.pretension }],
  })
}

/** Windup against torque over a full cycle, with its hysteresis loop. Throws an `InputError` unless the torque is above zero. */
export function windupChart(drive: CordDrive, amplitude: In<'torque'>): Chart {
  const peak = readInputs('capstan.windupChart', AMPLITUDE, { amplitude }).amplitude
  const corners = [0, 1, -1, 1]
  const torques = corners.flatMap((to, k) => {
    const from = k === 0 ? 0 : (corners[k - 1] as number)
    return Array.from({ length: 40 }, (_, i) => peak * (from + ((to - from) * (i + 1)) / 40))
  })
  const series = ENDS.map(([name, end]) => ({
    name,
    points: loadPath(drive.si[end], 'torque', torques).map((p) => [p.windup / DEGREE, p.torque] as const),
  }))
  return lineChart({
    title: 'Windup and torque',
    description:
      'Joint torque against windup with the motor locked, loaded from rest and then round a full cycle; the loop is friction of the cord.',
    x: { title: 'windup of the joint', unit: 'deg' },
    y: { title: 'torque at the joint', unit: 'N m' },
    series,
  })
}
