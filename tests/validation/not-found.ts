import type { CouponId } from '../../src/leg/learning/coupon-logs.js'
import type { MeasurementId } from '../../src/leg/learning/measurements.js'

/** What the stand of a leg measures: the step or the coupon of the plan, and the words that ask for it. */
export interface Asked {
  readonly by: MeasurementId | CouponId
  readonly words: RegExp
}

/** What a builder wants held against experiments. */
export interface Subject {
  readonly what: string
  /** Words of the rows that were found for it; absent where none was. */
  readonly rows?: RegExp
  /** What was searched and read in vain; always where no row was found. */
  readonly missing?: string
  /** The measurement that would be the first, or one more. */
  readonly asked: Asked
}

/** Every effect that the verdicts of a leg rest upon, whether a published experiment with its conditions was found or not. */
export const SUBJECTS: readonly Subject[] = [
  {
    what: 'temperatures of winding and housing over time',
    rows: /time to heat a stalled winding/,
    asked: { by: 'heating', words: /winding temperature.*mounting face and air every minute/ },
  },
  {
    what: 'torque of a motor for each ampere',
    rows: /torque per ampere/,
    asked: { by: 'torqueConstant', words: /eight steps/ },
  },
  {
    what: 'drag of a motor over its speed',
    rows: /drag of two coupled motors/,
    asked: { by: 'noLoad', words: /voltage in five steps/ },
  },
  {
    what: 'heating at stall by the angle of the rotor',
    missing: 'No log of a stalled motor that states the angle of its rotor was found.',
    asked: { by: 'heating', words: /hold the vector still.*30 electrical degrees on/ },
  },
  {
    what: 'rope over a bar or a tube',
    rows: /tube|bar/,
    asked: { by: 'cordFriction', words: /half a turn, one turn and one and a half turns/ },
  },
  {
    what: 'thread stripped in a print, with its engagement',
    missing:
      'Printed M8 threads in sintered PA12 held 3.41 kN and heat-set inserts 3.83 kN (Śliwka & Wójcik 2025, Polymers 18:112, abstract), but their length is not in what could be read.',
    asked: { by: 'couponSandwich', words: /until its thread, nut or print gives/ },
  },
  {
    what: 'press fit pulled out of a print, at once and after weeks',
    missing: 'No force with the interference of a printed hole was found.',
    asked: { by: 'couponHoles', words: /push one out at once and the other after two weeks/ },
  },
  {
    what: 'creep of a print for weeks',
    missing:
      'The curves of PETG for 5 and 20 h (Polymers 2025, 17:2075), of PLA (arXiv 2302.11240), and of sintered PA12 and printed PLA (Acta Mechanica et Automatica 2025) could be read in their abstracts only; none lasts weeks, and no open table of a creep test of prints was found in public repositories.',
    asked: { by: 'couponBars', words: /sags after an hour, a day, a week and two weeks/ },
  },
  {
    what: 'rupture of a print under a load that stays',
    missing:
      'No time to failure of a print was found; those of moulded PLA (Engels and others 2009) could be read without their table, and design stresses of moulded ABS and PP for long times (Crawford, 3rd ed., p. 135) are no times to failure.',
    asked: { by: 'couponBars', words: /or when it breaks/ },
  },
  {
    what: 'relaxation of a bolted print over weeks',
    missing: 'The published tests state the plastic bolt, not the clamped print.',
    asked: { by: 'couponSandwich', words: /after an hour, a day and a week/ },
  },
  {
    what: 'stiffness, windup and slip torque of a cord drive',
    rows: /cord drive on a stand/,
    missing:
      'The one open record (F. Alonso, 2026) states neither cord, drums nor pretension, so that only the growth of its windup is judged. Its drift in an hour at rest under load was at most 0.1 deg, three times.',
    asked: { by: 'windup', words: /Lock the motor/ },
  },
  {
    what: 'pretension that shifts as the joint moves to and fro under load',
    missing: 'No record of both spans over a travel was found.',
    asked: { by: 'pretension', words: /to and fro fifty times/ },
  },
  {
    what: 'windup of a knee that a rod drives from the hip',
    missing: 'No load with the deflection of such a knee was found.',
    asked: { by: 'footDeflection', words: /knee follows the hip through its rod/ },
  },
]
