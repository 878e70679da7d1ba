import type { Check } from '../../../cases/check.js'
import { SECOND_STAGE } from '../../../second-stage.js'
import { beltChecks } from '../belt/checks.js'
import { anchorChecks } from '../cord/anchor.js'
import { cordChecks } from '../cord/checks.js'
import { drumChecks } from '../cord/drum.js'

/** Checks of belt or cord of a drive that hold for one along the upper link as well. No motor warms it. */
const along = (checks: readonly Check[], words: Readonly<Record<string, string>>): readonly Check[] =>
  checks
    .filter(({ id }) => !id.endsWith('.heat'))
    .map((check) => ({
      ...check,
      id: `knee${(check.id[0] as string).toUpperCase()}${check.id.slice(1)}`,
      part: words[check.part] ?? `${check.part}, second stage of the knee`,
      scope: 'leg',
      of: () => ({ joint: SECOND_STAGE }),
      demandIs: check.demandIs.replace('the joint torque', 'the knee torque'),
    }))

/** Checks of the belt that drives the knee from a pulley on the hip axis. */
export const kneeBeltChecks = along(beltChecks, {
  'tooth belt': 'tooth belt along the upper link',
  'tooth belt on the small pulley': 'tooth belt along the upper link on its smaller pulley',
  'adjustment of the axes': 'adjustment of hip and knee axis',
  'tooth of the large pulley': 'tooth of a pulley of the belt along the upper link',
})
/** Checks of the cord that drives the knee from a drum on the hip axis. */
export const kneeCordChecks = along([...cordChecks, ...drumChecks, ...anchorChecks], {
  'cord drive': 'cord along the upper link',
  cord: 'cord along the upper link',
  'cord on the pinion': 'cord on the drum on the hip axis',
  'cord on the drum': 'cord on the drum on the knee',
  'printed drum': 'printed drum on the knee',
  'groove of the drum': 'groove of the drum on the knee',
  'cord anchor': 'cord anchor on the knee',
  'bonded ferrule': 'bonded ferrule of the cord along the upper link',
  tensioner: 'tensioner of the cord along the upper link',
})
