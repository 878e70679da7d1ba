/**
 * limbwright: engineering calculations for printed, cord-driven robot legs.
 *
 * This entry holds the modules as namespaces; each is also a subpath of its own (`limbwright/capstan`, …).
 *
 * @module
 */
export * as capstan from './capstan/index.js'
export * as catalogue from './catalogue/index.js'
export * as fasteners from './fasteners/index.js'
export * as formula from './formula/index.js'
export * as kinematics from './kinematics/index.js'
export * as leg from './leg/index.js'
export * as materials from './materials/index.js'
export * as structures from './structures/index.js'
export * as study from './study/index.js'
export * as thermal from './thermal/index.js'
export * as units from './units/index.js'
