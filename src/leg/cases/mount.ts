import type { Evaluator } from '../../formula/index.js'
import { forcedConvection, naturalConvection, radiationCoefficient, ringArea, ringOnPlate, surfaceResistance } from '../../thermal/index.js'
import type { Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'

/** Air around the mount. */
export interface Surroundings {
  readonly air: number
  readonly wind: number
  readonly surroundings: number
  readonly pressure: number
}

/** What the plate (or the sink on it) is to the heat of the motor. */
interface Mount {
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
  readonly thickness: number
  readonly conductivity: number
  /** Resistance per area that the free face has behind its film: nothing, or the printed plate behind a sink. */
  readonly behind: number
  readonly height: number
  readonly emissivity: number
  /** What films carry over what their formulas say. */
  readonly coolingFactor: number
}

function mountOf(leg: Prepared): Mount {
  const { motor, plate, sink } = leg.x
  const body = sink ?? plate
  return {
    innerRadius: motor.mountInnerDiameter / 2,
    outerRadius: motor.mountOuterDiameter / 2,
    plateRadius: Math.sqrt((body.width * body.height) / Math.PI),
    thickness: body.thickness,
    conductivity: (leg.sink ?? leg.plate).thermalConductivity,
    behind: sink === undefined ? 0 : plate.thickness / leg.plate.thermalConductivity + 1 / plate.contactConductance,
    height: body.height,
    emissivity: body.emissivity,
    coolingFactor: leg.coolingFactor,
  }
}

/** The mount with its curve and its contact: a loop asks dozens of times for the same. */
const mountAndCurve = /* @__PURE__ */ oncePerLeg((of, leg) => {
  const mount = mountOf(leg)
  const area = of(ringArea, { innerRadius: mount.innerRadius, outerRadius: mount.outerRadius })
  return { mount, curve: curveOf(mount), contact: of(surfaceResistance, { coefficient: leg.x.plate.contactConductance, area }) }
})

const ringInput = (mount: Mount, film: number) => ({
  innerRadius: mount.innerRadius,
  outerRadius: mount.outerRadius,
  plateRadius: mount.plateRadius,
  thickness: mount.thickness,
  conductivity: mount.conductivity,
  motorFaceCoefficient: film,
  freeFaceCoefficient: 1 / (mount.behind + 1 / film),
  underMotor: 'covered' as const,
})

/** Films between which the plate's resistance is tabulated, W/(m² K): still air in the cold to a strong wind. */
const LEAST_FILM = 2
const MOST_FILM = 120
const NODES = 9

/**
 * Resistance of a plate over its film coefficient: a polynomial through nine values of `ringOnPlate` on logarithmic scales (its error is below a
 * thousandth, tested), since the series itself is too dear for a loop that asks for it dozens of times.
 */
interface PlateCurve {
  readonly mount: Mount
  /** Of the logarithms of ring resistance and uniform resistance, at the nodes. */
  readonly ring: Float64Array
  readonly uniform: Float64Array
}

const nodes = Float64Array.from({ length: NODES }, (_, i) => Math.cos((Math.PI * (i + 0.5)) / NODES))
const weights = Float64Array.from({ length: NODES }, (_, i) => (i % 2 === 0 ? 1 : -1) * Math.sin((Math.PI * (i + 0.5)) / NODES))
const MIDDLE = Math.log(LEAST_FILM * MOST_FILM) / 2
const HALF = Math.log(MOST_FILM / LEAST_FILM) / 2

/** The curves made last: legs of a sweep mostly share their plate. */
const kept: PlateCurve[] = []
const MOST_KEPT = 8

function curveOf(mount: Mount): PlateCurve {
  for (const curve of kept) if (same(curve.mount, mount)) return curve
  const ring = new Float64Array(NODES)
  const uniform = new Float64Array(NODES)
  for (let i = 0; i < NODES; i++) {
    const at = ringOnPlate.si(ringInput(mount, Math.exp(MIDDLE + HALF * nodes[i]!)))
    ring[i] = Math.log(at.ring)
    uniform[i] = Math.log(at.uniform)
  }
  const curve = { mount, ring, uniform }
  kept.unshift(curve)
  if (kept.length > MOST_KEPT) kept.pop()
  return curve
}

const same = (a: Mount, b: Mount) =>
  a.outerRadius === b.outerRadius &&
  a.innerRadius === b.innerRadius &&
  a.plateRadius === b.plateRadius &&
  a.thickness === b.thickness &&
  a.conductivity === b.conductivity &&
  a.behind === b.behind

/** A tabulated logarithm at a film, by barycentric interpolation (Berrut & Trefethen 2004). */
function at(values: Float64Array, film: number): number {
  const u = (Math.log(Math.min(MOST_FILM, Math.max(LEAST_FILM, film))) - MIDDLE) / HALF
  let above = 0
  let below = 0
  for (let i = 0; i < NODES; i++) {
    const distance = u - nodes[i]!
    if (distance === 0) return Math.exp(values[i]!)
    const w = weights[i]! / distance
    above += w * values[i]!
    below += w
  }
  return Math.exp(above / below)
}

/** Tabulated ring resistance of a leg's mount at a film coefficient. */
export const mountRingResistance = (leg: Prepared, film: number): number => at(curveOf(mountOf(leg)).ring, film)
/** The same from the series itself, for tests and the calculation sheet. */
export const mountRingResistanceExact = (leg: Prepared, film: number): number => ringOnPlate.si(ringInput(mountOf(leg), film)).ring

/**
 * Conductance from the motor's mounting face to the air: contact, then the plate (or the sink with the plate behind it) with both faces
 * cooled. The film stands at the plate's mean temperature, which a printed plate has far below its hot ring.
 */
export function mountConductance(leg: Prepared, of: Evaluator, ringTemperature: number, where: Surroundings): number {
  const { mount, curve, contact } = mountAndCurve(of, leg)
  const first = filmAt(mount, of, where.air + 0.4 * (ringTemperature - where.air), where)
  const mean = where.air + (ringTemperature - where.air) * Math.min(1, at(curve.uniform, first) / at(curve.ring, first))
  const film = filmAt(mount, of, mean, where)
  return 1 / (contact + at(curve.ring, film))
}

/** The plate's own formula at the film where the loop came to rest, for the calculation sheet. */
export function recordMount(leg: Prepared, of: Evaluator, ringTemperature: number, where: Surroundings): void {
  const mount = mountOf(leg)
  const film = filmAt(mount, (formula, x) => formula.si(x), ringTemperature, where)
  of(ringOnPlate, ringInput(mount, film))
}

function filmAt(mount: Mount, of: Evaluator, surface: number, { air, wind, surroundings, pressure }: Surroundings): number {
  const still = of(naturalConvection, {
    surface: 'verticalPlate',
    length: mount.height,
    surfaceTemperature: surface,
    airTemperature: air,
    pressure,
    tilt: 0,
  }).coefficient
  const moving =
    wind > 0
      ? of(forcedConvection, {
          surface: 'flatPlate',
          length: mount.height,
          speed: wind,
          surfaceTemperature: surface,
          airTemperature: air,
          pressure,
        }).coefficient
      : 0
  const radiated = of(radiationCoefficient, { emissivity: mount.emissivity, surface, surroundings, viewFactor: 1 })
  return mount.coolingFactor * (Math.max(still, moving) + radiated)
}
