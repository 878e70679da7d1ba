import { formula } from '../formula/index.js'

/**
 * Stiffness and strength of an infill pattern lie between two bounds: walls of the cells that bend, and walls that stretch.
 * There is no table of percentages that holds for every print; a pattern's place between the bounds comes from a test of it.
 */
export const cellularBounds = /* @__PURE__ */ formula('materials.cellularBounds', {
  inputs: {
    /** Density of the infill over that of the solid (the slicer's infill share). */
    relativeDensity: { kind: 'ratio', above: 0, max: 1 },
    /** Modulus of the solid. */
    modulus: { kind: 'modulus', above: 0 },
    /** Strength of the solid. */
    strength: { kind: 'stress', min: 0 },
  },
  output: {
    /** Modulus when cell walls bend. */
    modulusBending: 'modulus',
    /** Modulus when cell walls stretch, lower estimate (a third works along the load). */
    modulusStretching: 'modulus',
    /** Modulus no porous body can pass: all of its material along the load. */
    modulusLimit: 'modulus',
    /** Strength when cell walls bend. */
    strengthBending: 'stress',
    /** Strength when cell walls stretch. */
    strengthStretching: 'stress',
  },
  equation: [
    'modulusBending = modulus * relativeDensity^2',
    'modulusStretching = modulus * relativeDensity / 3',
    'modulusLimit = modulus * relativeDensity',
    'strengthBending = 0.3 * strength * relativeDensity^(3 / 2)',
    'strengthStretching = strength * relativeDensity / 3',
  ],
  assumes: ['cells small against the part', 'the solid of the infill is as good as that of the walls'],
  source: [
    { level: 'unverified', where: 'Gibson & Ashby, Cellular Solids, 2nd ed. 1997, ch. 5; Deshpande, Ashby & Fleck 2001 (stretching)' },
  ],
  valid: { 'a relative density of at most 0.3, where the laws of cells hold': ({ relativeDensity }) => relativeDensity <= 0.3 },
  si: ({ relativeDensity, modulus, strength }) => ({
    modulusBending: modulus * relativeDensity ** 2,
    modulusStretching: (modulus * relativeDensity) / 3,
    modulusLimit: modulus * relativeDensity,
    strengthBending: 0.3 * strength * relativeDensity ** 1.5,
    strengthStretching: (strength * relativeDensity) / 3,
  }),
})

/**
 * A rectangular bar of solid walls and an infill core as a composite section: stiffness in pull and in bending, and what the walls alone give.
 * The core's modulus comes from a test or from both ends of `cellularBounds`.
 */
