import { field, optional, reference, word } from '../../leaves.js'
import { boxOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

export const hipOffset = field('links.hipOffset', [], 'length', (x) => x.links.hipOffset)
export const length = field('link.length', ['link'], 'length', (x, { link }) => x.links[link].length)
export const mass = field('link.mass', ['link'], 'mass', (x, { link }) => x.links[link].mass)
/** Distance of the centre of mass of the bare link from its upper joint; absent for its middle. */
export const centreOfMass = optional('link.centreOfMass', ['link'], 'length', (x, { link }) => x.links[link].centreOfMass)
/** Counterweight of a link: mass, and distance from its upper joint on the far side; absent where it has none. */
export const counterweight = optional('link.counterweight.mass', ['link'], 'mass', (x, { link }) => x.links[link].counterweight?.mass)
export const counterweightBeyond = optional(
  'link.counterweight.beyond',
  ['link'],
  'length',
  (x, { link }) => x.links[link].counterweight?.beyond,
)
export const width = field('link.width', ['link'], 'length', (x, { link }) => boxOf(x, link).width)
export const depth = field('link.depth', ['link'], 'length', (x, { link }) => boxOf(x, link).depth)
export const wall = field('link.wall', ['link'], 'length', (x, { link }) => x.links[link].section.wall)
/** Whether its length lies in the layers or crosses them. */
export const axis = word('link.axis', ['link'], (x, { link }) => x.links[link].axis)
export const material = reference('link.material', ['link'], 'material', (x, { link }) => x.links[link].material)

/** Share of its strength that a notched print keeps in a shock at the cold temperature; between the two it falls linearly. */
export const shockShare = constant('link.shockShare', {
  title: 'share of its strength that a notched print keeps in a shock in the cold',
  kind: 'ratio',
  typical: 0.6,
  low: 0.4,
  high: 0.8,
  source: {
    level: 'assumption',
    where: 'glassy printed polymers lose toughness at their notches in the cold, and nothing was measured on prints',
  },
  measuredBy: 'break notched bars of yours with a falling weight, warm and from the freezer, and compare with bars that are bent slowly',
})
export const shockCold = constant('link.shockCold', {
  title: 'cold temperature of the shock data',
  kind: 'temperature',
  typical: 253.15,
  source: { level: 'assumption', where: 'the share in the cold is meant for −20 °C, as in a freezer' },
})
export const shockWarm = constant('link.shockWarm', {
  title: 'warm temperature of the shock data',
  kind: 'temperature',
  typical: 296.15,
  source: { level: 'commonPractice', where: 'strengths of data sheets are for 23 °C (ISO 291)' },
})
