import { readdirSync } from 'node:fs'
import folders from './folders.json' with { type: 'json' }

const { core, modules, tools } = folders

/** Chapters in the order of learning; others follow. */
const first = [
  'command-line',
  'units',
  'leg',
  'wish',
  'drawings',
  'test-stand',
  'stand-coverage',
  'capstan',
  'kinematics',
  'materials',
  'fasteners',
  'structures',
  'thermal',
  'study',
  'other-tools',
  'notebooks',
]
const last = ['material-values', 'glossary', 'cautions']
const chapters = readdirSync('docs/guide').flatMap((file) => (file.endsWith('.md') ? [file.slice(0, -'.md'.length)] : []))
const inOrder = [...first, ...chapters.filter((name) => !first.includes(name) && !last.includes(name)), ...last]

/** @type {Partial<import('typedoc').TypeDocOptions>} */
export default {
  name: 'limbwright',
  entryPoints: [...core, ...modules, ...tools].map((name) => `src/${name}/index.ts`),
  tsconfig: 'tsconfig.declarations.json',
  out: 'docs/reference',
  readme: 'README.md',
  projectDocuments: [...inOrder.map((name) => `docs/guide/${name}.md`), 'docs/validation.md'],
  searchInComments: true,
  searchInDocuments: true,
  plugin: [
    './scripts/typedoc-formulas.ts',
    './scripts/typedoc-imports.ts',
    './scripts/typedoc-related.ts',
    './scripts/typedoc-subjects.ts',
  ],
  sort: ['source-order'],
  groupOrder: ['Formulas', 'Functions', 'Variables', 'Classes', '*'],
  navigation: { includeCategories: true },
  excludeInternal: true,
  excludePrivate: true,
  validation: { notExported: false, invalidLink: true, notDocumented: true },
  requiredToBeDocumented: ['Function', 'Class', 'Interface', 'TypeAlias', 'Variable', 'Method', 'Enum'],
  // Parts of a type written in place, which the comment above it describes.
  intentionallyNotDocumented: [
    'formula.Curve.__type.si',
    'formula.Definition.requires.__type.__index.__type.holds',
    'formula.Definition.valid.__type.__index',
    'formula.AnyFormula.def.__type.valid.__type.__index',
    'formula.AnyFormula.def.__type.requires.__type.__index.__type.holds',
  ],
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
  // The pages carry no links to the source until the repository has an address.
  disableSources: true,
  hideGenerator: true,
  // Interfaces made from a type have no place in its summary, and links to it would lead nowhere.
  includeHierarchySummary: false,
}
