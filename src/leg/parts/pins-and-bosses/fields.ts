import { parallelPin } from '../../../fasteners/index.js'
import { field, reference, word } from '../../leaves.js'
import { bossAt, pinAt } from '../../numbers.js'
import { constant } from '../../run/index.js'
import { pinOf } from '../../schema/tables.js'

export const pin = {
  diameter: field('pin.diameter', ['joint'], 'length', (x, { joint }) => pinOf(pinAt(x, joint).size).diameter, {
    title: 'diameter of the joint pin',
    table: parallelPin,
  }),
  zone: word('pin.zone', ['joint'], (x, { joint }) => pinOf(pinAt(x, joint).size).zone),
  strength: field('pin.strength', ['joint'], 'stress', (x, { joint }) => pinAt(x, joint).strength),
  cheekThickness: field('pin.cheekThickness', ['joint'], 'length', (x, { joint }) => pinAt(x, joint).cheekThickness),
  lugThickness: field('pin.lugThickness', ['joint'], 'length', (x, { joint }) => pinAt(x, joint).lugThickness),
  gap: field('pin.gap', ['joint'], 'length', (x, { joint }) => pinAt(x, joint).gap),
}
/** Why the eye of a link does not turn on its plain pin; absent where it does. */
export const onBearing = word('pin.onBearing', ['joint'], (x, { joint }) =>
  pinAt(x, joint).bearing === undefined ? undefined : 'ball bearings carry the eye',
)
export const boss = {
  material: reference('boss.material', ['joint'], 'material', (x, { joint }) => bossAt(x, joint).material),
  outerDiameter: field('boss.outerDiameter', ['joint'], 'length', (x, { joint }) => bossAt(x, joint).outerDiameter),
  hole: field('boss.hole', ['joint'], 'length', (x, { joint }) => bossAt(x, joint).hole),
  holeScatter: field('boss.holeScatter', ['joint'], 'length', (x, { joint }) => bossAt(x, joint).holeScatter),
  engagement: field('boss.engagement', ['joint'], 'length', (x, { joint }) => bossAt(x, joint).engagement),
  edgeDistance: field('boss.edgeDistance', ['joint'], 'length', (x, { joint }) => bossAt(x, joint).edgeDistance),
  print: reference('boss.print', ['joint'], 'print', (x, { joint }) => bossAt(x, joint).print),
  axis: word('boss.axis', ['joint'], (x, { joint }) => bossAt(x, joint).axis),
}
/** Whether the hip turns on a shaft in bearings. */
export const hipHasShaft = word('hip.hasShaft', [], (x) => x.joints.hip.shaft !== undefined)
/** Material of the link whose eye turns on the pin: the upper link at the hip, the lower link at the knee. */
export const eyeMaterial = reference('pin.eyeMaterial', ['joint'], 'material', (x, { joint }) =>
  joint === 'hip' ? x.links.upper.material : x.links.lower.material,
)

