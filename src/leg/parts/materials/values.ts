import {
  arrheniusShift,
  equivalentTime,
  findleyRelaxationModulus,
  type LoadDirection,
  type StrengthNumbers,
  strengthSi,
} from '../../../materials/index.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { hour, humidity } from '../load/fields.js'
import * as given from './fields.js'

/** How wet the prints are. */
export const moisture = value('material.moisture', [], (use) => {
  const [air, dry, damp] = [use(humidity), use(given.dryAir), use(given.dampAir)]
  return air <= dry ? 'dry' : air <= damp ? 'conditioned' : 'saturated'
})

const wetModulus = line('modulus in this moisture', { dry: 'modulus', share: 'ratio' }, 'modulus', 'dry · share', (x) => x.dry * x.share)
const grown = line('growth by water', { water: 'ratio', perWater: 'ratio' }, 'ratio', 'water · perWater', (x) => x.water * x.perWater)

/** Modulus in the state of moisture of the leg. */
export const modulus = value('material.modulusNow', ['material'], (use) => {
  const dry = given.needed(use(given.name), 'modulus', use(given.dryModulus))
  const state = use(moisture)
  if (state === 'dry') return dry
  const share = use(state === 'conditioned' ? given.modulusConditionedRatio : given.modulusSaturatedRatio)
  return share === undefined ? dry : use.run(wetModulus, { dry, share })
})
export const poissonRatio = value(
  'material.poissonRatioNow',
  ['material'],
  (use) => use(given.poissonRatioGiven) ?? use(given.poissonRatioElse),
)
export const thermalExpansion = value('material.thermalExpansionNow', ['material'], (use) => use(given.thermalExpansionGiven) ?? 0)
export const frictionOnSteel = value(
  'material.frictionOnSteelNow',
  ['material'],
  (use) => use(given.frictionOnSteelGiven) ?? use(given.frictionElse),
)
/** Linear growth by the water that a part holds. */
export const swelling = value('material.swelling', ['material'], (use) => {
  const state = use(moisture)
  if (state === 'dry') return 0
  const water = use(state === 'conditioned' ? given.moistureConditioned : given.moistureSaturated)
  const perWater = use(given.moistureSwelling)
  return water === undefined || perWater === undefined ? 0 : use.run(grown, { water, perWater })
})
/** Glass transition, or the service limit of a material without one to mind; infinite where neither is known. */
export const softening = value(
  'material.softening',
  ['material'],
  (use) =>
    (use(given.softensAtTransition) ? use(given.glassTransition) : undefined) ?? use(given.serviceTemperature) ?? Number.POSITIVE_INFINITY,
)
/** Whether `softening` is a glass transition. */
export const atTransition = value(
  'material.atTransition',
  ['material'],
  (use) => use(given.softensAtTransition) && use(given.glassTransition) !== undefined,
)

const strengthOf = (direction: LoadDirection, cyclic: boolean) =>
  value(`material.strengthOf.${direction}${cyclic ? '.cyclic' : ''}`, ['material'], (use): StrengthNumbers => {
    const glassTransition = use(given.strengthTransition)
    const { temperatures, shares } = glassTransition > 0 ? { temperatures: [], shares: [] } : use(given.strengthCurve)
    return {
      strength: use(given.strength),
      direction: use(given.directionShare[direction]),
      moisture: use(given.moistureShare[use(moisture)]),
      kept1000Hours: use(given.kept1000Hours),
      kept1Year: use(given.kept1Year),
      fatigueRatio: cyclic && use(given.fatigueKnown) ? use(given.fatigueRatio) : 1,
      activationEnergy: use(given.strengthActivation),
      shiftEnd: use(given.shiftEnd),
      glassTransition,
      temperatures,
      shares,
    }
  })
const STRENGTHS = {
  static: {
    alongLayers: strengthOf('alongLayers', false),
    acrossLayers: strengthOf('acrossLayers', false),
    interlayerShear: strengthOf('interlayerShear', false),
  },
  cyclic: {
    alongLayers: strengthOf('alongLayers', true),
    acrossLayers: strengthOf('acrossLayers', true),
    interlayerShear: strengthOf('interlayerShear', true),
  },
} as const

/** What a stress is borne for. */
export interface Bearing {
  readonly direction: LoadDirection
  readonly temperature: number
  readonly duration: number
  /** Load cycles; absent for a load that is there once. */
  readonly cycles?: number
}

/** The stress that a material bears at a temperature for a time, and after load cycles. */
export function allowableStress(use: Use<never>, material: Of<'material'>, { direction, temperature, duration, cycles }: Bearing): number {
  const numbers = use.at(STRENGTHS[cycles === undefined ? 'static' : 'cyclic'][direction], { material })
  // Read for their sources: the rules of strength over temperature and time use them.
  if (numbers.glassTransition > 0) use(given.transitionMargin)
  if (numbers.activationEnergy > 0) use(given.creepReference)
  return strengthSi(numbers, temperature, duration, cycles ?? 1, 1, use.run)
}

/** How much faster creep runs at a temperature than at the one its data are for (below the glass transition, Arrhenius). */
export function creepShift(use: Use<never>, material: Of<'material'>, temperature: number): number | undefined {
  const activationEnergy = use.at(given.activationEnergy, { material })
  if (activationEnergy === undefined) return undefined
  const limit = use.at(softening, { material })
  return use.run(arrheniusShift, {
    temperature: Math.min(temperature, limit),
    reference: use(given.creepReference),
    activationEnergy,
    glassTransition: use.at(atTransition, { material }) ? limit : undefined,
  })
}

/** Coefficient of creep; 0 for what does not creep. */
export const creepCoefficient = value('material.creepCoefficientNow', ['material'], (use) =>
  use(given.family) === 'metal' ? 0 : (use(given.creepCoefficientGiven) ?? 0),
)
export const creepExponent = value('material.creepExponentNow', ['material'], (use) =>
  use(given.family) === 'metal' ? 0 : (use(given.creepExponentGiven) ?? 0),
)

/** Modulus that is left of a strain held at a temperature for a time: heat counts as more time. */
export function relaxedModulus(use: Use<never>, material: Of<'material'>, temperature: number, duration: number): number {
  const at = use.at(modulus, { material })
  const coefficient = use.at(creepCoefficient, { material })
  if (coefficient === 0) return at
  const shift = creepShift(use, material, temperature)
  return use.run(findleyRelaxationModulus, {
    modulus: at,
    creepCoefficient: coefficient,
    creepExponent: use.at(creepExponent, { material }),
    time: shift === undefined ? duration : use.run(equivalentTime, { time: duration, shift }),
    referenceTime: use(hour),
  })
}
