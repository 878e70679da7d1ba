import type { Of, Use } from '../../run/index.js'

/** Instances of the leg by name: joints in the order hip, knee; links upper, lower. */
export const hipOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('joint', { leg })[0] as Of<'joint'>
export const kneeOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('joint', { leg })[1] as Of<'joint'>
export const upperOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('link', { leg })[0] as Of<'link'>
export const lowerOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('link', { leg })[1] as Of<'link'>
