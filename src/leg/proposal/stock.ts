import { braidAxialRigidity, cordFibre, type FibreName } from '../../capstan/index.js'
import type { LegWishData } from './wish-fields.js'

/** Entries of the builder's lists that one leg uses. */
export interface LegStock {
  /** Name of the motor in the wish. */
  readonly motor: string
  /** Name of the cord in the wish. */
  readonly cord: string
  /** Polymer of links, plate and bosses, and that of the drums. */
  readonly frame: string
  /** Polymer of the drums. */
  readonly drum: string
}

/** Share of the filament's strength that a braid realises, and the angle of its strands: the middle of what rope practice has. */
const REALISATION = 0.65
const BRAID_ANGLE = (20 * Math.PI) / 180

/** Axial rigidity of a bedded-in braid from its breaking strength and fibre, N: the fibre area that the strength needs, at the fibre's modulus. */
export function cordRigidity({ fibre, breakingStrength }: LegWishData['cords'][string]): number {
  const { density, strength, modulus } = cordFibre(fibre as FibreName)
  const massPerLength = (breakingStrength.si / (REALISATION * strength.si)) * density.si
  return braidAxialRigidity.si({
    filamentModulus: modulus.si,
    filamentDensity: density.si,
    massPerLength,
    braidAngle: BRAID_ANGLE,
    lateralRatio: 0.5,
  })
}

/** Share of the pretension that is left after a season: lowest, typical, highest. UHMWPE creeps more than the others. */
export const pretensionLeft = (fibre: string): [number, number, number] =>
  fibre.startsWith('UHMWPE') ? [0.5, 0.65, 0.8] : [0.75, 0.85, 0.95]
