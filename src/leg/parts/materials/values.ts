import {
  arrheniusShift,
  equivalentTime,
  findleyRelaxationModulus,
  type LoadDirection,
  type StrengthNumbers,
  strainLimitedStress,
  strengthSi,
} from '../../../materials/index.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { hour, humidity } from '../load/fields.js'
import * as given from './fields.js'
import * as strengths from './strength-fields.js'

/** How wet the prints are. */
export const moisture = value('material.moisture', [], (use) => {
  const [air, dry, damp] = [use(humidity), use(given.dryAir), use(given.dampAir)]
  return air <= dry ? 'dry' : air <= damp ? 'conditioned' : 'saturated'
})

/** A property that a material of this family must have; metals and magnets do not creep or take up water. */
const neededOf = (use: Use<'material'>, property: string, read: number | undefined): number => given.needed(use(given.name), property, read)
const isRigid = (use: Use<'material'>): boolean => ['metal', 'magnet'].includes(use(given.family))

const wetModulus = line.product('modulus in this moisture', { dry: 'modulus', share: 'ratio' }, 'modulus')
const grown = line.product('growth by water', { water: 'ratio', perWater: 'ratio' }, 'ratio')

/** Modulus in the state of moisture of the leg. */
export const modulus = value('material.modulusNow', ['material'], (use) => {
  const dry = given.needed(use(given.name), 'modulus', use(given.dryModulus))
  const state = use(moisture)
  if (state === 'dry' || isRigid(use)) return dry
  const share =
    state === 'conditioned'
      ? neededOf(use, 'modulusConditionedRatio', use(given.modulusConditionedRatio))
      : neededOf(use, 'modulusSaturatedRatio', use(given.modulusSaturatedRatio))
  return use.run(wetModulus, { dry, share })
})
export const poissonRatio = value(
  'material.poissonRatioNow',
  ['material'],
  (use) => use(given.poissonRatioGiven) ?? use(given.poissonRatioElse),
)
export const thermalExpansion = value('material.thermalExpansionNow', ['material'], (use) =>
  neededOf(use, 'thermalExpansion', use(given.thermalExpansionGiven)),
)
export const frictionOnSteel = value(
  'material.frictionOnSteelNow',
  ['material'],
  (use) => use(given.frictionOnSteelGiven) ?? use(given.frictionElse),
)
/** Linear growth by the water that a part holds. */
export const swelling = value('material.swelling', ['material'], (use) => {
  const state = use(moisture)
  if (state === 'dry' || isRigid(use)) return 0
  const water =
    state === 'conditioned'
      ? neededOf(use, 'moistureConditioned', use(given.moistureConditioned))
      : neededOf(use, 'moistureSaturated', use(given.moistureSaturated))
  return use.run(grown, { water, perWater: neededOf(use, 'moistureSwelling', use(given.moistureSwelling)) })
})
/** Glass transition, or the service limit of a material without one to mind. */
export const softening = value(
  'material.softeningByGlassTransition',
  ['material'],
  (use) =>
    (use(given.softensAtTransition) ? use(given.glassTransition) : undefined) ??
    neededOf(use, 'serviceTemperature', use(given.serviceTemperature)),
)
/** Whether `softening` is a glass transition. */
export const atTransition = value(
  'material.atTransition',
  ['material'],
  (use) => use(given.softensAtTransition) && use(given.glassTransition) !== undefined,
)

