import { GAITS, stanceForce } from '../../kinematics/index.js'
import { Table } from '../../study/index.js'
import { costOfTransport, runningTime } from '../../thermal/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { gaitNamed, type LegNumbers, type Prepared } from '../numbers.js'
import { stance as stanceOf } from '../parts/load/values.js'
import { calculationFor } from '../what-if.js'
import { type BusPoint, busAt, busMotors } from './bus.js'
import { cornersOf, feetOf, G, largestShares, tippingOf } from './feet.js'
import type { CornerLoad, RobotGait } from './result.js'
import { cornerStride } from './walk.js'

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

/** The robot in a gait: feet, loads, bus, energy. */
export function robotGait(
  leg: Prepared,
  id: 'walk' | 'trot',
  { brakeResistor, traction }: { readonly brakeResistor: number; readonly traction?: number | undefined },
): RobotGait {
  const { x } = leg
  const { speed, stepLength, dutyFactor } = gaitNamed(x, id)
  const period = stepLength / speed / dutyFactor
  const corners = cornersOf(x)
  const strides = corners.map((corner) => cornerStride(leg, id, corner, traction))
  const motors = busMotors(leg, id)
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
  const mean = (of: (point: BusPoint) => number) => points.reduce((sum, point) => sum + of(point), 0) / MOMENTS
  const largest = (of: (point: BusPoint) => number) => Math.max(...points.map(of))
  const meanPower = mean((point) => point.power - point.returned)
  const { energyPerDistance, costOfTransport: cost } = costOfTransport.si({
    power: Math.max(0, meanPower),
    mass: x.robot.mass,
    speed,
    gravity: G,
  })
  const charge = onOneCharge(x, Math.max(0, meanPower), speed)
  const feet = feetOf(x, id)
  const tipping = tippingOf(x, feet)
  return {
    feet,
    corners: loads(leg, id, largestShares(x, feet), strides),
    unsupported: new Quantity(tipping.share, 'ratio'),
    tips: new Quantity(tipping.angle, 'angle'),
    meanPower: power(meanPower),
    peakPower: power(largest((point) => point.power)),
    returned: power(mean((point) => point.returned)),
    peakReturned: power(largest((point) => point.back)),
    notTaken: power(largest((point) => point.notTaken)),
    peakCurrent: new Quantity(
      largest((point) => point.current),
      'current',
    ),
    lowestVoltage: new Quantity(-largest((point) => -point.voltage), 'voltage'),
    state: points.every(({ holds }) => holds) ? 'holds' : 'brownOut',
    motorHeat: power(mean((point) => point.motorHeat)),
    controllerHeat: power(mean((point) => point.controllerHeat)),
    energyPerMetre: new Quantity(energyPerDistance, 'energyPerDistance'),
    costOfTransport: new Quantity(cost, 'ratio'),
    runningTime: charge === undefined ? undefined : new Quantity(charge.time, 'time'),
    range: charge === undefined ? undefined : new Quantity(charge.range, 'length'),
    samples: table(points, period),
  }
}

function loads(leg: Prepared, id: 'walk' | 'trot', shares: readonly number[], strides: readonly ReturnType<typeof cornerStride>[]) {
  const { x } = leg
  const calculation = calculationFor(leg)
  const { shape, dutyFactor } = calculation.get(stanceOf, placeOf(calculation, { stance: id }) as never)
  return cornersOf(x).map(({ corner, mirrored, share }, k): CornerLoad => {
    // A trot throws the body up: what a foot carries at its peak follows from the impulse of its stance, not from standing still.
    const thrown = stanceForce.si({
      ...{ mass: x.robot.mass, legShare: share, dutyFactor, stancePhase: 0.5, shape, thirdHarmonic: 0, gravity: G },
    })
    const still = shares[k]! * x.robot.mass * G
    const { hip, knee } = strides[k]!.stride.motors
    return {
      corner,
      mirrored,
      meanShare: new Quantity(share, 'ratio'),
      peakForce: new Quantity(id === 'trot' ? thrown : Math.max(thrown, still), 'force'),
      motorTorque: { hip: hip.peakTorque, knee: knee.peakTorque },
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
