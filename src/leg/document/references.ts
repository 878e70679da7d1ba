import { materialByName } from '../../materials/index.js'
import { InputError, type Issue, issue } from '../../units/index.js'
import { meant, referencesOf, type Section } from '../schema/index.js'
import { documentFields } from './fields.js'

/** Sections whose things are of no use unless something names them. */
const NAMED_SECTIONS: readonly Section[] = [
  'motors',
  'controllers',
  'plates',
  'cords',
  'ends',
  'belts',
  'pins',
  'bosses',
  'bolts',
  'shafts',
  'bearings',
]

/** Names without a thing, and things that no name refers to. */
export function referenceIssues(data: Readonly<Record<string, unknown>>): Issue[] {
  const references = referencesOf(documentFields, data)
  const unknown = references.flatMap(({ path, to, name, also }): Issue[] => {
    if (also.includes(name)) return []
    const own = namesOf(data, to)
    if (own.includes(name)) return []
    const accepts =
      to === 'materials'
        ? materialProblem(name, own)
        : `must be one of the names under ${to}: ${[...also, ...own].join(', ') || 'none is given'}${meant(name, own)}`
    return accepts === undefined ? [] : [issue(path, name, accepts)]
  })
  const idle = NAMED_SECTIONS.flatMap((section) => {
    const used = new Set(references.filter(({ to }) => to === section).map(({ name }) => name))
    const own = namesOf(data, section)
    return own
      .filter((name) => !used.has(name))
      .map((name): Issue => {
        // What is misspelt where it is used is missing there, and idle here: the other message names what was meant.
        const near = meant(
          name,
          [...used].filter((name) => !own.includes(name)),
        )
        return { path: `${section}.${name}`, given: 'used by nothing', accepts: `must be named by a part that uses it, or removed${near}` }
      })
  })
  return [...unknown, ...idle]
}

function namesOf(data: Readonly<Record<string, unknown>>, section: Section): string[] {
  const things = data[section]
  return typeof things === 'object' && things !== null ? Object.keys(things) : []
}

function materialProblem(name: string, own: readonly string[]): string | undefined {
  try {
    materialByName(name)
    return undefined
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    const near = meant(name, own)
    return `must be the name of a material, of the table or of the section materials${near !== '' ? near : `; ${error.issues[0]?.accepts ?? ''}`}`
  }
}
