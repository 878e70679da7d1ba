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

// Fits and press fits

export * from './fit-change.js'
export * from './iso286.js'
export { HOLE_ZONES, SHAFT_ZONES } from './iso286-tables.js'
export * from './press-fit.js'
export * from './press-fit-decay.js'
export * from './press-fit-grip.js'
export * from './print-fit.js'

// Pins and lugs

export * from './embedded-pin.js'
export * from './lug-concentration.js'
export * from './parallel-pins.js'
export * from './pin-couple.js'
export * from './pin-fatigue.js'
export * from './pins.js'

// Shafts, keys and drilled bolts

export * from './drilled-bolt.js'
export * from './friction-drive.js'
export * from './parallel-key.js'
export * from './shaft-flat.js'
export * from './shaft-stack.js'

// Threads and hardware

export * from './hardware.js'
export * from './insert-pull-out.js'
export * from './power-screw.js'
export * from './property-class.js'
export type { SizeRow, SizeTable } from './size-table.js'
export * from './thread-forming.js'
export * from './thread-geometry.js'
export * from './thread-sizes.js'
export * from './thread-strip.js'

// Tightening

export * from './bolt-friction.js'
export * from './preload.js'
export * from './tightening.js'

// Clamped joints

export * from './bolt-group.js'
export * from './bolt-shear-tension.js'
export * from './bolt-stiffness.js'
export * from './eccentric-joint.js'
export * from './head-bearing.js'
export * from './joint-loads.js'
export * from './member-stiffness.js'
export * from './member-stiffness-fit.js'
export * from './prying.js'
export * from './ring-joint.js'
export * from './ring-pressure.js'
export * from './tilted-seat.js'

// Clamp load over months

export * from './clamp-heat.js'
export * from './clamp-load.js'
export * from './clamp-remedy.js'
export * from './embedding.js'
export * from './remedies.js'

// Nuts in prints

export * from './nut-in-pocket.js'
export * from './nut-pocket.js'

// Bonds

export * from './adhesives.js'
export * from './bond.js'
export * from './cord-socket.js'
export * from './lap-peel.js'
export * from './lap-shear.js'

// Rolling bearings

export * from './bearing-cocking.js'
export * from './bearing-lubrication.js'
export * from './bearing-pair.js'
export * from './bearing-reliability.js'
export * from './bearing-retention.js'
export * from './bearing-seat.js'
export * from './bearing-sizes.js'
export * from './bearings.js'
export * from './worst-ball.js'

// Tolerances and snap hooks

export * from './snap-fit.js'
export * from './tolerance-stack.js'

// Choosing pins and bolts

export * from './propose-bolts.js'
export * from './propose-pin.js'

// Charts

export * from './charts.js'
