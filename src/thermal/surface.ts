import { type AnyFormula, brokenStatements, type Given, readInputs, requireKeys, type Si } from '../formula/index.js'
import type { Note } from '../units/index.js'
import { ATMOSPHERE, airProperties, pressureAtAltitude } from './air.js'
import { nusseltCylinderCrossflow, nusseltFlatPlate, nusseltRotatingCylinder } from './forced-convection.js'
import { naturalConvection } from './natural-convection.js'
import type { NetworkLink } from './network.js'
import { radiationCoefficient } from './radiation.js'

/** Air and what surfaces see. */
export const SURROUNDINGS = {
  /** Temperature of the air. */
  air: { kind: 'temperature', min: '-60 degC', max: '200 degC' },
  /** Temperature of what surfaces see, such as sunlit walls; the air's if not given. */
  radiant: { kind: 'temperature', min: 0, optional: true },
  /** Height above sea level. */
  altitude: { kind: 'length', min: '-500 m', max: '11 km', default: '0 m' },
  /** Speed of the air over the surfaces: a fan, wind, the walk. Still air if not given. */
  airSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
} as const

/** Air temperature, radiant temperature, altitude and air speed. */
export type Surroundings = Given<typeof SURROUNDINGS>

/** The same in SI. */
export interface SurroundingsNumbers {
  /** Temperature of the air, K. */
  readonly air: number
  /** Temperature of what the surfaces see, K. */
  readonly radiant: number
  /** Pressure of the air, Pa. */
  readonly pressure: number
  /** Speed of the air over the surfaces, m/s. */
  readonly airSpeed: number
}

/** Surroundings in numbers. */
export const surroundingsNumbers = (x: Si<typeof SURROUNDINGS>): SurroundingsNumbers => ({
  air: x.air,
  radiant: x.radiant ?? x.air,
  pressure: x.altitude === 0 ? ATMOSPHERE : pressureAtAltitude.si({ altitude: x.altitude }),
  airSpeed: x.airSpeed,
})

/** Shapes with a free-convection formula. */
export type SurfaceShape = 'verticalPlate' | 'horizontalCylinder' | 'plateUp' | 'plateDown' | 'tiltedPlate'

/** 95 % half-width of the textbooks' convection correlations. Source: scatter between them, 15 to 20 % (Incropera, ch. 9, remarks). */
export const CONVECTION_SCATTER = 0.2

/** The draught over a surface, as its formulas take it; nothing in still air. */
function draughtAt(
  shape: SurfaceShape,
  length: number,
  surface: number,
  { air, pressure, airSpeed }: SurroundingsNumbers,
  turning: number,
) {
  const { conductivity, viscosity, prandtl } = airProperties.si({ temperature: 0.5 * (surface + air), pressure })
  // The length of a horizontal plate is area over perimeter; a stream along the plate has four times as far to go.
  const along = shape === 'plateUp' || shape === 'plateDown' ? 4 * length : length
  const across = shape === 'horizontalCylinder'
  const stream = { reynolds: (airSpeed * along) / viscosity, prandtl }
  const spin = { reynolds: (turning * length * length) / (2 * viscosity), prandtl }
  const byStream =
    airSpeed === 0 ? 0 : ((across ? nusseltCylinderCrossflow.si(stream) : nusseltFlatPlate.si(stream).mean) * conductivity) / along
  const bySpin = turning === 0 ? 0 : (nusseltRotatingCylinder.si(spin) * conductivity) / length
  return { stream, spin, across, byStream, bySpin }
}

const stillAt = (shape: SurfaceShape, length: number, surface: number, { air, pressure }: SurroundingsNumbers, tilt: number) => ({
  surface: shape,
  length,
  surfaceTemperature: surface,
  airTemperature: air,
  pressure,
  tilt,
})

/** Coefficient of convection alone, W/(m² K): free or forced, whichever is stronger, which errs on the hot side. */
export function convectionAt(
  shape: SurfaceShape,
  length: number,
  surface: number,
  where: SurroundingsNumbers,
  tilt = 0,
  turning = 0,
): number {
  const free = naturalConvection.si(stillAt(shape, length, surface, where, tilt)).coefficient
  if (where.airSpeed === 0 && turning === 0) return free
  const { byStream, bySpin } = draughtAt(shape, length, surface, where, turning)
  return Math.max(free, byStream, bySpin)
}

