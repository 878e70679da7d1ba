import { type Curve, type Drawing, Figure, type Point, plain, plotBlock } from '../../drawing/index.js'
import type { CaseId } from '../cases/events.js'
import { JOINTS, type Joint } from '../numbers.js'
import { heat } from '../parts/motors/heat.js'
import { motorLimit } from '../report/gait-points.js'
import { type Facts, resultSentence } from './facts.js'
import { hasMotor } from './present.js'
import { amount, answerOf, celsius, checked } from './words.js'

const CHECKS = ['motor.speed', 'motor.swing', 'motor.current']
const rpm = (speed: number) => (speed * 30) / Math.PI
const GAITS = ['walk', 'trot'] as const
const STATES: readonly (readonly [CaseId, string])[] = [
  ['coldMorning', 'cold'],
  ['walk', 'after walking'],
  ['hotAfternoon', 'hot air'],
]

/** Torque and speed of a motor over its strides, in the motor's limits at several temperatures. */
export function torqueSpeedDrawing(facts: Facts, joint: Joint): Drawing | undefined {
  if (!hasMotor(facts, joint)) return undefined
  const worst = facts.worst(CHECKS, joint)
  const figure = new Figure({
    id: `torque-speed-${joint}`,
    title: `Torque and speed of the motor of the ${joint} over a stride, in its limits`,
    ...answerOf(`Motor of the ${joint}, torque and speed`, worst),
  })
  const limits = limitCurves(facts, figure, joint)
  const clouds = strideClouds(facts, figure, joint)
  if (clouds.length + limits.length > 0)
    figure.block('Each mark is a moment of a stride at the motor’s shaft', (y) =>
      plotBlock(
        {
          x: { title: 'motor speed, rpm', from: 0 },
          y: { title: 'motor torque, N m', from: 0 },
          curves: [...limits, ...clouds],
          height: 170,
        },
        y,
      ),
    )
  if (clouds.length < GAITS.length) figure.text('A gait that the leg cannot follow is not shown.')
  figure.say(
    'The limit runs from the current limit of the controller down to the highest speed at the supply voltage; a warm motor has weaker magnets and more resistance.',
    ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence),
  )
  figure.rows(...facts.checks(CHECKS, joint).map(checked))
  return figure.done()
}

/** Largest torque of a motor over its speed, cold and warm. */
function limitCurves(facts: Facts, figure: Figure, joint: Joint): Curve[] {
  return STATES.flatMap(([id, name]): Curve[] => {
    const state = facts.tried(heat, { ...facts.case(id), joint })
    if (state === undefined || state.unsettled !== undefined) return []
    const points = motorLimit(facts.leg, state, joint).map(([speed, torque]): Point => [rpm(speed), torque])
    const label = [name, `winding ${plain(celsius(state.winding), 3)} °C`]
    figure.rows(amount(`highest speed, ${name}`, points.at(-1)![0], 'rpm'), amount(`largest torque, ${name}`, points[0]![1], 'N m'))
    return [
      {
        points,
        line: name === 'cold' ? 'thin' : name === 'hot air' ? 'bad' : 'thick',
        label,
        labelAt: points[Math.floor(points.length * 0.7)]!,
      },
    ]
  })
}

/** Torque and speed of a motor at moments of a stride, for each gait that the leg can follow. */
function strideClouds(facts: Facts, figure: Figure, joint: Joint): Curve[] {
  return GAITS.flatMap((gait): Curve[] => {
    const stride = facts.stride(gait)
    if (!stride.walkable) return []
    const { cloud, peakTorque, peakSpeed } = stride.motors[joint]
    figure.rows(
      amount(`largest motor torque, ${gait}`, peakTorque.si, 'N m'),
      amount(`highest motor speed, ${gait}`, rpm(peakSpeed.si), 'rpm'),
    )
    const points = Array.from(cloud.speed, (speed, i): Point => [rpm(Math.abs(speed)), Math.abs(cloud.torque[i]!)])
    const thinned = points.filter((_, i) => i % 4 === 0)
    const farthest = thinned.reduce((best, point) => (point[0] > best[0] ? point : best))
    return [
      {
        points: thinned,
        line: 'force',
        mark: gait === 'walk' ? 'dot' : 'cross',
        label: gait === 'walk' ? 'walk (dots)' : 'trot (crosses)',
        labelAt: farthest,
        ink: 'force',
      },
    ]
  })
}

/** Torque and speed of both joints over a stride of the walk; nothing where the leg cannot follow it. */
export function strideDrawing(facts: Facts): Drawing | undefined {
  if (!JOINTS.every((joint) => hasMotor(facts, joint))) return undefined
  const stride = facts.stride('walk')
  if (!stride.walkable) return undefined
  const { time, jointTorque, jointRate, stance } = stride.samples
  const period = time.at(-1)!
  const course = (column: Float64Array, joint: Joint): Point[] => {
    const axis = joint === 'hip' ? 1 : 2
    return Array.from(time, (t, i): Point => [t / period, column[3 * i + axis]!]).filter((_, i) => i % 2 === 0)
  }
  const figure = new Figure({
    id: 'stride',
    title: 'Torque and speed of hip and knee over a stride of the walk',
    answer: 'Walk: torque and speed of the joints',
  })
  const plots = [
    ['Torque at the joint', 'N m', jointTorque],
    ['Speed of the joint', 'rad/s', jointRate],
  ] as const
  for (const [name, unit, column] of plots) {
    const curves = JOINTS.map((joint): Curve => {
      const points = course(column, joint)
      const peak = points.reduce((best, point) => (Math.abs(point[1]) > Math.abs(best[1]) ? point : best))
      figure.rows(amount(`${name.toLowerCase()}, ${joint}, largest`, peak[1], unit))
      return {
        points,
        line: joint === 'hip' ? 'thick' : 'moveSecond',
        label: [joint, `${plain(peak[1], 3)} ${unit}`],
        labelAt: peak,
        ink: joint === 'hip' ? 'ink' : 'move',
      }
    })
    const zero: Curve = {
      points: [
        [0, 0],
        [1, 0],
      ],
      line: 'fine',
    }
    figure.block(name, (y) =>
      plotBlock({ x: { title: 'share of the stride', from: 0, to: 1 }, y: { title: unit }, curves: [zero, ...curves], height: 110 }, y),
    )
  }
  const lift = Array.from(stance).lastIndexOf(1)
  const share = lift < 0 ? 0 : time[lift]! / period
  figure.text(`The foot is on the ground up to ${plain(share, 2)} of the stride.`)
  figure.say(
    `The foot is on the ground up to ${plain(share, 2)} of the stride. Solid: hip; dashed: knee. Weight and inertia of the links count.`,
  )
  return figure.done()
}
