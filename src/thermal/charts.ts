import { barChart, type Chart, lineChart } from '../chart/index.js'
import { type In, quantity } from '../units/index.js'
import type { PartLimit } from './limits.js'
import type { MotorMount } from './mount.js'
import { continuousTorque } from './operating.js'
import { intermittentTorque } from './operating-duty.js'
import type { RemedyRow } from './remedies.js'

const celsius = (kelvin: number) => Number((kelvin - 273.15).toFixed(3))

/** Temperatures against time with the parts' limits, of a transient or of a duty's cycle. */
export function temperatureChart(
  course: {
    /** Times, s. */
    readonly times: Float64Array
    /** Temperatures by node, K, one for each time. */
    readonly temperatures: Readonly<Record<string, Float64Array>>
  },
  limits: readonly PartLimit[] = [],
  nodes: readonly string[] = Object.keys(course.temperatures),
): Chart {
  const end = course.times.at(-1) ?? 0
  const [unit, factor] = end > 3 * 3600 ? (['h', 3600] as const) : end > 300 ? (['min', 60] as const) : (['s', 1] as const)
  return lineChart({
    title: 'Temperatures against time',
    description: `Temperature of ${nodes.join(', ')} over ${Number((end / factor).toPrecision(3))} ${unit}, with the limits of the parts.`,
    x: { title: 'time', unit },
    y: { title: 'temperature', unit: '°C' },
    series: nodes.map((name) => ({
      name,
      points: Array.from(course.times, (t, k) => [Number((t / factor).toPrecision(6)), celsius(course.temperatures[name]![k]!)] as const),
    })),
    rules: limits.flatMap(({ part, limit }) =>
      limit === undefined ? [] : [{ name: `limit of ${part}`, at: celsius(quantity('temperature', limit).si) }],
    ),
  })
}

/** Torque that a mount allows against the part of the cycle under load, with the band of continuous duty. */
export function torqueDutyChart(mount: MotorMount, limits: readonly PartLimit[], period: In<'time'> = '10 min'): Chart {
  const continuous = continuousTorque(mount, limits)
  const factors = [0.1, 0.15, 0.25, 0.4, 0.6, 0.8, 0.95]
  const rows = factors.map((dutyFactor) => ({ dutyFactor, torque: intermittentTorque(mount, limits, { dutyFactor, period }) }))
  const points = [
    ...rows.map(({ dutyFactor, torque: { torque } }) => [100 * dutyFactor, torque.si, torque.low, torque.high] as const),
    [100, continuous.torque.si, continuous.torque.low, continuous.torque.high] as const,
  ]
  const name = 'settled cycle'
  return lineChart({
    title: 'Torque against duty',
    description: `Motor torque that keeps every part within its limit, for cycles of ${String(quantity('time', period))}; at full duty ${continuous.governs} governs.`,
    x: { title: 'part of the cycle under load', unit: '%' },
    y: { title: 'motor torque', unit: 'N m', zero: true },
    series: [{ name, points: points.map(([x, y]) => [x, y] as const) }],
    bands: [{ name, points: points.map(([x, , low, high]) => [x, low, high] as const) }],
  })
}

/** Remedies side by side: torque each allows, with what it adds in mass. */
export function remedyChart(rows: readonly RemedyRow[]): Chart {
  const present = rows[0]?.torque.si ?? 0
  return barChart({
    title: 'What would help',
    description: 'Continuous motor torque that each remedy allows, with the mass it adds.',
    value: { title: 'motor torque', unit: 'N m', zero: true },
    bars: rows.map(({ name, torque, addedMass, governs }) => ({
      name,
      to: Number(torque.si.toPrecision(4)),
      group: governs,
      label: `${Number(torque.si.toPrecision(3))} N m, ${addedMass.si >= 0 ? '+' : '−'}${Math.abs(1000 * addedMass.si).toFixed(0)} g`,
    })),
    rules: [{ name: 'as it is', at: present }],
  })
}
