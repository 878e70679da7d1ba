import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

const DAY = 86_400

// The ranges are common practice: proportions and gaits of small walking robots.

/** Gaits, and what a robot meets. */
export const loadRelations: Relations = (leg, add) => {
  for (const one of [...daysOf(leg), ...landingsOf(leg), ...airsOf(leg)]) add(one)
  gaitRelations(leg, add)
}

const gaitRelations: Relations = ({ gaits, links, usage }, add) => {
  const legLength = ['links', si(links?.upper?.length) + si(links?.lower?.length)] as const
  let fastest = Number.NaN
  for (const [name, { speed, dutyFactor, stepLength, clearance, traction }] of entriesOf(gaits)) {
    const path = `gaits.${name}`
    const rate = (si(speed) * si(dutyFactor)) / si(stepLength)
    fastest = Number.isNaN(fastest) ? rate : Math.max(fastest, rate)
    add({
      path: `${path}.speed`,
      value: speed,
      others: [`${path}.stepLength`, `${path}.dutyFactor`],
      what: 'the strides per second',
      is: rate,
      kind: 'frequency',
      usual: [0.1, 7],
      possible: [0, 60],
    })
    add(ratio([`${path}.stepLength`, stepLength], legLength, 'the step over the length of the leg', [0.05, 1.4]))
    add(ratio([`${path}.clearance`, clearance], legLength, 'the clearance over the length of the leg', [0.02, 0.8]))
    add({
      path: `${path}.traction`,
      value: traction?.lowest === undefined || traction.highest === undefined ? undefined : `${traction.lowest} to ${traction.highest}`,
      others: [],
      what: 'the largest push along the ground over the load on the foot',
      is: Math.max(-si(traction?.lowest), si(traction?.highest)),
      kind: 'ratio',
      usual: [0, 1],
    })
  }
  add({
    path: 'usage.stridesPerDay',
    value: usage?.stridesPerDay,
    others: ['gaits'],
    what: 'the time of the strides of a day at the fastest gait over a day',
    is: si(usage?.stridesPerDay) / fastest / DAY,
    kind: 'ratio',
    usual: [0, 0.8],
    possible: [0, 1],
    ofDefaults: true,
  })
}

/** The robot walks on some of the days since assembly. */
const daysOf = ({ loadCases }: PartlyLeg): Relation[] =>
  entriesOf(loadCases?.ages).map(([name, { time, daysWalked }]) => ({
    path: `loadCases.ages.${name}.daysWalked`,
    value: daysWalked,
    others: [`loadCases.ages.${name}.time`],
    what: 'the share of days with a walk',
    is: si(daysWalked) === 0 ? 0 : si(daysWalked) / (si(time) / DAY),
    kind: 'ratio',
    // In its season the robot walks on more than one day of a week or two.
    usual: [name === 'season' && si(daysWalked) > 0 ? 0.12 : 0, 1 + 1e-9],
    // A day that has begun counts.
    possible: [0, Math.max(1 + 1e-9, 1 + DAY / si(time))],
  }))

const landingsOf = ({ loadCases, robot }: PartlyLeg): Relation[] =>
  entriesOf(loadCases?.events).flatMap(([name, event]) => {
    if ((event.kind !== 'hop' && event.kind !== 'drop') || !((event.height?.si ?? 0) > 0)) return []
    const stand = ['robot.standHeight', robot?.standHeight] as const
    const path = `loadCases.events.${name}`
    return [
      ratio([`${path}.height`, event.height], stand, 'the height of the fall over the standing height', [0.015, 3]),
      ratio([`${path}.travel`, event.travel], stand, 'the way of stopping over the standing height', [0.04, 0.9]),
    ]
  })

/** Hot air is hotter than the air of an ordinary day, cold air colder. */
const airsOf = ({ loadCases }: PartlyLeg): Relation[] =>
  (
    [
      ['hot', 'normal', 'hot'],
      ['normal', 'cold', 'cold'],
    ] as const
  ).map(([warm, cool, named]) => ({
    path: `loadCases.airs.${named}.temperature`,
    value: loadCases?.airs?.[named]?.temperature,
    others: [`loadCases.airs.normal.temperature`],
    what: `the difference of ${warm} and ${cool} air`,
    is: si(loadCases?.airs?.[warm]?.temperature) - si(loadCases?.airs?.[cool]?.temperature),
    kind: 'temperatureDifference',
    usual: [0, 60],
    ofDefaults: true,
  }))
