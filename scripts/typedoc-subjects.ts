// Writes on each module's page what it holds by subject, with a sentence each. The subjects are the headings of the module's index.ts.
import { readFileSync } from 'node:fs'
import {
  Application,
  Comment,
  type CommentDisplayPart,
  CommentTag,
  type Context,
  Converter,
  type DeclarationReflection,
  ReflectionKind,
} from 'typedoc'
import ts from 'typescript'
import folders from '../folders.json' with { type: 'json' }

const LISTED = ReflectionKind.Function | ReflectionKind.Class | ReflectionKind.Variable
const HEADING = /^\/\/ (.+)$/gm

const indexOf = (module: string) => `src/${module}/index.ts`

export function load(app: Application) {
  const modules = [...folders.core, ...folders.modules, ...folders.tools]
  const titles = modules.flatMap((module) => [...readFileSync(indexOf(module), 'utf8').matchAll(HEADING)].map(([, title = '']) => title))
  // The options are read once more after the plugins are loaded.
  app.on(Application.EVENT_BOOTSTRAP_END, () =>
    app.options.setValue('categoryOrder', [...new Set(titles.filter((title) => title !== 'Charts')), 'Charts', '*']),
  )
  // Before the plugins that lengthen the comments: the first sentence stands alone here.
  app.converter.on(
    Converter.EVENT_RESOLVE_BEGIN,
    (context: Context) => {
      for (const module of context.project.getReflectionsByKind(ReflectionKind.Module) as DeclarationReflection[]) {
        const subjects = subjectsOf(context, module.name)
        if (subjects.size === 0) continue
        for (const child of module.children ?? []) {
          const title = subjects.get(child.name)
          if (title === undefined) app.logger.error(`${module.name}.${child.name} stands under no heading of ${indexOf(module.name)}`)
          else commentOf(child).blockTags.push(new CommentTag('@category', [{ kind: 'text', text: title }]))
        }
        module.comment ??= new Comment()
        module.comment.summary.push(...contents(module, subjects))
      }
    },
    1,
  )
  app.converter.on(Converter.EVENT_RESOLVE_END, ({ project: { readme } }: Context) => {
    const [start] = readme ?? []
    // The page shows the project's name above the README, which begins with it.
    if (start !== undefined) start.text = start.text.replace(/^\s*# .*\n/, '')
  })
}

/** The heading above the export of each name; none where an index has no headings. */
function subjectsOf(context: Context, module: string): ReadonlyMap<string, string> {
  const subjects = new Map<string, string>()
  const path = `${process.cwd()}/${indexOf(module)}`
  const program = context.programs.find((each) => each.getSourceFile(path) !== undefined)
  const file = program?.getSourceFile(path)
  if (program === undefined || file === undefined) return subjects
  const checker = program.getTypeChecker()
  const headings = [...file.text.matchAll(HEADING)]
  for (const statement of file.statements) {
    const title = headings.filter(({ index }) => index < statement.getStart(file)).at(-1)?.[1]
    if (title === undefined || !ts.isExportDeclaration(statement) || statement.moduleSpecifier === undefined) continue
    for (const name of namesOf(checker, statement, statement.moduleSpecifier)) subjects.set(name, title)
  }
  return subjects
}

function namesOf(checker: ts.TypeChecker, { exportClause }: ts.ExportDeclaration, from: ts.Expression): string[] {
  if (exportClause !== undefined && ts.isNamedExports(exportClause)) return exportClause.elements.map(({ name }) => name.text)
  const symbol = checker.getSymbolAtLocation(from)
  return symbol === undefined ? [] : checker.getExportsOfModule(symbol).map(({ name }) => name)
}

function commentOf(page: DeclarationReflection): Comment {
  const owner = page.signatures?.[0] ?? page
  owner.comment ??= new Comment()
  return owner.comment
}

function contents(module: DeclarationReflection, subjects: ReadonlyMap<string, string>): CommentDisplayPart[] {
  const listed = (module.children ?? []).filter((child) => child.kindOf(LISTED) && subjects.has(child.name))
  return [...new Set(subjects.values())].flatMap((title): CommentDisplayPart[] => {
    const rows = listed.filter(({ name }) => subjects.get(name) === title)
    if (rows.length === 0) return []
    return [
      { kind: 'text', text: `\n\n### ${title}\n\n| name | what it gives |\n|---|---|` },
      ...rows.flatMap((target): CommentDisplayPart[] => [
        { kind: 'text', text: '\n| ' },
        { kind: 'inline-tag', tag: '@link', text: target.name, target },
        { kind: 'text', text: ` | ${firstSentence(commentOf(target))} |` },
      ]),
    ]
  })
}

function firstSentence({ summary }: Comment): string {
  const text = summary
    .map((part) => part.text)
    .join('')
    .replaceAll(/\s+/g, ' ')
    .trim()
  return (/^.*?[.:](?= [A-Z*`]|$)/.exec(text)?.[0] ?? text).replaceAll('|', '\\|').replaceAll('<', '&lt;')
}
