import { constant } from '../../../run/index.js'

const LONG = {
  level: 'commonPractice',
  where: 'long tension of UHMWPE at most 10 to 15 % of breaking strength; other fibres three tenths',
} as const
const HANG_CORD = 'hang a tenth, a fifth and a third of its strength on three cords for a month and log their length'
/** Long tension over breaking strength that a fibre bears. */
export const longTension = {
  activated: constant('cord.longTension.activated', {
    title: 'largest lasting tension over breaking strength of a fibre with activated creep',
    kind: 'ratio',
    typical: 0.15,
    low: 0.1,
    high: 0.2,
    source: LONG,
    measuredBy: HANG_CORD,
  }),
  logarithmic: constant('cord.longTension.logarithmic', {
    title: 'largest lasting tension over breaking strength of a fibre with logarithmic creep',
    kind: 'ratio',
    typical: 0.3,
    low: 0.25,
    high: 0.35,
    source: LONG,
    measuredBy: HANG_CORD,
  }),
} as const
const EYRING = {
  level: 'published',
  where: 'J. Chem. Phys. 153 (2020) 144904, abstract: activation energy about 1.5 eV, volume about 45 cubic angstroms',
} as const
export const activationEnergy = constant('cord.activationEnergy', {
  title: 'activation energy of the creep of the fibre',
  kind: 'energy',
  typical: 1.5 * 1.602176634e-19,
  source: EYRING,
})
export const activationVolume = constant('cord.activationVolume', {
  title: 'activation volume of the creep of the fibre',
  kind: 'volume',
  typical: 0.045e-27,
  source: EYRING,
})
/** Temperature at which relaxation was measured. */
export const relaxationReference = constant('cord.relaxationReference', {
  title: 'temperature of the relaxation data of the cord',
  kind: 'temperature',
  typical: 293.15,
  source: { level: 'assumption', where: 'an ordinary room' },
})
export const mostYears = constant('cord.mostYears', {
  title: 'most years of relaxation that are distinguished',
  kind: 'ratio',
  typical: 20,
  source: { level: 'assumption', where: 'twenty years and more leave the same negligible share' },
})
