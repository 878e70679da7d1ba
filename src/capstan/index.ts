/**
 * Cord on drums: friction, stiffness, pretension, geometry, ends, cords.
 *
 * @module
 */
export * from './friction.js'
