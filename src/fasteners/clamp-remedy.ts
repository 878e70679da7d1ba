import { formula } from '../formula/index.js'
import { BOLT_COMPLIANCE, CLAMP_LOAD } from './bolt-inputs.js'

/** A spring washer or a stack of them in the joint: how much softer the elastic side becomes, and whether the clamp load flattens it (then it has no effect). */
export const springWasher = /* @__PURE__ */ formula('fasteners.springWasher', {
  inputs: {
    /** Compliance of the washer stack within its travel. */
    washerCompliance: { kind: 'linearCompliance', above: 0 },
    /** Force that flattens it. */
    flatForce: { kind: 'force', above: 0 },
    ...CLAMP_LOAD,
    ...BOLT_COMPLIANCE,
  },
  output: {
    /** Elastic compliance of the joint with it. */
    elasticCompliance: 'linearCompliance',
    /** Whether it still springs under the clamp load. */
    state: { oneOf: ['springs', 'flattened'] },
  },
  assumes: ['linear spring up to flat, rigid beyond'],
  source: [{ level: 'computed', where: 'springs in series' }],
  si: ({ washerCompliance, flatForce, clampLoad, boltCompliance }) => ({
    elasticCompliance: clampLoad < flatForce ? boltCompliance + washerCompliance : boltCompliance,
    state: clampLoad < flatForce ? ('springs' as const) : ('flattened' as const),
  }),
})

/** A metal sleeve in the print that carries the clamp load: the shares of sleeve and print, by the length of the sleeve. */
export const compressionSleeve = /* @__PURE__ */ formula('fasteners.compressionSleeve', {
  inputs: {
    ...CLAMP_LOAD,
    /** Compliance of the sleeve. */
    sleeveCompliance: { kind: 'linearCompliance', above: 0 },
    /** Compliance of the print next to it. */
    printCompliance: { kind: 'linearCompliance', above: 0 },
    /** Length of the print minus length of the sleeve; negative when the sleeve is longer. */
    shortfall: 'length',
  },
  output: {
    /** Load on the sleeve. */
    sleeveLoad: 'force',
    /** Load on the print. */
    printLoad: 'force',
    /** What carries: a sleeve that is too short carries nothing, one too proud leaves the print loose. */
    state: { oneOf: ['sleeveCarries', 'shared', 'sleeveTooShort', 'printLoose'] },
  },
  equation: ['sleeveLoad + printLoad == clampLoad'],
  assumes: ['flat rigid washer over both'],
  source: [{ level: 'computed', where: 'two springs side by side, one with a gap' }],
  si: ({ clampLoad, sleeveCompliance, printCompliance, shortfall }) => {
    const together = 1 / sleeveCompliance + 1 / printCompliance
    const shortening = (clampLoad + shortfall / sleeveCompliance) / together
    const print = shortening / printCompliance
    const tooShort = print >= clampLoad
    const loose = print <= 0
    const printLoad = tooShort ? clampLoad : loose ? 0 : print
    return {
      sleeveLoad: clampLoad - printLoad,
      printLoad,
      state: tooShort
        ? ('sleeveTooShort' as const)
        : loose
          ? ('printLoose' as const)
          : printLoad < 0.1 * clampLoad
            ? ('sleeveCarries' as const)
            : ('shared' as const),
    }
  },
})
