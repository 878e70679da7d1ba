import { katex } from '@mdit/plugin-katex'
import folders from './folders.json' with { type: 'json' }

const { core, modules, tools } = folders

/** @type {Partial<import('typedoc').TypeDocOptions>} */
export default {
  name: 'limbwright',
  entryPoints: [...core, ...modules, ...tools].map((name) => `src/${name}/index.ts`),
  tsconfig: 'tsconfig.declarations.json',
  out: 'docs/reference',
  readme: 'README.md',
  projectDocuments: ['docs/guide/*.md'],
  plugin: ['./scripts/typedoc-formulas.ts'],
  sort: ['source-order'],
  groupOrder: ['Formulas', 'Functions', 'Variables', 'Classes', '*'],
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
  disableSources: false,
  sourceLinkTemplate: '{path}#L{line}',
  disableGit: true,
  hideGenerator: true,
  markdownItLoader(parser) {
    parser.use(katex, { output: 'mathml' })
  },
}
