import { GAITS, type Gait, stanceForce } from '../../kinematics/index.js'
import { Table } from '../../study/index.js'
import { costOfTransport, runningTime } from '../../thermal/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { drivenJoints, gaitNamed } from '../numbers.js'
import { stance as stanceOf } from '../parts/load/stance.js'
import { calculationFor } from '../what-if.js'
import { type BusPoint, busAt, busMotors } from './bus.js'
import { centreHeightOf, cornersOf, feetOf, type Sway, stanceShares, tippingOf } from './feet.js'
import type { CornerLoad, RobotGait } from './result.js'
import { type CornerStride, cornerStride } from './walk.js'

/** Moments of a stride at which the bus is summed. */
const MOMENTS = 480

const power = (x: number) => new Quantity(x, 'power')

/** Time and distance on one charge at a power; absent where the document gives no energy. */
export function onOneCharge({ supply }: LegNumbers, drawn: number, speed: number) {
  if (supply.energy === undefined) return undefined
  return runningTime.si({
    energy: supply.energy,
    usable: supply.usableShare,
    openCircuitVoltage: supply.voltage,
    resistance: supply.internalResistance,
    parts: [{ power: drawn, share: 1, speed }],
  })
}

/** How a robot goes in a gait. */
export interface GaitWay extends Sway {
  readonly brakeResistor: number
  readonly traction?: number | undefined
  /** Slope that is walked across, its lower side on the left. Default: level ground. */
  readonly slope?: number
}

/** The robot in a gait: feet, loads, bus, energy. */
export function robotGait(leg: LegModel, id: 'walk' | 'trot', { brakeResistor, traction, slope = 0, ...sway }: GaitWay): RobotGait {
  const x = slope === 0 ? leg.x : leaning(leg.x, slope)
  const { speed, stepLength, dutyFactor } = gaitNamed(x, id)
  const period = stepLength / speed / dutyFactor
  const feet = feetOf(x, id, sway)
  const forces = footForcesOf(leg, x, { id, feet, weight: x.robot.mass * STANDARD_GRAVITY * Math.cos(slope) })
  const strides = cornersOf(x).map(({ mirrored, corner }, k) => {
    const { heading, stanceSweep } = feet.legs[k]!
    // A right leg is the mirror image of a left one: its outer side is the right.
    const outward = corner.startsWith('left') ? 1 : -1
    // The ground holds the feet uphill, away from the left.
    const lateral = -outward * Math.tan(slope)
    return cornerStride(leg, id, {
      mirrored,
      heading: outward * heading.si,
      stepLength: stanceSweep.si,
      force: forces[k]!,
      traction,
      lateral,
    })
  })
  const motors = busMotors(leg, slope === 0 ? id : 'slopeAcross')
  const phases = GAITS[id]
  const points = Array.from({ length: MOMENTS }, (_, i): BusPoint => {
    const now = (i + 0.5) / MOMENTS
    return busAt(
      leg,
      motors,
      strides.flatMap(({ at }, k) => at((now - phases[k]! + 1) % 1)),
      brakeResistor,
    )
  })
  const bus = overStride(points)
  const meanPower = bus.meanPower.si
  const { energyPerDistance, costOfTransport: cost } = costOfTransport.si({
    power: Math.max(0, meanPower),
    mass: x.robot.mass,
    speed,
    gravity: STANDARD_GRAVITY,
  })
  const charge = onOneCharge(x, Math.max(0, meanPower), speed)
  const tipping = tippingOf(x, feet)
  return {
    feet,
    corners: loads(x, forces, strides),
    unsupported: new Quantity(tipping.share, 'ratio'),
    tips: new Quantity(tipping.angle, 'angle'),
    ...bus,
    energyPerMetre: new Quantity(energyPerDistance, 'energyPerDistance'),
    costOfTransport: new Quantity(cost, 'ratio'),
    runningTime: charge === undefined ? undefined : new Quantity(charge.time, 'time'),
    range: charge === undefined ? undefined : new Quantity(charge.range, 'length'),
    samples: table(points, period),
  }
}

/** What motors and supply do over a stride, from its moments. */
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

/** A robot across a slope, its lower side on the left: the weight passes through the ground farther left; a centre of mass off the middle counts on that side. */
function leaning(x: LegNumbers, slope: number): LegNumbers {
  const { robot } = x
  return { ...x, robot: { ...robot, centreOfMassLeft: Math.abs(robot.centreOfMassLeft) + centreHeightOf(x) * Math.tan(slope) } }
}

/**
 * Force across the ground on each foot over its stance. A slow walk has that of standing still at each moment. A trot throws the body up: its force follows
 * from the impulse of the stance.
 */
function footForcesOf(
  leg: LegModel,
  x: LegNumbers,
  { id, feet, weight }: { readonly id: 'walk' | 'trot'; readonly feet: Gait; readonly weight: number },
): ((stancePhase: number) => number)[] {
  const calculation = calculationFor(leg)
  const { shape, dutyFactor } = calculation.get(stanceOf, placeOf(calculation, { stance: id }) as never)
  const thrown = (legShare: number) => (stancePhase: number) =>
    stanceForce.si({
      mass: weight / STANDARD_GRAVITY,
      legShare,
      dutyFactor,
      stancePhase,
      shape,
      thirdHarmonic: 0,
      gravity: STANDARD_GRAVITY,
    })
  // Below a duty factor of a half the body flies between steps, however it walks.
  if (id === 'trot' || feet.standing.fewest === 0) return cornersOf(x).map(({ share }) => thrown(share))
  return stanceShares(x, feet).map(
    (shares) => (stancePhase) => weight * shares[Math.min(shares.length - 1, Math.floor(stancePhase * shares.length))]!,
  )
}

function loads(x: LegNumbers, forces: readonly ((stancePhase: number) => number)[], strides: readonly CornerStride[]) {
  const aside = drivenJoints(x).includes('sidewaysHip')
  return cornersOf(x).map(({ corner, mirrored, share }, k): CornerLoad => {
    const { hip, knee, sidewaysHip } = strides[k]!.stride.motors
    const peak = Math.max(...Array.from({ length: MOMENTS }, (_, i) => forces[k]!((i + 0.5) / MOMENTS)))
    return {
      corner,
      mirrored,
      meanShare: new Quantity(share, 'ratio'),
      peakForce: new Quantity(peak, 'force'),
      motorTorque: { hip: hip.peakTorque, knee: knee.peakTorque, sidewaysHip: aside ? sidewaysHip.peakTorque : undefined },
    }
  })
}

/** The bus moment by moment. */
function table(points: readonly BusPoint[], period: number): Table {
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
