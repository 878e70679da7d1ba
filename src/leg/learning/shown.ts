import { type Kind, Quantity, significant } from '../../units/index.js'

/** Kinds of the fields that logs tell; those that are not here are plain ratios. */
const KINDS: Readonly<Record<string, Kind>> = {
  axialRigidity: 'axialRigidity',
  pretension: 'force',
  windingToMount: 'thermalResistance',
  specificHeat: 'specificHeat',
  speedConstant: 'speedConstant',
  noLoadCurrent: 'current',
}

/** Kind of a field by its path. */
export const kindOf = (path: string): Kind => KINDS[path.split('.').at(-1) as string] ?? 'ratio'

/** A number of a field as a reader would write it. */
export const shown = (path: string, x: number): string => {
  const kind = kindOf(path)
  return kind === 'ratio' ? significant(x, 4) : String(new Quantity(x, kind))
}
