import { barChart, type Chart, lineChart, pointChart, type Series } from '../../chart/index.js'
import { reachChart, threeJointLeg } from '../../kinematics/index.js'
import { sensitivity } from '../../study/index.js'
import { insulationClasses } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { fieldFormula } from '../as-formula.js'
import { fieldsRead } from '../assess/recorded.js'
import { materialState } from '../material-state.js'
import {
  airNamed,
  driveOf,
  gaitNamed,
  hasCord,
  JOINTS,
  legNumbers,
  motorOf,
  type Prepared,
  plateOf,
  prepare,
  seasonDays,
  stallTimeOf,
} from '../numbers.js'
import { footPathOf } from '../parts/motion/stride-moments.js'
import { pretensionInMonth } from '../parts/transmission/pretension-left.js'
import type { Assessment } from '../result.js'
import { caseState, clampLoadAt, heatAt } from '../what-if.js'
import { rankOf } from './checks-section.js'
import { placeOf, reserveText, standing } from './content.js'
import { fieldName } from './fields-list.js'
import { gaitClouds, motorLimit } from './gait-points.js'

/** One chart of the report. */
export interface ReportChart {
  /** A name for links and file names, such as `reserves`. */
  readonly id: string
  /** The picture as a Vega-Lite specification. */
  readonly chart: Chart
}

/** The charts of a report: reserves, torque and speed of the gaits, temperatures of a stall, a year's tension and clamp load, reach, and what moves the governing reserve. */
export function reportCharts(assessment: Assessment): readonly ReportChart[] {
  const leg = prepare(legNumbers(assessment.leg))
  return [
    { id: 'reserves', chart: reserveChart(assessment) },
    { id: 'moves', chart: tornado(assessment) },
    { id: 'torque-speed', chart: torqueSpeed(leg) },
    { id: 'stall', chart: stallTemperatures(leg) },
    ...(JOINTS.some((joint) => hasCord(leg.x, joint)) ? [{ id: 'pretension', chart: pretensionOverTime(leg) }] : []),
    { id: 'clamp', chart: clampOverSeason(leg) },
    { id: 'reach', chart: reach(leg) },
  ]
}

const MOST_BARS = 18
/** Reserves beyond this are drawn at this length; the label has the number. */
const LONGEST_BAR = 4

function reserveChart(assessment: Assessment): Chart {
  const { checks, requiredReserve } = assessment
  const shown = checks.slice(0, MOST_BARS)
  return barChart({
    title: 'Reserve of the checks nearest to their limit',
    description: `Bars of the ${shown.length} of ${checks.length} checks that are nearest to their required reserve. A check fails where its bar ends before the dashed line at 1${requiredReserve > 1 ? `; the other line is the required reserve of ${requiredReserve}` : ''}. First: ${placeOf(shown[0]!)}, ${reserveText(shown[0]!.reserve)}.`,
    value: { title: 'reserve: capacity over demand', unit: '1', zero: true },
    bars: shown.map((check) => ({
      name: `${rankOf(assessment, check)} ${placeOf(check)}`,
      to: Math.min(check.reserve, LONGEST_BAR),
      group: standing(check),
      label: `${reserveText(check.reserve)} ${standing(check)}`,
    })),
    rules: [1, ...(requiredReserve > 1 ? [requiredReserve] : [])].map((at) => ({ name: '', at })),
  })
}

const MOST_MOVERS = 10
/** Each value is moved by this part of itself: about what a fit, a wall or a friction is out by. */
const SWING = 0.02

