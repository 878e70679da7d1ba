import { bare, type Evaluator } from '../../formula/index.js'
import { canLaw, mountLaw, plateLaw, plateStore, ringArea, surfaceResistance } from '../../thermal/index.js'
import type { Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'

/** Air around the mount. */
export interface MountAir {
  readonly air: number
  readonly wind: number
  readonly surroundings: number
  readonly pressure: number
}

/** The plate under the motor, or the sink on it: geometry and conductivities. */
function shapeOf(leg: Prepared) {
  const { motor, plate, sink } = leg.x
  const body = sink ?? plate
  const matter = leg.sink ?? leg.plate
  return {
    innerRadius: motor.mountInnerDiameter / 2,
    outerRadius: motor.mountOuterDiameter / 2,
    width: body.width,
    height: body.height,
    x: 0,
    y: 0,
    thickness: body.thickness,
    conductivity: matter.thermalConductivity,
    conductivityAcross: matter.conductivityAcrossLayers,
    // Heat crosses the layers of the printed plate behind a sink.
    behind: sink === undefined ? 0 : plate.thickness / leg.plate.conductivityAcrossLayers + 1 / plate.contactConductance,
  }
}

type Shape = ReturnType<typeof shapeOf>

/** Tables of the plates made last: legs of a sweep mostly share their plate. */
const tables: { readonly shape: Shape; readonly table: ReturnType<typeof plateLaw.si> }[] = []
const MOST_TABLES = 8

const same = (a: Shape, b: Shape) => (Object.keys(a) as (keyof Shape)[]).every((name) => a[name] === b[name])

const tableOf = /* @__PURE__ */ oncePerLeg((of, leg) => {
  const shape = shapeOf(leg)
  if (of !== bare) return of(plateLaw, shape)
  const known = tables.find((each) => same(each.shape, shape))
  if (known !== undefined) return known.table
  const table = plateLaw.si(shape)
  tables.unshift({ shape, table })
  if (tables.length > MOST_TABLES) tables.pop()
  return table
})

/** Resistance of the contact between motor and plate. */
const contactOf = /* @__PURE__ */ oncePerLeg((of, leg): number => {
  const { innerRadius, outerRadius } = shapeOf(leg)
  return of(surfaceResistance, { coefficient: leg.x.plate.contactConductance, area: of(ringArea, { innerRadius, outerRadius }) })
})

/** How mount and can are cooled in some air, as the balance takes it. */
export interface CoolingLaws {
  readonly air: number
  readonly radiant: number
  readonly mountConductance: readonly number[]
  readonly mountRadiantShare: readonly number[]
  readonly canConductance: readonly number[]
  readonly canShare: readonly number[]
  readonly canRadiantShare: readonly number[]
}

function makeLaws(of: Evaluator, leg: Prepared, { air, wind, surroundings, pressure }: MountAir): CoolingLaws {
  const { motor, plate, sink } = leg.x
  const body = sink ?? plate
  const where = { air, radiant: surroundings, airSpeed: wind, pressure, factor: leg.coolingFactor }
  const mount = of(mountLaw, {
    ...tableOf(of, leg),
    contact: contactOf(of, leg),
    height: body.height,
    emissivity: body.emissivity,
    ...where,
  })
  const can = of(canLaw, {
    diameter: motor.canDiameter,
    length: motor.canLength,
    emissivity: motor.canEmissivity,
    mountToCan: motor.mountToCan,
    ...where,
  })
  return {
    air,
    radiant: surroundings,
    mountConductance: mount.conductance,
    mountRadiantShare: mount.radiantShare,
    canConductance: can.conductance,
    canShare: can.canShare,
    canRadiantShare: can.radiantShare,
  }
}

/** Laws of a leg by air: few airs, asked for by every joint and load case. */
const lawsByAir = /* @__PURE__ */ oncePerLeg((): { readonly where: MountAir; readonly laws: CoolingLaws }[] => [])

/** Laws of mount and can in some air. */
export function coolingLaws(of: Evaluator, leg: Prepared, where: MountAir): CoolingLaws {
  const all = lawsByAir(of, leg)
  const known = all.find(
    ({ where: { air, wind, surroundings } }) => air === where.air && wind === where.wind && surroundings === where.surroundings,
  )
  if (known !== undefined) return known.laws
  const laws = makeLaws(of, leg, where)
  all.push({ where, laws })
  return laws
}

/** What warms up in a time: the motor as one body, and its part of the plate (or sink) behind the contact. */
export function heatStores(of: Evaluator, leg: Prepared, time: number) {
  const { mass, specificHeat } = leg.x.motor
  const { density, specificHeat: ofPlate } = (leg.sink ?? leg.plate).material
  // A plate whose heat capacity nobody gave stores nothing: the motor is then a little too warm.
  const store =
    density === undefined || ofPlate === undefined
      ? { capacity: 0, conductance: 0 }
      : of(plateStore, {
          ...shapeOf(leg),
          density: density.si,
          specificHeat: ofPlate.si,
          contact: contactOf(of, leg),
          film: STORE_FILM,
          time,
        })
  return { capacity: mass * specificHeat, storeCapacity: store.capacity, storeConductance: store.conductance, time }
}

/** Film at which the store of a plate is worked out; it hardly depends on it, W/(m² K). */
const STORE_FILM = 12
