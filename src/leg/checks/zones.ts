import { clearanceHole, socketHead, washer } from '../../fasteners/index.js'
import type { Evaluator } from '../../formula/index.js'
import { fastenerZone } from '../../materials/index.js'
import type { Scene } from '../state.js'
import type { Check, Finding } from './check.js'

const MODE = 'holds its fastener in sparse infill, where no strength can be stated'
const WORDS = {
  demandIs: 'the diameter that must be solid round the hole',
  capacityIs: 'the diameter that the walls round the hole make solid (or all of it, in infill of 70 % and more)',
  remedy: 'more walls, or set the zone of the fastener solid in the slicer',
  enough: 1,
} as const

/** Solid zone round a hole: what is needed, and what walls and infill give. */
function zone(of: Evaluator, { leg }: Scene, holeDiameter: number, neededDiameter: number): Finding {
  const { walls, lineWidth, infill } = leg.x.print
  const { solidDiameter, state } = of(fastenerZone, {
    holeDiameter,
    wallCount: walls,
    lineWidth,
    relativeDensity: infill,
    neededDiameter,
  })
  if (state !== 'denseInfill') return { demand: neededDiameter, capacity: Math.max(solidDiameter, infill >= 1 ? neededDiameter : 0) }
  return { demand: neededDiameter, capacity: neededDiameter, remark: 'held by dense infill, not by walls' }
}

/** Print settings: fasteners need a solid zone round their holes. */
export const zoneChecks: readonly Check[] = [
  {
    id: 'boss.zone',
    part: 'print round the pin',
    mode: MODE,
    stake: 'breaks',
    kind: 'length',
    scope: 'joint',
    cases: ['stand'],
    after: [],
    run: (of, scene) => {
      const boss = scene.leg.x.bosses[scene.joint]
      // A boss that is thinner than twice its hole has no infill beyond its own outside.
      return zone(of, scene, boss.hole, Math.min(2 * boss.hole, boss.outerDiameter))
    },
    ...WORDS,
  },
  ...(['stack', 'motor'] as const).map(
    (group): Check => ({
      id: `${group}Bolt.zone`,
      part: `print under the heads of the ${group} bolts`,
      mode: MODE,
      stake: 'breaks',
      kind: 'length',
      scope: 'leg',
      cases: ['stand'],
      after: [],
      run: (of, scene) => {
        const bolts = scene.leg.x.bolts[group]
        if (bolts.sleeves) return undefined
        const bearing = bolts.washers ? washer.si(bolts.thread).outerDiameter : socketHead.si(bolts.thread).bearingDiameter
        return zone(of, scene, clearanceHole.si(bolts.thread).medium, bearing)
      },
      ...WORDS,
    }),
  ),
]
