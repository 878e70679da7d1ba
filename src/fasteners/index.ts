/**
 * What holds a leg together: fits, pins, threads and bolts, clamped joints, nuts in prints, bonds, bearings, stacks.
 *
 * Conventions: interference is diametral, pin minus hole; negative is clearance. A stress is tension when positive, a pressure is
 * positive in compression. "Minor diameter" is the flat one of the basic profile, "root diameter" the rounded one of the screw. A prevailing torque
 * adds to the torque on the wrench and never to the preload. The load factor is the bolt's share of an outside load. Layers of a
 * stack are listed from the head.
 *
 * @module
 */
export * from './adhesives.js'
export * from './bearing-retention.js'
export * from './bearing-seat.js'
export * from './bearings.js'
export * from './bolt-friction.js'
export * from './bolt-group.js'
export * from './bolt-stiffness.js'
export * from './bond.js'
export * from './charts.js'
export * from './clamp-heat.js'
export * from './clamp-load.js'
export * from './clamp-remedy.js'
export * from './drilled-bolt.js'
export * from './embedded-pin.js'
export * from './fit-change.js'
export * from './friction-drive.js'
export * from './hardware.js'
export * from './head-bearing.js'
export * from './iso286.js'
export * from './joint-loads.js'
export * from './lap-shear.js'
export * from './member-stiffness.js'
export * from './nut-in-pocket.js'
export * from './nut-pocket.js'
export * from './parallel-key.js'
export * from './parallel-pins.js'
export * from './pin-fatigue.js'
export * from './pins.js'
export * from './power-screw.js'
export * from './preload.js'
export * from './press-fit.js'
export * from './press-fit-grip.js'
export * from './print-fit.js'
export * from './property-class.js'
export * from './remedies.js'
export * from './shaft-stack.js'
export type { SizeRow, SizeTable } from './size-table.js'
export * from './thread-geometry.js'
export * from './thread-sizes.js'
export * from './thread-strip.js'
export * from './tightening.js'
export * from './tolerance-stack.js'