/** What moves the governing reserve: each quantity of the leg by two per cent, one at a time (temperatures, whose zero is arbitrary, left out). */
function tornado(assessment: Assessment): Chart {
  const { leg, governing } = assessment
  const check = governing.joint === undefined ? governing.id : `${governing.id} ${governing.joint}`
  const { defaults: _, ...data } = leg
  const found = sensitivity(
    fieldFormula(leg, { check, cases: [governing.case] }),
    quantitiesOf(data, fieldsRead(assessment, check)) as never,
    { swing: SWING } as never,
  )
  const movers = found.inputs.filter(
    ({ value, atFrom, atTo }) =>
      value.kind !== 'temperature' && atFrom !== undefined && atTo !== undefined && Math.abs(atFrom.si - atTo.si) > 1e-9,
  )
  const shown = movers.slice(0, MOST_MOVERS)
  const base = found.value.si
  // A text beside a bar that runs to the left would lie on it.
  const labelled = (reserve: number, input: Quantity) => (reserve > base ? String(input) : '')
  const end = (reserve: number) => Number(Math.min(reserve, 3 * base + 1).toPrecision(6))
  return barChart({
    title: `Sensitivity of the governing reserve (${placeOf(governing)}, ${governing.caseTitle.toLowerCase()})`,
    description:
      shown.length === 0
        ? 'A change of two per cent in any one quantity of the leg leaves the governing reserve as it is.'
        : `Reserve with each value two per cent lower and two per cent higher, those that move it most first: ${shown
            .slice(0, 3)
            .map(({ path, atFrom, atTo }) => `${fieldName(path)} ${reserveText(atFrom!.si)} to ${reserveText(atTo!.si)}`)
            .join('; ')}.`,
    value: { title: 'reserve', unit: '1' },
    bars: shown.flatMap(({ path, from, to, atFrom, atTo }) => [
      { name: fieldName(path), from: base, to: end(atFrom!.si), group: '2 % lower', label: labelled(atFrom!.si, from) },
      { name: fieldName(path), from: base, to: end(atTo!.si), group: '2 % higher', label: labelled(atTo!.si, to) },
    ]),
    rules: [{ name: `as it is: ${reserveText(base)}`, at: base }],
  })
}

/** Quantities of a described leg at their places, of those fields that are read; words, lists and tables left out. */
function quantitiesOf(record: object, read: ReadonlySet<string>, path = ''): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(record).flatMap(([name, value]): [string, unknown][] => {
      const own = path === '' ? name : `${path}.${name}`
      if (value instanceof Quantity) return value.kind === 'temperature' || !read.has(own) ? [] : [[name, value]]
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return []
      const inner = quantitiesOf(value, read, own)
      return Object.keys(inner).length > 0 ? [[name, inner]] : []
    }),
  )
}

const rpm = (speed: number) => (speed * 30) / Math.PI

function torqueSpeed(leg: Prepared): Chart {
  const clouds = gaitClouds(leg)
  const series = clouds.map(({ name, points }) => ({ name, points: points.map(([speed, torque]) => [rpm(speed), torque] as const) }))
  return pointChart({
    title: 'Torque and speed of the motors over a stride',
    description: `Each mark is one moment of a stride at a motor's shaft, with the inertia of links and rotor. The line is the motor limit at the supply voltage, with the winding as warm as after walking.${series.length < 4 ? ' A gait that the leg cannot follow is not shown.' : ''}`,
    x: { title: 'motor speed', unit: 'rpm', zero: true },
    y: { title: 'motor torque', unit: 'N m', zero: true },
    series,
    lines: [{ name: 'motor limit', points: motorLimit(leg).map(([speed, torque]) => [rpm(speed), torque] as const) }],
  })
}

const celsius = (kelvin: number) => Number((kelvin - 273.15).toFixed(2))
const STALL_POINTS = 24

