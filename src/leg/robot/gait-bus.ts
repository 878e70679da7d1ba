import { GAITS } from '../../kinematics/index.js'
import { Table } from '../../study/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { type BusPoint, busAt, type busMotors } from './bus.js'
import type { CornerStride } from './walk.js'

/** Moments of a stride at which the bus is summed. */
export const MOMENTS = 480

const power = (x: number) => new Quantity(x, 'power')

/** The bus over a stride. */
export function courseOf(
  leg: LegModel,
  motors: ReturnType<typeof busMotors>,
  {
    id,
    strides,
    brakeResistor,
  }: { readonly id: 'walk' | 'trot'; readonly strides: readonly CornerStride[]; readonly brakeResistor: number },
): BusPoint[] {
  const phases = GAITS[id]
  return Array.from({ length: MOMENTS }, (_, i) => {
    const now = (i + 0.5) / MOMENTS
    const points = strides.flatMap(({ at }, k) => at((now - phases[k]! + 1) % 1))
    return busAt(leg, motors, points, brakeResistor)
  })
}

/** The worst of several ways, value by value; energy and samples of the one that draws the most on average. */
export function worstOf(courses: readonly (readonly BusPoint[])[]) {
  const ways = courses.map(overStride)
  const hungriest = ways.reduce((best, { meanPower }, k) => (meanPower.si > ways[best]!.meanPower.si ? k : best), 0)
  const most = <Of extends 'peakPower' | 'peakReturned' | 'notTaken' | 'peakCurrent' | 'motorHeat' | 'controllerHeat'>(of: Of) =>
    ways.map((way) => way[of]).reduce((one, other) => (other.si > one.si ? other : one))
  return {
    ...ways[hungriest]!,
    peakPower: most('peakPower'),
    peakReturned: most('peakReturned'),
    notTaken: most('notTaken'),
    peakCurrent: most('peakCurrent'),
    motorHeat: most('motorHeat'),
    controllerHeat: most('controllerHeat'),
    lowestVoltage: ways.map((way) => way.lowestVoltage).reduce((one, other) => (other.si < one.si ? other : one)),
    state: ways.every(({ state }) => state === 'holds') ? ('holds' as const) : ('brownOut' as const),
    samples: courses[hungriest]!,
  }
}

/** Power and current of motors and supply over a stride, from its moments. */
function overStride(points: readonly BusPoint[]) {
  const mean = (of: (point: BusPoint) => number) => points.reduce((sum, point) => sum + of(point), 0) / points.length
  const largest = (of: (point: BusPoint) => number) => Math.max(...points.map(of))
  return {
    meanPower: power(mean(({ power, returned }) => power - returned)),
    peakPower: power(largest(({ power }) => power)),
    returned: power(mean(({ returned }) => returned)),
    peakReturned: power(largest(({ back }) => back)),
    notTaken: power(largest(({ notTaken }) => notTaken)),
    peakCurrent: new Quantity(Math.max(...points.map(({ current }) => current)), 'current'),
    lowestVoltage: new Quantity(Math.min(...points.map(({ voltage }) => voltage)), 'voltage'),
    state: points.every(({ holds }) => holds) ? 'holds' : 'brownOut',
    motorHeat: power(mean(({ motorHeat }) => motorHeat)),
    controllerHeat: power(mean(({ controllerHeat }) => controllerHeat)),
  } as const
}

/** The bus moment by moment. */
export function table(points: readonly BusPoint[], period: number): Table {
  const column = (name: string, kind: Kind, unit: string, of: (point: BusPoint, i: number) => number) => ({
    name,
    kind,
    unit,
    values: Float64Array.from(points, of),
  })
  return new Table(
    'leg.robotBus',
    [
      column('time', 'time', 's', (_, i) => ((i + 0.5) / points.length) * period),
      column('power', 'power', 'W', (point) => point.power),
      column('returned', 'power', 'W', (point) => point.returned),
      column('not taken', 'power', 'W', (point) => point.notTaken),
      column('current', 'current', 'A', (point) => point.current),
      column('voltage', 'voltage', 'V', (point) => point.voltage),
      column('motor heat', 'power', 'W', (point) => point.motorHeat),
    ],
    points.length,
  )
}