/** What the formulas behind `convectionAt` remark there: ranges that were left. Only the formula that decides is evaluated, and the properties of air. */
export function convectionNotes(
  shape: SurfaceShape,
  length: number,
  surface: number,
  where: SurroundingsNumbers,
  tilt = 0,
  turning = 0,
): Note[] {
  const air = remarks(airProperties, { temperature: 0.5 * (surface + where.air), pressure: where.pressure })
  const still = stillAt(shape, length, surface, where, tilt)
  const free = naturalConvection.si(still).coefficient
  const { stream, spin, across, byStream, bySpin } = draughtAt(shape, length, surface, where, turning)
  const governing =
    free >= Math.max(byStream, bySpin)
      ? remarks(naturalConvection, still)
      : bySpin > byStream
        ? remarks(nusseltRotatingCylinder, spin)
        : across
          ? remarks(nusseltCylinderCrossflow, stream)
          : remarks(nusseltFlatPlate, stream).filter(({ text }) => !text.includes('trailing edge'))
  return [...air, ...governing]
}

/** Broken statements of a formula as notes. */
export const remarks = <F extends AnyFormula>(formula: F, x: Parameters<F['si']>[0]): Note[] =>
  brokenStatements(formula, x, formula.si(x as never)).map((statement) => ({ formula: formula.id, text: `outside validity: ${statement}` }))

/** Coefficient of radiation, W/(m² K), on the difference of surface and radiant temperature. */
export const radiationAt = (emissivity: number, surface: number, radiant: number): number =>
  radiationCoefficient.si({ emissivity, surface, surroundings: radiant, viewFactor: 1 })

const SURFACE = {
  /** Area that sheds heat. */
  area: { kind: 'area', above: 0 },
  /** Shape and attitude of the surface, which choose the formula of free convection. */
  shape: { oneOf: ['verticalPlate', 'horizontalCylinder', 'plateUp', 'plateDown', 'tiltedPlate'] },
  /** Height of an upright plate, diameter of a cylinder, or area over perimeter of a horizontal plate. */
  length: { kind: 'length', above: 0 },
  /** Angle of a tilted plate from the vertical, 0 to 90°. Default 0. */
  tilt: { kind: 'angle', min: 0, max: '90 deg', default: '0 deg' },
  /** Emissivity of the surface, 0 to 1. */
  emissivity: { kind: 'ratio', min: 0, max: 1 },
  /** Share of its view that is free, 0 to 1. Default 1. */
  viewFactor: { kind: 'ratio', min: 0, max: 1, default: 1 },
  /** Relative 95 % half-width of the radiation. Default 0.1. */
  emissivityScatter: { kind: 'ratio', min: 0, default: 0.1 },
  /** Air and what the surface sees. */
  surroundings: { fields: SURROUNDINGS },
} as const

/**
 * A cooled surface: `area`, `shape` with its `length` (height, diameter, or area over perimeter), `emissivity`, the share of its view that is free, and its surroundings.
 */
export type CooledSurface = Given<typeof SURFACE>

/**
 * Links by which a surface sheds heat, for a network: convection to the node `air`, radiation to the node `radiant`, each with its scatter.
 *
 * The network needs both as fixed nodes, at the temperatures given here (one name may serve for both where they are equal).
 */
export function cooledSurface(
  node: string,
  surface: CooledSurface,
  names: {
    /** Name of the network's air node. Default `air`. */
    readonly air?: string
    /** Name of the node at the radiant temperature. Default the air node. */
    readonly radiant?: string
  } = {},
): NetworkLink[] {
  const x = readInputs('thermal.cooledSurface', SURFACE, surface)
  const where = surroundingsNumbers(x.surroundings)
  requireKeys('thermal.cooledSurface', 'names', names, ['air', 'radiant'])
  const { air = 'air', radiant = air } = names
  const { area, shape, length, tilt } = x
  const emissivity = x.emissivity * x.viewFactor
  const links: NetworkLink[] = [
    {
      name: `${node} convection`,
      from: node,
      to: air,
      conductance: (surfaceTemperature) => area * convectionAt(shape, length, surfaceTemperature, where, tilt),
      notes: (surfaceTemperature) => convectionNotes(shape, length, surfaceTemperature, where, tilt),
      scatter: CONVECTION_SCATTER,
    },
  ]
  if (emissivity > 0)
    links.push({
      name: `${node} radiation`,
      from: node,
      to: radiant,
      conductance: (surfaceTemperature, seen) => area * radiationAt(emissivity, surfaceTemperature, seen),
      scatter: x.emissivityScatter,
    })
  return links
}
