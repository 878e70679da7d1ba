import { threadStrip } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { shareOfStress } from '../../lines.js'
import { constant, line, type Use, value } from '../../run/index.js'
import { tapDepth } from '../motors/fields.js'
import * as bolts from './fields.js'
import { preload } from './values.js'

const reach = line.product('thread in the metal', { diameters: 'ratio', diameter: 'length' }, 'length')
const engaged = line.smallest('thread that engages', { needed: 'length', depth: 'length' }, 'length')
const screw = line(
  'length of a screw',
  { layers: { list: 'length' }, washer: 'length', thread: 'length' },
  'length',
  'sum(layers) + washer + thread',
  (x) => x.layers.reduce((sum, thickness) => sum + thickness, 0) + x.washer + x.thread,
)
const weaker = line.smallest('force that strips', { part: 'force', screw: 'force' }, 'force')

/** Thread of a screw in the aluminium face of a motor, in diameters. */
const diameters = constant('bolts.tappedDiameters', {
  title: 'engaged thread in tapped metal over the diameter of the screw',
  kind: 'ratio',
  typical: 1.5,
  source: { level: 'commonPractice', where: 'one and a half diameters of thread in light metal' },
})
/** Shear strength of the metal that the motor's holes are tapped in. */
const tappedShear = constant('bolts.tappedShear', {
  title: 'shear strength of metal with tapped holes',
  kind: 'stress',
  typical: 120e6,
  low: 90e6,
  high: 160e6,
  source: { level: 'assumption', where: 'cast or wrought aluminium of a motor: 0.6 of a tensile strength of 150 to 270 MPa' },
  measuredBy: 'tighten a screw in a motor that you can spare until its thread strips',
})

const needed = (use: Use<'boltGroup'>) => use.run(reach, { diameters: use(diameters), diameter: use(bolts.thread).diameter })
const washer = (use: Use<'boltGroup'>) => (use(bolts.washers) ? use(bolts.ring).thickness : 0)
const lengthWith = (use: Use<'boltGroup'>, thread: number) =>
  use.run(screw, { layers: use(bolts.thicknesses), washer: washer(use), thread })

const stripForce = value('bolts.tappedStripForce', ['joint', 'boltGroup'], (use) => {
  const [depth, least] = [use(tapDepth), needed(use)]
  const engagement = depth === undefined ? least : use.run(engaged, { needed: least, depth })
  const steel = use(bolts.steelOf)
  const { partStripForce, screwStripForce } = use.run(threadStrip, {
    thread: use(bolts.thread),
    engagement,
    threadLength: engagement,
    partShearStrength: use(tappedShear),
    screwShearStrength: use.run(shareOfStress, { share: use(bolts.shearRatio), strength: steel.tensileStrength }),
    screwTensileStrength: steel.tensileStrength,
    limits: 'worst',
  })
  return use.run(weaker, { part: partStripForce, screw: screwStripForce })
})
const longest = value('bolts.longestScrew', ['joint', 'boltGroup'], (use) => lengthWith(use, use(tapDepth) as number))
const inMetal = (use: Use<'boltGroup'>) => (use(bolts.nut) === 'tappedMetal' ? undefined : 'the bolts are not screwed into the motor')

/** Checks of screws in holes that are tapped in a motor. */
export const tappedChecks = (of: NonNullable<Check['of']>): readonly Check[] => [
  {
    id: 'motorBolt.strip',
    part: 'thread in the motor',
    mode: 'strips when its screw is tightened',
    consequence: 'breaks',
    kind: 'force',
    scope: 'joint',
    of,
    when: ['asBuilt'],
    demand: preload,
    capacity: stripForce,
    unless: value('bolts.notTapped', ['boltGroup'], inMetal),
    demandIs: 'the preload from the tightening torque',
    capacityIs: 'the force that strips the thread in the metal or on the screw, over one and a half diameters or the depth of the hole',
    remedy: 'less tightening torque, a screw that reaches deeper, or a motor with deeper holes',
  },
  {
    id: 'motorBolt.length',
    part: 'motor bolt',
    mode: 'runs into the winding before it holds',
    consequence: 'breaks',
    kind: 'length',
    scope: 'joint',
    of,
    when: ['asBuilt'],
    demand: value('bolts.screwNeeded', ['boltGroup'], (use) => lengthWith(use, needed(use))),
    capacity: longest,
    unless: value('bolts.depthUnknown', ['joint', 'boltGroup'], (use) =>
      use(tapDepth) === undefined
        ? 'the depth of the tapped holes (tapDepth of the motor) is not given: measure it, because a longer screw damages the winding'
        : inMetal(use),
    ),
    remark: value('bolts.longestScrewRemark', ['joint', 'boltGroup'], (use) =>
      use(tapDepth) === undefined
        ? undefined
        : `no screw may be longer than ${Number((use(longest) * 1000).toPrecision(4))} mm, or it damages the winding`,
    ),
    demandIs: 'the screw for the layers, the washer and one and a half diameters of thread',
    capacityIs: 'the longest screw that the layers, the washer and the depth of the tapped holes allow',
    remedy: 'a thicker washer or plate, a finer choice of screw length, or a thinner screw',
    requiredReserve: 1,
  },
]