export const shellInfillBeam = /* @__PURE__ */ formula('materials.shellInfillBeam', {
  inputs: {
    /** Width, square to the plane of bending. */
    width: { kind: 'length', above: 0 },
    /** Height, in the plane of bending. */
    height: { kind: 'length', above: 0 },
    /** Thickness of the walls on the left and right: number of walls times line width. */
    sideWall: { kind: 'length', above: 0 },
    /** Thickness of the walls at top and bottom: number of layers or walls times theirs. */
    topWall: { kind: 'length', above: 0 },
    /** Modulus of the walls. */
    wallModulus: { kind: 'modulus', above: 0 },
    /** Modulus of the core. */
    coreModulus: { kind: 'modulus', min: 0 },
    /** Density of the core over that of the solid. */
    relativeDensity: { kind: 'ratio', min: 0, max: 1 },
  },
  output: {
    /** Share of the section that is wall. */
    wallShare: 'ratio',
    /** Density of the bar over that of the solid. */
    massShare: 'ratio',
    /** Stiffness of a unit of length in pull, E A. */
    axialRigidity: 'axialRigidity',
    /** Stiffness in bending, E I. */
    bendingRigidity: 'bendingRigidity',
    /** Bending stiffness over that of a solid bar. */
    bendingShare: 'ratio',
    /** Section modulus that counts for the stress in the outer wall. */
    sectionModulus: 'sectionModulus',
  },
  assumes: ['walls and core strain together', 'core keeps the walls from buckling', 'shear of the core not counted: short bars are softer'],
  source: [{ level: 'commonPractice', where: 'transformed section, any text on mechanics of materials' }],
  requires: {
    sideWall: { accepts: 'must be at most half of the width', holds: ({ sideWall, width }) => 2 * sideWall <= width },
    topWall: { accepts: 'must be at most half of the height', holds: ({ topWall, height }) => 2 * topWall <= height },
    coreModulus: { accepts: 'must be at most that of the walls', holds: ({ coreModulus, wallModulus }) => coreModulus <= wallModulus },
  },
  si: ({ width, height, sideWall, topWall, wallModulus, coreModulus, relativeDensity }) => {
    const area = width * height
    const coreWidth = width - 2 * sideWall
    const coreHeight = height - 2 * topWall
    const core = coreWidth * coreHeight
    const inertia = (width * height ** 3) / 12
    const coreInertia = (coreWidth * coreHeight ** 3) / 12
    const bendingRigidity = wallModulus * (inertia - coreInertia) + coreModulus * coreInertia
    const wallShare = 1 - core / area
    return {
      wallShare,
      massShare: wallShare + (1 - wallShare) * relativeDensity,
      axialRigidity: wallModulus * (area - core) + coreModulus * core,
      bendingRigidity,
      bendingShare: bendingRigidity / (wallModulus * inertia),
      sectionModulus: bendingRigidity / wallModulus / (height / 2),
    }
  },
})

/**
 * The solid zone a fastener in a print needs, and whether the walls round its hole make it.
 * A screw, pin or insert in sparse infill has no strength that could be stated: outside the solid ring nothing is counted, and an infill below 70 %
 * is not accepted where the ring is too thin.
 */
export const fastenerZone = /* @__PURE__ */ formula('materials.fastenerZone', {
  title: 'solid zone around a fastener',
  inputs: {
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Number of walls round the hole. */
    wallCount: { kind: 'count', min: 1 },
    /** Width of a printed line. */
    lineWidth: { kind: 'length', above: 0 },
    /** Density of the infill around over that of the solid; 1 where the zone is set solid. */
    relativeDensity: { kind: 'ratio', min: 0, max: 1 },
    /** Diameter that must be solid: twice the hole unless the maker of the fastener states otherwise. */
    neededDiameter: { kind: 'length', above: 0, optional: true },
  },
  output: {
    /** Outer diameter of the solid ring of walls. */
    solidDiameter: 'length',
    /** Diameter that must be solid. */
    needed: 'length',
    /** Number of walls that would make it solid. */
    wallsNeeded: 'count',
    /** Whether a strength of solid material may be used for this fastener. */
    state: { oneOf: ['solid', 'denseInfill', 'refused'] },
  },
  equation: [
    'solidDiameter = holeDiameter + 2 * wallCount * lineWidth',
    'wallsNeeded == max(0, ceil((needed - holeDiameter) / (2 * lineWidth) - 1e-9))',
  ],
  assumes: ['walls fuse with each other'],
  source: [
    {
      level: 'published',
      where: 'Kastner et al. 2023, J. Manuf. Mater. Process. 7:42, abstract (heat-set inserts: about 70 % infill or enough walls)',
    },
    { level: 'assumption', where: 'solid to twice the diameter of the hole; a pull-out test should replace it' },
  ],
  si: ({ holeDiameter, wallCount, lineWidth, relativeDensity, neededDiameter }) => {
    const solidDiameter = holeDiameter + 2 * wallCount * lineWidth
    const needed = neededDiameter ?? 2 * holeDiameter
    const solid = relativeDensity >= 1 || solidDiameter >= needed * (1 - 1e-12)
    return {
      solidDiameter,
      needed,
      wallsNeeded: Math.max(0, Math.ceil((needed - holeDiameter) / (2 * lineWidth) - 1e-9)),
      state: solid ? 'solid' : relativeDensity >= 0.7 ? 'denseInfill' : 'refused',
    }
  },
})
