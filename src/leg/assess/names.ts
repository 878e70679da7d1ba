import type { Cell } from '../run/index.js'

/** A name of a leaf in words: `drive.friction` of the knee is `drive friction (knee)`. */
export function nameOf({ of, names }: Cell): string {
  const words = of.id
    .replaceAll('.', ' ')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
  const instances = Object.values(names).filter((name) => !['main', 'leg'].includes(name))
  return instances.length === 0 ? words : `${words} (${instances.join(', ')})`
}
