import { field, reference } from '../../leaves.js'
import { boxOf } from '../../numbers.js'

export const hipOffset = field('links.hipOffset', ['leg'], 'length', (x) => x.links.hipOffset)
export const length = field('link.length', ['link'], 'length', (x, { link }) => x.links[link].length)
export const mass = field('link.mass', ['link'], 'mass', (x, { link }) => x.links[link].mass)
export const width = field('link.width', ['link'], 'length', (x, { link }) => boxOf(x, link).width)
export const depth = field('link.depth', ['link'], 'length', (x, { link }) => boxOf(x, link).depth)
export const wall = field('link.wall', ['link'], 'length', (x, { link }) => x.links[link].section.wall)
export const material = reference('link.material', ['link'], 'material', (x, { link }) => x.links[link].material)
