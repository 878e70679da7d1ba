import { PIVOT_WORDS, type Pivot } from '../parts/ball-bearings/pivots.js'
import { one } from '../report/amounts.js'
import { boltsName, instanceName } from '../report/instance-words.js'
import type { Cell } from '../run/index.js'

/**
 * A leaf in words. `friction of the belt on its pulleys` of the knee is followed by `(knee)`; a dash in a title is the place of the instance. Without a title the words
 * of the id stand for it. A path names a part of its value.
 */
export function leafName(id: string, names: Readonly<Record<string, string>>, path = '', title = partsOf(id)): string {
  const instances = Object.entries(names).filter(([, name]) => !['main', 'leg'].includes(name))
  const [first] = instances
  const words = title.includes('–')
    ? title.replace('–', first === undefined ? 'the material' : instanceWords(first))
    : `${title}${instances.length === 0 ? '' : ` (${instances.map(instanceWords).join(', ')})`}`
  return path === '' ? words : `${words}: ${partsOf(path)}`
}

/** An instance as it stands in a sentence; names of materials stay as they are. */
function instanceWords([index, name]: readonly [string, string]): string {
  if (index === 'material') return name
  if (index === 'pivot') return PIVOT_WORDS[name as Pivot]
  return index === 'boltGroup' ? boltsName(name) : instanceName(name)
}

const partsOf = (path: string): string =>
  path
    .split('.')
    .map((part) => (/^\d+$/.test(part) ? `no. ${Number(part) + 1}` : (TABLE_WORDS[part] ?? one(part))))
    .join(' ')

/** Columns of tables whose names need more words. */
const TABLE_WORDS: Readonly<Record<string, string>> = {
  screwMajorTolerance: 'tolerance of the outer diameter of the screw',
  screwPitchTolerance: 'tolerance of the pitch diameter of the screw',
  nutPitchTolerance: 'tolerance of the pitch diameter of the nut',
  nutMinorTolerance: 'tolerance of the inner diameter of the nut',
  allowance: 'allowance of the screw thread',
  acrossFlats: 'width across flats',
  rootArea: 'area at the root of the thread',
  rootDiameter: 'diameter at the root of the thread',
  leastHeight: 'least height',
}

/** The leaf of a cell in words. */
export const nameOf = ({ of, names }: Cell): string => leafName(of.id, names as Readonly<Record<string, string>>, '', of.leaf?.title)
