import { type Given, readInputs } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { clampLoadOverTime } from './clamp-load.js'
import { compressionSleeve, springWasher } from './clamp-remedy.js'
import { CREEP_RATIO, creepFault } from './relaxation.js'

const REMEDY_INPUTS = {
  /** Clamp load at tightening. */
  clampLoad: { kind: 'force', above: 0 },
  /** Compliance of the bolt and the metal in its grip. */
  boltCompliance: { kind: 'linearCompliance', above: 0 },
  /** Compliance at loading of the printed layers. */
  printCompliance: { kind: 'linearCompliance', above: 0 },
  /** Creep compliance of the print over its value at loading, by time. */
  creep: { curve: ['time', 'ratio'] },
  /** Spring washers: compliance within their travel, and the force that flattens them. */
  spring: {
    fields: {
      /** Compliance of the spring washers within their travel. */
      compliance: { kind: 'linearCompliance', above: 0 },
      /** Force that flattens them. */
      flatForce: { kind: 'force', above: 0 },
    },
  },
  /** A metal sleeve: compliance, and length of the print minus length of the sleeve. */
  sleeve: {
    fields: {
      /** Compliance of the metal sleeve. */
      compliance: { kind: 'linearCompliance', above: 0 },
      /** Length of the print minus length of the sleeve. */
      shortfall: 'length',
    },
  },
  /** When the bolt is turned back once to its first load. */
  retightenAt: { kind: 'time', above: 0 },
  /** Times at which the clamp load is calculated. */
  times: { list: { kind: 'time', min: 0 } },
} as const

/** A joint and the remedies to compare, as `compareClampRemedies` takes it. */
export type ClampRemedySpecification = Given<typeof REMEDY_INPUTS>

/** The clamp load over time with one remedy. */
export interface ClampRemedyResult {
  readonly remedy: 'asItIs' | 'retightened' | 'springWashers' | 'compressionSleeve'
  /** Clamp loads at those times. */
  readonly clampLoads: readonly Quantity<'force'>[]
  /** Whether the remedy works at all: washers may be flattened; a sleeve may be too short, or so long that the print is loose. */
  readonly state: 'works' | 'flattened' | 'sleeveTooShort' | 'printLoose'
}

/**
 * Clamp load over time of one printed joint as it is, turned back once, on spring washers, and on a metal sleeve.
 *
 * The print next to a sleeve relaxes and hands its share over to the sleeve, so only the small deflection of the sleeve is lost. A sleeve that is too short to carry at
 * tightening is assumed never to carry, although a creeping print may settle on it. Throws one `InputError` that lists every bad input.
 */
export function compareClampRemedies(specification: ClampRemedySpecification): ClampRemedyResult[] {
  const x = readInputs('fasteners.compareClampRemedies', REMEDY_INPUTS, specification)
  const { clampLoad, boltCompliance, printCompliance, creep, times } = x
  const fault = creepFault(creep, times)
  if (fault !== undefined) throw new InputError('fasteners.compareClampRemedies', [{ path: 'creep', given: fault, accepts: CREEP_RATIO }])
  const creepingLayers = [{ compliance: printCompliance, creep }]
  const plain = { clampLoad, creepingLayers, embedding: 0, times }
  const forces = (loads: readonly number[]) => loads.map((load) => new Quantity(load, 'force'))
  const over = (elasticCompliance: number, retightenings?: readonly number[]) =>
    forces(clampLoadOverTime.si({ ...plain, elasticCompliance, retightenings }).clampLoads)
  const washers = springWasher.si({ washerCompliance: x.spring.compliance, flatForce: x.spring.flatForce, clampLoad, boltCompliance })
  const sleeve = compressionSleeve.si({
    clampLoad,
    sleeveCompliance: x.sleeve.compliance,
    printCompliance,
    shortfall: x.sleeve.shortfall,
  })
  // To the print, sleeve and bolt are one spring, side by side: they share the load that the print loses by their stiffness.
  const given = x.sleeve.compliance / (x.sleeve.compliance + boltCompliance)
  const beside = { ...plain, clampLoad: sleeve.printLoad, elasticCompliance: boltCompliance * given }
  const onSleeve = forces(clampLoadOverTime.si(beside).clampLoads.map((print) => clampLoad - (sleeve.printLoad - print) * given))
  const sleeveWorks = sleeve.state === 'sleeveCarries' || sleeve.state === 'shared'
  return [
    { remedy: 'asItIs', clampLoads: over(boltCompliance), state: 'works' },
    { remedy: 'retightened', clampLoads: over(boltCompliance, [x.retightenAt]), state: 'works' },
    { remedy: 'springWashers', clampLoads: over(washers.elasticCompliance), state: washers.state === 'springs' ? 'works' : 'flattened' },
    {
      remedy: 'compressionSleeve',
      clampLoads: sleeve.state === 'sleeveTooShort' ? over(boltCompliance) : onSleeve,
      state: sleeveWorks ? 'works' : sleeve.state === 'sleeveTooShort' ? 'sleeveTooShort' : 'printLoose',
    },
  ]
}
