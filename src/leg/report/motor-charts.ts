import { type Chart, lineChart, pointChart, type Series } from '../../chart/index.js'
import { insulationClasses } from '../../thermal/index.js'
import { heatAt } from '../heat-under-motion.js'
import type { LegModel } from '../leg-model.js'
import { materialState } from '../material-state.js'
import { airNamed, JOINTS, motorOf, plateOf, stallTimeOf } from '../numbers.js'
import { isPrinted } from '../printed.js'
import { caseState } from '../what-if.js'
import { gaitClouds, motorLimit } from './gait-points.js'

const rpm = (speed: number) => (speed * 30) / Math.PI

/** Torque and speed of the motors over their strides, in the motor limit. */
export function torqueSpeed(leg: LegModel): Chart {
  const clouds = gaitClouds(leg)
  const series = clouds.map(({ name, points }) => ({ name, points: points.map(([speed, torque]) => [rpm(speed), torque] as const) }))
  return pointChart({
    title: 'Torque and speed of the motors over a stride',
    description: `Each mark is one moment of a stride at a motor's shaft, with the inertia of links and rotor. The line is the motor limit at the supply voltage, with the winding as warm as after walking. The table has the outermost marks.${series.length < 4 ? ' A gait that the leg cannot follow is not shown.' : ''}`,
    x: { title: 'motor speed', unit: 'rpm', zero: true },
    y: { title: 'motor torque', unit: 'N m', zero: true },
    series,
    lines: [{ name: 'motor limit', points: motorLimit(leg).map(([speed, torque]) => [rpm(speed), torque] as const) }],
  })
}

/** The limit of a plate: a print softens, a metal loses the strength of its temper. */
const plateRule = (leg: LegModel, material: string) => ({
  name: `plate (${material}) ${isPrinted(leg.x, material) ? 'softens' : 'weakens'}`,
  at: celsius(materialState(leg, material).softening()),
})

const celsius = (kelvin: number) => Number((kelvin - 273.15).toFixed(2))
const STALL_POINTS = 24

/** Temperatures of both motors while the leg is blocked. */
export function stallTemperatures(leg: LegModel): Chart {
  const { temperature: hotAir } = airNamed(leg.x, 'hot')
  const stallTime = stallTimeOf(leg.x)
  const state = caseState(leg, 'stall')
  const walks = (['hotAfternoon', 'hotWalkBack'] as const).map((id) => caseState(leg, id))
  const [unit, factor] = stallTime > 3 * 3600 ? (['h', 3600] as const) : stallTime > 300 ? (['min', 60] as const) : (['s', 1] as const)
  const series: Series[] = []
  let lost = ''
  for (const joint of JOINTS) {
    const left = (of: 'winding' | 'mount') => celsius(Math.max(...walks.map(({ joints }) => joints[joint].heat[of])))
    const winding: [number, number][] = [[0, left('winding')]]
    const mount: [number, number][] = [[0, left('mount')]]
    for (let i = 1; i <= STALL_POINTS; i++) {
      // Early times closer together: that is where most happens.
      const time = stallTime * (i / STALL_POINTS) ** 2
      const heat = heatAt(leg, {
        joint,
        motion: state.joints[joint].drum,
        air: hotAir,
        wind: 0,
        heating: 'held',
        heldFor: time,
      })
      if (heat.unsettled !== undefined) {
        lost += ` The ${joint} motor runs away within the time, or in the walk before it: its lines end there.`
        break
      }
      winding.push([time / factor, celsius(heat.winding)])
      mount.push([time / factor, celsius(heat.mount)])
    }
    series.push({ name: `${joint}: hottest phase`, points: winding }, { name: `${joint}: mounting face`, points: mount })
  }
  return lineChart({
    title: 'Temperatures of a stall after a walk, in hot still air',
    description: `Hottest phase of the winding and mounting face of each motor while the leg is blocked, with the limits of plate and winding.${lost}`,
    x: { title: 'time', unit },
    y: { title: 'temperature', unit: '°C' },
    series,
    rules: [
      ...JOINTS.flatMap((joint) => [
        plateRule(leg, plateOf(leg.x, joint).material),
        {
          name: `winding, class ${motorOf(leg.x, joint).windingClass}`,
          at: celsius(insulationClasses[motorOf(leg.x, joint).windingClass].si),
        },
      ]).filter(({ name }, i, all) => all.findIndex((other) => other.name === name) === i),
    ],
  })
}
