import { walkingShares } from '../../../kinematics/index.js'
import { line, type Use, value } from '../../run/index.js'
import * as robot from '../robot/fields.js'
import { centreHeight, feetAcross } from '../robot/values.js'
import * as load from './fields.js'

type Read = Use<never>

const downhill = line(
  'place of the weight, down the slope from the middle of the feet',
  { off: 'length', height: 'length', slope: 'angle' },
  'length',
  '|off| + height · tan(slope)',
  (x) => Math.abs(x.off) + x.height * Math.tan(x.slope),
)
const opposite = line('place of the weight behind the middle', { place: 'length' }, 'length', '−place', ({ place }) => -place)

/** Where the weight passes through the ground, down a slope: a centre of mass off the middle counts on the lower side. */
const below = (use: Read, off: number, slope: number) => use.run(downhill, { off, height: use(centreHeight), slope })

/** Parts of the weight on the feet over the stance of the walk, the weight at a place under the body. */
const sharesAt = (use: Read, weightForward: number, weightLeft: number): readonly number[] =>
  use.run(walkingShares, {
    legs: use(robot.legs),
    dutyFactor: use(load.walk.dutyFactor),
    spacing: use(robot.hipSpacing),
    width: use(feetAcross),
    stepLength: use(load.walk.stepLength),
    weightForward,
    weightLeft,
  }).shares

/** Parts of the weight on the feet over the stance: walking on the level. */
export const levelShares = value('load.levelShares', [], (use) =>
  sharesAt(use, use(robot.centreOfMassForward), use(robot.centreOfMassLeft)),
)
/** The same straight up the slope. */
export const uphillShares = value('load.uphillShares', [], (use) =>
  sharesAt(use, use.run(opposite, { place: below(use, use(robot.centreOfMassForward), use(load.slope)) }), use(robot.centreOfMassLeft)),
)
/** The same straight down the slope. */
export const downhillShares = value('load.downhillShares', [], (use) =>
  sharesAt(use, below(use, use(robot.centreOfMassForward), use(load.slopeDown)), use(robot.centreOfMassLeft)),
)
/** The same across the slope, its lower side on the left. */
export const acrossShares = value('load.acrossShares', [], (use) =>
  sharesAt(use, use(robot.centreOfMassForward), below(use, use(robot.centreOfMassLeft), use(load.slopeAcross))),
)
