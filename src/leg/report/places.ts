import { PIVOT_WORDS, type Pivot } from '../parts/ball-bearings/pivots.js'
import type { Names } from '../run/index.js'
import { one } from './amounts.js'
import { AGE_WORDS, AIR_WORDS, boltsName, EVENT_WORDS, instanceName } from './instance-words.js'

/** Indices whose instances say where a step belongs; those of which a leg has one are left out. */
const SHOWN = [
  'joint',
  'link',
  'boltGroup',
  'pivot',
  'material',
  'motor',
  'cord',
  'plate',
  'controller',
  'stance',
  'event',
  'air',
  'age',
] as const
/** More instances than this are not listed. */
const MAX_PLACES = 3

/** Where a step belongs: `knee, drop, cold air`. Instances that share the step stand together. */
export const placesText = (places: readonly Partial<Names>[]): string => placesParts(places).join(', ')

/** The same, index by index. */
function placesParts(places: readonly Partial<Names>[]): string[] {
  return SHOWN.flatMap((index) => {
    const names = [...new Set(places.flatMap((names) => names[index] ?? []))].filter((name) => name !== 'main')
    if (names.length === 0) return []
    return names.length > MAX_PLACES ? [] : [names.map((name) => instanceWords(index, name)).join(' and ')]
  })
}

/** Letters that have to be saved by what several steps have in common, before it stands apart. */
const WORTH = 8

/** Where each of several steps belongs, and what of that they have in common. */
export function placesTexts(steps: readonly (readonly Partial<Names>[])[]): { readonly common: string; readonly own: readonly string[] } {
  const parts = steps.map(placesParts)
  const shared = (parts[0] ?? []).filter((part) => parts.every((each) => each.includes(part)))
  const common = shared.join(', ')
  const own = parts.map((each) => each.filter((part) => !shared.includes(part)).join(', '))
  const whole = steps.map(placesText)
  return whole.join('').length - own.join('').length - common.length < WORTH ? { common: '', own: whole } : { common, own }
}

function instanceWords(index: (typeof SHOWN)[number], name: string): string {
  if (index === 'event' || index === 'stance') return EVENT_WORDS[name] ?? one(name)
  if (index === 'air') return AIR_WORDS[name] ?? one(name)
  if (index === 'age') return AGE_WORDS[name] ?? one(name)
  if (index === 'pivot') return PIVOT_WORDS[name as Pivot]
  if (index === 'link') return `${name} link`
  if (index === 'material') return name
  return index === 'boltGroup' ? boltsName(name) : instanceName(name)
}
