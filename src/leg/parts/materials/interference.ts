import { interferenceChange } from '../../../fasteners/index.js'
import { temperatureRise } from '../../lines.js'
import type { Of, Use } from '../../run/index.js'
import { airTemperature, assemblyTemperature } from '../load/fields.js'
import { steel } from './fields.js'
import { thermalExpansion } from './values.js'

/** A steel pin or ring in a hole of another material. */
interface Fit {
  /** Material round the hole. */
  readonly material: Of<'material'>
  readonly diameter: number
  /** Of pin or ring over hole, m; negative for clearance. */
  readonly interference: number
}

/** Interference of a fit, m, after a change of temperature, K, and with what water makes the material round the hole swell, as strain. */
export const interferenceAfter = (use: Use<never>, fit: Fit, temperatureChange: number, growth: number): number =>
  use.run(interferenceChange, {
    diametralInterference: fit.interference,
    diameter: fit.diameter,
    bossExpansion: use.at(thermalExpansion, { material: fit.material }),
    pinExpansion: use.at(thermalExpansion, { material: use(steel) }),
    temperatureChange,
    swelling: growth,
  }).diametralInterference

/** How much warmer the air of an event is than the room was at assembly, K. */
export const riseSinceAssembly = (use: Use<'air'>): number =>
  use.run(temperatureRise, { air: use(airTemperature), assembly: use(assemblyTemperature) })
