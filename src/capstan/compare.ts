import type { Source } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import type { ReductionJob } from './compare-job.js'
import { beltTerms, cordTerms, gearTerms, readJob } from './compare-terms.js'
import type { CordDrive } from './drive.js'
import type { AtFriction } from './drive-results.js'

/** One term, side by side. A cell is absent where the term does not exist for that reduction or is not calculated; the note names the reason. */
export interface ComparedTerm<K extends 'ratio' | 'force' | 'angle' | 'count'> {
  /** Cord drive, at both ends of its friction. */
  readonly cord: AtFriction<Quantity<K>> | undefined
  readonly belt: Quantity<K> | undefined
  readonly gear: Quantity<K> | undefined
  /** Caution for the comparison. */
  readonly note: string
}

/** Cord, tooth belt and spur gears at one torque and size. No term outweighs the others: there is no score. */
export interface ComparedReductions {
  /** Reduction that whole teeth leave. */
  readonly ratio: ComparedTerm<'ratio'>
  /** Difference of span tensions, or force at the pitch circle. */
  readonly tangentialForce: ComparedTerm<'force'>
  /** Force on either shaft at the torque. */
  readonly shaftForce: ComparedTerm<'force'>
  /** Angle of the joint between loading from either side: free play of teeth, hysteresis of the cord. */
  readonly lostMotion: ComparedTerm<'angle'>
  /** Elastic angle of the joint at the torque, free play not counted. */
  readonly windup: ComparedTerm<'angle'>
  /** Teeth that share the load; for the cord the turns on its pinion. */
  readonly engaged: ComparedTerm<'count'>
  /** Capacity over demand: cord tension, tooth shear, root stress. Not comparable as safety, because the modes of failure differ. */
  readonly reserve: ComparedTerm<'ratio'>
  /** Where the two clearances come from. */
  readonly backlash: {
    readonly belt: { readonly value: Quantity<'length'>; readonly source: Source }
    readonly gear: { readonly value: Quantity<'length'>; readonly source: Source }
  }
  /** The cord drive that was compared, for more of it. */
  readonly drive: CordDrive
}

/**
 * Compares a cord drive, a tooth belt and a pair of spur gears at the same job, term by term. Throws an `InputError` for overlapping
 * pulleys and for fewer teeth than can be cut.
 */
export function compareReductions(job: ReductionJob): ComparedReductions {
  const x = readJob(job)
  const cord = cordTerms(job, x)
  const belt = beltTerms(job, x)
  const gear = gearTerms(x)
  return {
    ratio: {
      cord: cord.ratio,
      belt: belt.ratio,
      gear: gear.ratio,
      note: 'teeth are whole: belt and gear come as near as they can; the cord takes any ratio, and creeps unless clamped',
    },
    tangentialForce: {
      cord: cord.tangentialForce,
      belt: belt.tangentialForce,
      gear: gear.tangentialForce,
      note: 'at whole teeth the pitch radius, and with it the force, moves a little; a cord that slips carries less than the torque',
    },
    shaftForce: {
      cord: cord.shaftForce,
      belt: belt.shaftForce,
      gear: gear.shaftForce,
      note: 'cord and belt load their shafts at rest too, with the pretension; gears only under torque',
    },
    lostMotion: {
      cord: cord.lostMotion,
      belt: belt.lostMotion,
      gear: gear.lostMotion,
      note: 'teeth are free without torque, whatever the load; the cord has no free play but a hysteresis that grows with load. The belt has its clearance at both pulleys, at most',
    },
    windup: {
      cord: cord.windup,
      belt: belt.windup,
      gear: undefined,
      note: 'belt: spans only, teeth and wrapped arcs assumed to be rigid, an optimistic value; gear: tooth bending is not calculated, and is not small for printed teeth',
    },
    engaged: {
      cord: cord.engaged,
      belt: belt.engaged,
      gear: new Quantity(1, 'count'),
      note: `cord: turns on the pinion. Belt: full rating needs six teeth in mesh, here a share of ${belt.toothFactor.toFixed(1)} is left. Gear: one tooth carries all in the calculation`,
    },
    reserve: {
      cord: cord.reserve,
      belt: belt.reserve,
      gear: gear.reserve,
      note: 'cord tension, mean tooth shear, Lewis root stress: compare them only with allowables of like service factor; none of them includes heat, wear and creep',
    },
    backlash: { belt: belt.backlash, gear: gear.backlash },
    drive: cord.drive,
  }
}
