import { one } from '../report/amounts.js'
import { instanceName } from '../report/instance-words.js'
import type { Cell } from '../run/index.js'

/** Values of a material, in words; the stroke is the place of its name. */
const OF_MATERIAL: Readonly<Record<string, string>> = {
  'material.share.alongLayers': 'strength of – along the layers, as a share',
  'material.share.acrossLayers': 'strength of – across the layers, as a share',
  'material.share.interlayerShear': 'shear strength of – between layers, as a share',
  'material.share.dry': 'strength of – when dry, as a share',
  'material.share.conditioned': 'strength of – in room air, as a share',
  'material.share.saturated': 'strength of – when wet, as a share',
  'material.kept1000Hours': 'share of its strength that – keeps for 1000 hours',
  'material.kept1Year': 'share of its strength that – keeps for a year',
  'material.strengthActivation': 'activation energy of rupture of –',
  'material.strengthTransition': 'glass transition of – for strength',
  'material.shiftEnd': 'temperature above which the time shift of – stays the same',
}

/**
 * A leaf in words: `drive.friction` of the knee is `drive friction (knee)`, `material.strength` of ASA is `strength of ASA`. A path names a part of its
 * value.
 */
export function leafName(id: string, names: Readonly<Record<string, string>>, path = ''): string {
  const instances = Object.values(names).filter((name) => !['main', 'leg'].includes(name))
  const material = instances[0] ?? 'the material'
  const words =
    OF_MATERIAL[id]?.replace('–', material) ??
    (id.startsWith('material.')
      ? `${partsOf(id.slice('material.'.length))} of ${material}`
      : `${partsOf(id)}${instances.length === 0 ? '' : ` (${instances.map(instanceName).join(', ')})`}`)
  return path === '' ? words : `${words}: ${partsOf(path)}`
}

const partsOf = (path: string): string =>
  path
    .split('.')
    .map((part) => (/^\d+$/.test(part) ? `no. ${Number(part) + 1}` : one(part)))
    .join(' ')

/** The leaf of a cell in words. */
export const nameOf = ({ of, names }: Cell): string => leafName(of.id, names as Readonly<Record<string, string>>)