const assumption = (where: string) => ({ level: 'assumption', where }) as const
/** Diameter of the eye over that of its pin. */
export const eyeClearance = constant('pin.eyeClearance', {
  title: 'clearance of the eye on its pin',
  kind: 'length',
  typical: 0.1e-3,
  low: 0.03e-3,
  high: 0.2e-3,
  source: assumption('a reamed or printed eye that turns freely'),
  measuredBy: 'push the foot to and fro sideways under a dial gauge',
})
export const yieldShare = constant('pin.yieldShare', {
  title: 'yield strength over tensile strength of a hardened pin',
  kind: 'ratio',
  typical: 0.85,
  low: 0.8,
  high: 0.9,
  source: assumption('yield of hardened steel as a share of its tensile strength'),
  measuredBy: 'bend a spare pin on two supports and note where it stays bent',
})
/** A printed surface that turns on its pin bears this share of what a resting one does. */
export const movingShare = constant('pin.movingShare', {
  title: 'bearing strength of a turning eye over that of an eye at rest',
  kind: 'ratio',
  typical: 0.5,
  low: 0.3,
  high: 0.7,
  source: assumption('the eye turns on the pin'),
  measuredBy: 'turn a loaded pin in a printed eye for a day of strides and measure the hole',
})
/** Strength of a crushed edge over that of a free bar. */
export const edgeSupport = constant('boss.edgeSupport', {
  title: 'strength of a supported edge over that of a free bar',
  kind: 'ratio',
  typical: 2,
  low: 1.5,
  high: 3,
  source: assumption('the wall around holds the crushed edge in'),
  measuredBy: 'press a pin sideways into the mouth of a spare boss until it stays tilted',
})
export const leverShare = constant('boss.leverShare', {
  title: 'distance of the load from the gap over the thickness of the eye',
  kind: 'ratio',
  typical: 0.25,
  source: assumption('the eye loads each half of the pin a quarter of its thickness from the gap'),
})
export const peakOverMean = constant('boss.peakOverMean', {
  title: 'peak stress next to a pin hole over the mean stress',
  kind: 'ratio',
  typical: 2.5,
  low: 2,
  high: 3,
  source: { level: 'commonPractice', where: 'close pins concentrate the stress beside their hole two- to threefold' },
  measuredBy: 'load a boss to and fro until it cracks',
})
/** A press fit keeps its strain: stress relaxes faster than strength fades, so the first hour decides. */
export const splitTime = constant('boss.splitTime', {
  title: 'duration of the full press of a boss',
  kind: 'time',
  typical: 3600,
  source: assumption('stress of a press fit relaxes faster than strength fades'),
})
export const holeDeviations = constant('boss.holeDeviations', {
  title: 'standard deviations from the mean hole to the smallest hole',
  kind: 'ratio',
  typical: 2,
  source: assumption('the smallest hole of a batch is two standard deviations below the mean'),
})
export const toleranceSigmas = constant('pin.toleranceSigmas', {
  title: 'standard deviations in a tolerance zone',
  kind: 'ratio',
  typical: 6,
  source: { level: 'commonPractice', where: 'a tolerance zone is six standard deviations wide' },
})
export const axialShare = constant('boss.axialShare', {
  title: 'force along the pin over the load of the pin',
  kind: 'ratio',
  typical: 0.05,
  low: 0.02,
  high: 0.1,
  source: assumption('a twentieth of the load of the pin acts along it'),
  measuredBy: 'mark a pin and note how it walks in a week of use',
})
export const gripReserve = constant('boss.gripReserve', {
  title: 'required reserve of a friction grip',
  kind: 'ratio',
  typical: 2,
  source: assumption('friction grips are designed for twice the force'),
})
export const neededShare = constant('boss.neededInterference', {
  title: 'least interference of a press fit over its diameter',
  kind: 'ratio',
  typical: 0.002,
  source: { level: 'commonPractice', where: 'press fits of steel in plastic, 0.2 % of the diameter and more' },
})
export const allowableShare = constant('boss.allowableInterference', {
  title: 'largest interference of a press fit over its diameter',
  kind: 'ratio',
  typical: 0.03,
  source: { level: 'commonPractice', where: 'press fits of steel in plastic, up to 3 % of the diameter' },
})
export const looseAccepted = constant('boss.looseAccepted', {
  title: 'accepted share of loose bosses',
  kind: 'ratio',
  typical: 0.02,
  source: assumption('one boss in fifty may come out loose'),
})
export const leastChance = constant('boss.leastChance', {
  title: 'smallest chance that is distinguished from none',
  kind: 'ratio',
  typical: 1e-6,
  source: assumption('chances below one in a million are not distinguished'),
})
export const mostReserve = constant('pin.mostReserve', {
  title: 'largest fatigue reserve of a pin that is stated',
  kind: 'ratio',
  typical: 1e6,
  source: assumption('a larger reserve of fatigue means no more than "plenty"'),
})