const strengthOf = (direction: LoadDirection, cyclic: boolean) =>
  value(`material.strengthOf.${direction}${cyclic ? '.cyclic' : ''}`, ['material'], (use): StrengthNumbers => {
    const glassTransition = use(strengths.strengthTransition)
    const { temperatures, shares } = glassTransition > 0 ? { temperatures: [], shares: [] } : use(strengths.strengthCurve)
    return {
      strength: use(strengths.strength),
      direction: use(strengths.directionShare[direction]),
      moisture: use(strengths.moistureShare[use(moisture)]),
      kept1000Hours: use(strengths.kept1000Hours),
      kept1Year: use(strengths.kept1Year),
      // Metals have a rule of their own for fatigue: the size, finish and mean stress of the part.
      fatigueRatio:
        cyclic && !isRigid(use) ? neededOf(use, 'fatigueRatio', use(strengths.fatigueKnown) ? use(strengths.fatigueRatio) : undefined) : 1,
      activationEnergy: use(strengths.strengthActivation),
      shiftEnd: use(strengths.shiftEnd),
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

/** Conditions under which a stress is borne. */
export interface Bearing {
  readonly direction: LoadDirection
  readonly temperature: number
  readonly duration: number
  /** Load cycles; absent for a load that is there once. */
  readonly cycles?: number
  /** Whether a strain is held, as by a press fit, and not a load: it relaxes and does not grow. */
  readonly held?: boolean
}

const lesser = line.smallest('lower of the stresses for rupture and for strain', { rupture: 'stress', strain: 'stress' }, 'stress')

/**
 * The stress that a material bears at a temperature for a time, and after load cycles: against rupture and, for a load that stays, within its design
 * strain; the lower of the two.
 */
export function allowableStress(
  use: Use<never>,
  material: Of<'material'>,
  { direction, temperature, duration, cycles, held }: Bearing,
): number {
  const numbers = use.at(STRENGTHS[cycles === undefined ? 'static' : 'cyclic'][direction], { material })
  // Read for their sources: the rules of strength over temperature and time use them.
  if (numbers.glassTransition > 0) use(given.transitionMargin)
  if (numbers.activationEnergy > 0) use(given.creepReference)
  const rupture = strengthSi(numbers, temperature, duration, cycles ?? 1, 1, use.run)
  const limit = use.at(given.strainLimit, { material })
  if (cycles !== undefined || limit === undefined || duration <= SHORT_LOAD || direction === 'interlayerShear') return rupture
  const strain = use.run(strainLimitedStress, {
    shortTermStrength: strengthSi(numbers, temperature, 0, 1, 1, use.run),
    modulus: held === true ? use.at(modulus, { material }) : relaxedModulus(use, material, temperature, duration),
    strainLimit: limit,
    duration,
  })
  return use.run(lesser, { rupture, strain })
}
/** A load no longer than the test of a strength, s: a minute, and what rounding adds. */
const SHORT_LOAD = 60.001

/**
 * How much faster creep runs at a temperature than at the one its data are for (below the glass transition, Arrhenius). An elastomer has no such
 * shift: it is used above its transition, and its stiffness over temperature is a curve of its own.
 */
export function creepShift(use: Use<never>, material: Of<'material'>, temperature: number): number {
  const activationEnergy = use.at(given.activationEnergy, { material })
  if (activationEnergy === undefined) {
    if (use.at(given.family, { material }) === 'elastomer') return 1
    return given.needed(use.at(given.name, { material }), 'activationEnergy', undefined)
  }
  const limit = use.at(softening, { material })
  return use.run(arrheniusShift, {
    temperature: Math.min(temperature, limit),
    reference: use(given.creepReference),
    activationEnergy,
    glassTransition: use.at(atTransition, { material }) ? limit : undefined,
  })
}

/** Coefficient of creep; 0 for metals, which do not creep at the temperatures of a leg. */
export const creepCoefficient = value('material.creepCoefficientNow', ['material'], (use) =>
  isRigid(use) ? 0 : neededOf(use, 'creepCoefficient', use(given.creepCoefficientGiven)),
)
export const creepExponent = value('material.creepExponentNow', ['material'], (use) =>
  isRigid(use) ? 0 : neededOf(use, 'creepExponent', use(given.creepExponentGiven)),
)

/** Time at room temperature, and what time in the warm counts for. */
export const calendar = line.sum('time that creep counts', { season: 'time', warm: 'time' }, 'time')
/** Modulus that is left of a strain held at a temperature for a time, after a time at room temperature: heat counts as more time. */
export function relaxedModulus(use: Use<never>, material: Of<'material'>, temperature: number, duration: number, before = 0): number {
  const at = use.at(modulus, { material })
  const coefficient = use.at(creepCoefficient, { material })
  if (coefficient === 0) return at
  const shift = creepShift(use, material, temperature)
  const warm = use.run(equivalentTime, { time: duration, shift })
  return use.shared(findleyRelaxationModulus, {
    modulus: at,
    creepCoefficient: coefficient,
    creepExponent: use.at(creepExponent, { material }),
    time: before === 0 ? warm : use.run(calendar, { season: before, warm }),
    referenceTime: use(hour),
  })
}
