import { formula } from '../formula/index.js'

/** Prying: a flange that heels on its toe pulls the bolt harder than the load does (upper bound of a stiff flange), and bending of the flange. */
export const prying = /* @__PURE__ */ formula('fasteners.prying', {
  inputs: {
    /** Load per bolt. */
    load: { kind: 'force', min: 0 },
    /** Distance from the load's line to the bolt. */
    loadToBolt: { kind: 'length', min: 0 },
    /** Distance from the bolt to the toe. */
    boltToToe: { kind: 'length', above: 0 },
    /** Width of flange per bolt. */
    width: { kind: 'length', above: 0 },
    /** Thickness of the flange. */
    thickness: { kind: 'length', above: 0 },
    /** Hole diameter. */
    holeDiameter: { kind: 'length', min: 0 },
  },
  output: {
    /** Tension of the bolt. */
    boltTension: 'force',
    /** Force at the toe. */
    toeForce: 'force',
    /** Bending stress of the flange at the bolt line, across the net width. */
    flangeStress: 'stress',
  },
  equation: [
    'toeForce = load * loadToBolt / boltToToe',
    'boltTension = load + toeForce',
    'flangeStress = 6 * load * loadToBolt / ((width - holeDiameter) * thickness^2)',
  ],
  assumes: ['stiff flange on its toe: the most prying there can be; a flange that bends between load and bolt pries less'],
  source: [{ level: 'computed', where: 'lever about the toe' }],
  requires: { holeDiameter: { accepts: 'must be smaller than the width', holds: ({ holeDiameter, width }) => holeDiameter < width } },
  si: ({ load, loadToBolt, boltToToe, width, thickness, holeDiameter }) => {
    const toeForce = (load * loadToBolt) / boltToToe
    return {
      boltTension: load + toeForce,
      toeForce,
      flangeStress: (6 * load * loadToBolt) / ((width - holeDiameter) * thickness * thickness),
    }
  },
})
