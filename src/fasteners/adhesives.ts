import { type Property, property, type Source } from '../formula/index.js'
import { refuse } from '../units/index.js'
import { unknownDesignation } from './size-table.js'

const handbooks = (what: string): Source => ({ level: 'unverified', where: `adhesive handbooks: ${what}; no primary source opened` })

const shear = (typical: number, low: number, high: number, source: Source, conditions: string) =>
  property('stress', { typical: [typical, 'MPa'], low: [low, 'MPa'], high: [high, 'MPa'], source, conditions })
const share = (typical: number, low: number, high: number, source: Source, conditions: string) =>
  property('ratio', { typical, low, high, source, conditions })
const transition = (typical: number, low: number, high: number, source: Source, conditions: string) =>
  property('glassTransitionTemperature', { typical: [typical, 'degC'], low: [low, 'degC'], high: [high, 'degC'], source, conditions })

const METALS = ['steel', 'stainlessSteel', 'aluminium'] as const
const PRINTS = ['printedPLA', 'printedPETG', 'printedABS', 'printedPA'] as const
const ADHESIVES = ['anaerobicRetaining', 'roomCureEpoxy'] as const
const GAPS = ['best', 'wide'] as const

/** Kinds of adhesive with a prior. */
export type AdhesiveName = (typeof ADHESIVES)[number]
/** Surfaces for an adhesive: metals, and printed polymers. */
export type BondSurface = (typeof METALS)[number] | (typeof PRINTS)[number]
/** How thick the layer is, for that kind of adhesive: within its best range, or wider. */
export type BondGap = (typeof GAPS)[number]

/** What is believed of a bond before a test of one's own: the inputs of `bondedPin` and `bondedNut` of the same names, each with range and source. */
export interface BondPrior {
  /** Shear strength at 23 °C on its reference surface, best gap, new, steady load. */
  readonly shearStrength: Property<'stress'>
  /** Glass transition of the cured adhesive, or the temperature that plays its part. */
  readonly glassTransitionTemperature: Property<'glassTransitionTemperature'>
  /** Share kept on this surface. */
  readonly materialFactor: Property<'ratio'>
  /** Share kept with this gap. */
  readonly gapFactor: Property<'ratio'>
  /** Share kept under alternating load. */
  readonly fatigueFactor: Property<'ratio'>
  /** Share kept after ageing. */
  readonly ageingFactor: Property<'ratio'>
}

/**
 * The prior of an adhesive on a surface, to spread into `bondedPin` or `bondedNut` and to be replaced by a pull test.
 *
 * Every factor is the pessimistic case it names; put 1 in place of the fatigue factor for a steady load, of the ageing factor for a new bond. A bond between two
 * materials takes the weaker of both. Throws an `InputError` for an unknown name, and for an anaerobic on a print: it cures against metal only, and may crack the print.
 */
export function bondPrior(adhesive: AdhesiveName, surface: BondSurface, gap: BondGap = 'best'): BondPrior {
  const of = 'fasteners.bondPrior'
  if (!ADHESIVES.includes(adhesive)) unknownDesignation(of, 'an adhesive', adhesive, ADHESIVES)
  const metal = (METALS as readonly string[]).includes(surface)
  if (!metal && !(PRINTS as readonly string[]).includes(surface)) unknownDesignation(of, 'a surface', surface, [...METALS, ...PRINTS])
  if (!GAPS.includes(gap)) unknownDesignation(of, 'a gap', gap, GAPS)
  const wear = {
    fatigueFactor: share(0.25, 0.2, 0.3, handbooks('0.2 to 0.3 of the static strength'), 'alternating load'),
    ageingFactor: share(
      0.5,
      0.3,
      0.8,
      handbooks('half is left after years of damp and warmth'),
      'indoors to damp, no load above the fatigue share',
    ),
  }
  if (adhesive !== 'anaerobicRetaining') return { ...wear, ...epoxyPrior(surface, metal, gap) }
  if (!metal) {
    refuse(
      of,
      'surface',
      surface,
      `must be a metal (${METALS.join(', ')}) for an anaerobic, which does not cure on plastic and may crack it`,
    )
  }
  return { ...wear, ...anaerobicPrior(surface, gap) }
}

type Prior = Omit<BondPrior, 'fatigueFactor' | 'ageingFactor'>

function anaerobicPrior(surface: BondSurface, gap: BondGap): Prior {
  return {
    shearStrength: shear(20, 15, 30, handbooks('retaining compounds'), 'steel pin in steel collar, 23 °C, cured'),
    glassTransitionTemperature: transition(
      130,
      110,
      150,
      { level: 'assumption', where: 'chosen so that 0.7 is left at 80 °C and 0.5 at 120 °C, as adhesive handbooks have it' },
      'plays the part of a glass transition in adhesiveTemperatureFactor',
    ),
    materialFactor:
      surface === 'steel'
        ? share(1, 1, 1, handbooks('the reference surface'), 'clean steel')
        : share(0.65, 0.5, 0.8, handbooks('slow cure on passive metal'), 'stainless steel or aluminium, no activator'),
    gapFactor:
      gap === 'best'
        ? share(1, 0.9, 1, handbooks('best between 0.02 and 0.10 mm'), 'layer of 0.02 to 0.10 mm')
        : share(0.6, 0.3, 0.9, handbooks('falls beyond 0.15 mm'), 'layer of 0.10 to 0.25 mm; thicker ones may stay wet'),
  }
}

function epoxyPrior(surface: BondSurface, metal: boolean, gap: BondGap): Prior {
  return {
    shearStrength: metal
      ? shear(15, 8, 25, handbooks('room-cured structural epoxies'), 'roughened, degreased metal, 23 °C, a week of cure')
      : surface === 'printedPA'
        ? shear(4, 2, 6, handbooks('lap joints of printed polyamide'), 'sanded, wiped, 23 °C; the print or its layers usually fail first')
        : shear(
            5,
            3,
            8,
            handbooks('lap joints of printed PLA, PETG, ABS'),
            'sanded, wiped, 23 °C; the print or its layers usually fail first',
          ),
    glassTransitionTemperature: transition(55, 45, 65, handbooks('epoxies cured at room temperature'), 'never warmed after the cure'),
    materialFactor: share(1, 1, 1, handbooks('strength given for the surface itself'), surface),
    gapFactor:
      gap === 'best'
        ? share(1, 0.9, 1, handbooks('best between 0.1 and 0.5 mm'), 'layer of 0.1 to 0.5 mm')
        : share(0.7, 0.5, 0.9, { level: 'assumption', where: 'thick layers shrink, creep and hold bubbles' }, 'layer of 0.5 to 2 mm'),
  }
}
