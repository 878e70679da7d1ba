import { type Chart, lineChart } from '../../chart/index.js'
import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { clampLoadAt } from '../clamp-load-at.js'
import type { LegModel } from '../leg-model.js'
import { materialState } from '../material-state.js'
import { cordJoints, driveOf, jointWords, plateOf, seasonDays } from '../numbers.js'
import { pretensionNeeded } from '../parts/transmission/cord/holding-checks.js'
import { pretensionInMonth } from '../parts/transmission/pretension-left.js'
import { calculationFor, caseState } from '../what-if.js'

/** Pretension of the cords over a year, and what walking needs of it. */
export function pretensionOverTime(leg: LegModel): Chart {
  const calculation = calculationFor(leg)
  const cords = cordJoints(leg.x)
  return lineChart({
    title: 'Pretension over a year at room temperature',
    description: `Tension of the resting spans as the cord relaxes. Assumed to be left after a year: ${cords.map((joint) => `${Math.round(100 * leg.drives[joint].pretensionLeft)} % (${jointWords(joint)})`).join(', ')}. A span hangs slack where its tension is below the tension that walking needs, on the level and on the slope.`,
    x: { title: 'time', unit: 'months' },
    y: { title: 'tension', unit: 'N', zero: true },
    series: [
      ...cords.map((joint) => ({
        name: jointWords(joint),
        points: Array.from({ length: 25 }, (_, i) => {
          const months = i / 2
          const left = pretensionInMonth(driveOf(leg.x, joint, 'cord').pretension, leg.drives[joint].pretensionLeft, months)
          return [months, Number(left.toFixed(3))] as const
        }),
      })),
      ...cords.map((joint) => {
        const needed = calculation.get(
          pretensionNeeded,
          calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint })) as never,
        )
        return {
          name: `${jointWords(joint)}: walking needs`,
          points: [0, 12].map((months) => [months, Number(needed.toFixed(3))] as const),
        }
      }),
    ],
  })
}

/** Clamp load of the bolts over a season. */
export function clampOverSeason(leg: LegModel): Chart {
  const state = caseState(leg, 'walk')
  const { heat } = state.joints.knee
  const mount = Math.min(heat.mount, materialState(leg, plateOf(leg.x, 'knee').material).softening())
  const days = seasonDays(leg.x)
  const [stack, motor] = [leg.x.plates[leg.x.joints.hip.plate ?? '']?.bolts, leg.x.joints.knee.motorBolts]
  const groups = [
    [stack, 'stack bolts', (mount + state.air) / 2],
    [motor, 'motor bolts', mount],
  ] as const
  return lineChart({
    title: 'Clamp load of a bolt over the season',
    description: `Preload left in each bolt after embedding and creep of the clamped parts, day by day, with walking for ${String(new Quantity(leg.x.usage.walkingTime, 'time'))} a day at the temperature of walking.`,
    x: { title: 'time', unit: 'days' },
    y: { title: 'clamp load', unit: 'N', zero: true },
    series: groups.flatMap(([group, name, temperature]) => {
      if (group === undefined) return []
      const { preload, after } = clampLoadAt(leg, group)
      const points: [number, number][] = [[0, Number(preload.toFixed(1))]]
      for (let i = 1; i <= 20; i++) {
        const day = days * (i / 20) ** 3
        points.push([Number(day.toPrecision(5)), Number(after(day, temperature, leg.x.usage.walkingTime).toFixed(1))])
      }
      return [{ name, points }]
    }),
  })
}
