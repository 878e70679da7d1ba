import { type Chart, lineChart } from '../chart/index.js'
import { readInputs } from '../formula/index.js'
import { type In, refuse, show } from '../units/index.js'
import { allowableStress } from './allowable.js'
import type { StressConditions } from './conditions.js'
import { isochronousCurve } from './creep-curves.js'
import type { CreepLaw } from './creep-law.js'
import type { Material } from './record.js'

const digits = (x: number) => Number(x.toPrecision(5))

/** A time in words, such as `1 h`, `30 days`, `1 year`. */
function timeWords(seconds: number): string {
  const [unit, size] =
    seconds >= 31557600
      ? (['year', 31557600] as const)
      : seconds >= 86400
        ? (['day', 86400] as const)
        : seconds >= 3600
          ? (['h', 3600] as const)
          : (['s', 1] as const)
  const count = Number((seconds / size).toPrecision(3))
  return `${count} ${unit}${count === 1 || unit === 'h' || unit === 's' ? '' : 's'}`
}

/**
 * Allowable stress against temperature: one line for each material and duration, with the band from the ends of every factor.
 * Throws an `InputError` for conditions that cannot be or a property a material lacks.
 */
export function allowableChart(
  materials: readonly Material[],
  durations: readonly In<'time'>[],
  conditions: Omit<StressConditions, 'temperature' | 'duration'>,
  range: {
    /** Lowest temperature of the chart. Default 0 °C. */
    readonly from: In<'temperature'>
    /** Highest temperature of the chart. Default 120 °C. */
    readonly to: In<'temperature'>
  } = { from: '0 degC', to: '120 degC' },
): Chart {
  const x = readInputs(
    'allowableChart',
    { durations: { list: { kind: 'time', min: 0 } }, from: { kind: 'temperature', min: 0 }, to: { kind: 'temperature', min: 0 } },
    { durations, from: range.from, to: range.to },
  )
  if (!(x.to > x.from)) refuse('allowableChart', 'range.to', range.to, `must be above range.from, ${show(range.from)}`)
  const temperatures = Array.from({ length: 61 }, (_, i) => x.from + ((x.to - x.from) * i) / 60)
  const lines = materials.flatMap((material) =>
    x.durations.map((duration) => ({
      name: `${material.name}, ${timeWords(duration)}`,
      rows: temperatures.map((t) => {
        const { stress } = allowableStress(material, { ...conditions, temperature: [t, 'K'], duration: [duration, 's'] })
        return [digits(t - 273.15), digits(stress.si / 1e6), digits(stress.low / 1e6), digits(stress.high / 1e6)] as const
      }),
    })),
  )
  return lineChart({
    title: 'Allowable stress against temperature',
    description: `Allowable stress (${conditions.direction}, ${conditions.moisture}, safety factor ${String(conditions.safetyFactor)}) of ${lines
      .map(({ name }) => name)
      .join('; ')}. Bands span the ranges of every factor.`,
    x: { title: 'temperature', unit: '°C' },
    y: { title: 'allowable stress', unit: 'MPa', zero: true },
    series: lines.map(({ name, rows }) => ({ name, points: rows.map(([t, typical]) => [t, typical] as const) })),
    bands: lines.map(({ name, rows }) => ({ name, points: rows.map(([t, , low, high]) => [t, low, high] as const) })),
  })
}

/** Isochronous curves of a creep law: stress over strain, one line for each time under load. A secant is the modulus for a part loaded that long. */
export function isochronousChart(law: CreepLaw, times: readonly In<'time'>[], largestStress: In<'stress'>): Chart {
  const x = readInputs(
    'isochronousChart',
    { times: { list: { kind: 'time', min: 0 } }, largestStress: { kind: 'stress', above: 0 } },
    { times, largestStress },
  )
  const stresses = Array.from({ length: 41 }, (_, i) => [(x.largestStress * i) / 40, 'Pa'] as const)
  const names = x.times.map(timeWords)
  return lineChart({
    title: 'Isochronous stress-strain curves',
    description: `Stress over strain after ${names.join(', ')} under constant load (${law.name}).`,
    x: { title: 'strain', unit: '%', zero: true },
    y: { title: 'stress', unit: 'MPa', zero: true },
    series: x.times.map((time, i) => ({
      name: names[i] as string,
      points: isochronousCurve(law, [time, 's'], stresses).map(
        ({ strain, stress }) => [digits(100 * strain.si), digits(stress.si / 1e6)] as const,
      ),
    })),
  })
}