function stallTemperatures(leg: Prepared): Chart {
  const { temperature: hotAir } = airNamed(leg.x, 'hot')
  const stallTime = stallTimeOf(leg.x)
  const state = caseState(leg, 'stall')
  const [unit, factor] = stallTime > 3 * 3600 ? (['h', 3600] as const) : stallTime > 300 ? (['min', 60] as const) : (['s', 1] as const)
  const series: Series[] = []
  let lost = ''
  for (const joint of JOINTS) {
    const winding: [number, number][] = [[0, celsius(hotAir)]]
    const mount: [number, number][] = [[0, celsius(hotAir)]]
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
        lost += ` The ${joint} motor runs away within the time: its lines end there.`
        break
      }
      winding.push([time / factor, celsius(heat.winding)])
      mount.push([time / factor, celsius(heat.mount)])
    }
    series.push({ name: `${joint}: hottest phase`, points: winding }, { name: `${joint}: mounting face`, points: mount })
  }
  return lineChart({
    title: 'Temperatures of a stall from cold, in hot still air',
    description: `Hottest phase of the winding and mounting face of each motor while the leg is blocked, with the limits of plate and winding.${lost}`,
    x: { title: 'time', unit },
    y: { title: 'temperature', unit: '°C' },
    series,
    rules: [
      ...JOINTS.flatMap((joint) => [
        {
          name: `plate (${plateOf(leg.x, joint).material}) softens`,
          at: celsius(materialState(leg, plateOf(leg.x, joint).material).softening()),
        },
        {
          name: `winding, class ${motorOf(leg.x, joint).windingClass}`,
          at: celsius(insulationClasses[motorOf(leg.x, joint).windingClass].si),
        },
      ]).filter(({ name }, i, all) => all.findIndex((one) => one.name === name) === i),
    ],
  })
}

function pretensionOverTime(leg: Prepared): Chart {
  const walk = caseState(leg, 'walk')
  const cords = JOINTS.filter((joint) => hasCord(leg.x, joint))
  return lineChart({
    title: 'Pretension over a year at room temperature',
    description: `Tension of the resting spans as the cord relaxes. Assumed to be left after a year: ${cords.map((joint) => `${Math.round(100 * leg.drives[joint].pretensionLeft)} % (${joint})`).join(' and ')}. A span hangs slack where its tension is below the tension that walking needs.`,
    x: { title: 'time', unit: 'months' },
    y: { title: 'tension', unit: 'N', zero: true },
    series: [
      ...cords.map((joint) => ({
        name: joint,
        points: Array.from({ length: 25 }, (_, i) => {
          const months = i / 2
          const left = pretensionInMonth(driveOf(leg.x, joint, 'cord').pretension, leg.drives[joint].pretensionLeft, months)
          return [months, Number(left.toFixed(3))] as const
        }),
      })),
      ...cords.map((joint) => {
        const { slackTorque, pretension } = walk.joints[joint].drive
        const needed = (Math.abs(walk.joints[joint].drum.torque) * pretension) / slackTorque
        return { name: `${joint}: walking needs`, points: [0, 12].map((months) => [months, Number(needed.toFixed(3))] as const) }
      }),
    ],
  })
}

function clampOverSeason(leg: Prepared): Chart {
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
    description: `Preload left in each bolt after embedding and creep of the clamped layers, day by day, with walking for ${String(new Quantity(leg.x.usage.walkingTime, 'time'))} a day at the temperature of walking.`,
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

function reach(leg: Prepared): Chart {
  const { links, joints, robot } = leg.x
  const length = (x: number) => new Quantity(x, 'length')
  const range = ({ lowest, highest }: { lowest: number; highest: number }) => ({
    lowest: new Quantity(lowest, 'angle'),
    highest: new Quantity(highest, 'angle'),
  })
  const kinematic = threeJointLeg({
    hipOffset: length(links.hipOffset),
    upperLink: length(links.upper.length),
    lowerLink: length(links.lower.length),
    limits: {
      sidewaysHip: range(joints.sidewaysHip?.range ?? { lowest: -1e-6, highest: 1e-6 }),
      hip: range(joints.hip.range),
      knee: range(joints.knee.range),
    },
  })
  const walk = gaitNamed(leg.x, 'walk')
  return reachChart(
    kinematic,
    footPathOf({ ...walk, hipOffset: links.hipOffset, height: robot.standHeight }, walk.stepLength / walk.speed / walk.dutyFactor),
    'Foot path of the walk within reach',
  )
}
