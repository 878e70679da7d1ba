/**
 * Beams, columns and springs: box and round sections, bending, torsion, buckling, shafts in two bearings, coiled springs, and the load that each end of a
 * robot carries on a slope.
 *
 * Conventions: width is measured along the bending axis, depth across it. A second moment of area is about the axis of bending, a torsion
 * constant is the polar second moment only where the section is round. The wall of a box is the same all round.
 *
 * @module
 */

// Sections

export * from './sections.js'

// Bending and combined stress

export * from './bending.js'
export * from './combined-stress.js'
export * from './shear-coefficient.js'

// Torsion

export * from './torsion.js'

// Buckling

export * from './column-buckling.js'
export * from './wall-buckling.js'

// Shafts in two bearings

export * from './shaft-bearings.js'
export * from './shaft-overhang.js'

// Springs

export * from './extension-springs.js'
export { helicalSpringRate, helicalSpringShear, springMass, springSurge } from './helical-springs.js'
export * from './torsion-springs.js'

// Load on a slope

export * from './load-share.js'
