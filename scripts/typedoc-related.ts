// Writes on the reference pages an example from the guide, where one uses the name, and under "See also" the chapters with examples of it and what stands beside
// it in the source: one file is one subject.
import { readFileSync } from 'node:fs'
import {
  type Application,
  Comment,
  type CommentDisplayPart,
  type Context,
  Converter,
  type DeclarationReflection,
  type Reflection,
  ReflectionKind,
} from 'typedoc'
import { allExamples, type Example } from '../tests/docs/extract.js'

const PAGES = ReflectionKind.Function | ReflectionKind.Class | ReflectionKind.Variable
/** Lines of an example that a page shows; longer ones are linked alone. */
const LONGEST = 60
const MOST_RELATED = 8

export function load(app: Application) {
  // After the plugin of the formulas, whose pages have an example of their own where a check can be written down.
  app.converter.on(
    Converter.EVENT_RESOLVE_BEGIN,
    (context: Context) => {
      const { project } = context
      const guide = allExamples().filter(({ file }) => file.startsWith('docs/guide/'))
      const chapters = new Map(project.getReflectionsByKind(ReflectionKind.Document).map((each) => [each.name, each]))
      const pages = (project.getReflectionsByKind(PAGES) as DeclarationReflection[]).filter(
        ({ parent }) => parent?.kindOf(ReflectionKind.Module) === true,
      )
      const subject = (page: DeclarationReflection) => context.getSymbolFromReflection(page)?.declarations?.[0]?.getSourceFile().fileName
      const besides = new Map<string | undefined, DeclarationReflection[]>()
      for (const page of pages) besides.set(subject(page), [...(besides.get(subject(page)) ?? []), page])
      for (const page of pages) {
        const uses = guide.filter(({ code }) => imports(code, page.name, page.parent?.name ?? ''))
        const beside = (besides.get(subject(page)) ?? []).filter((other) => other !== page).slice(0, MOST_RELATED)
        const chaptersOf = [...new Set(uses.map(({ file }) => chapterOf(file)))].flatMap((name) => chapters.get(name) ?? [])
        for (const comment of commentsOf(page)) write(comment, uses, [...chaptersOf, ...beside])
      }
    },
    -1,
  )
}

/** The title of a page of the guide, by which it is listed. */
const chapterOf = (file: string) => /^title: (.*)$/m.exec(readFileSync(file, 'utf8'))?.[1] ?? ''

/** Whether an example imports a name from its module. */
const imports = (code: string, name: string, module: string) =>
  [...code.matchAll(/import \{([^}]*)\} from '([^']*)'/g)].some(
    ([, names = '', from]) => from === `limbwright/${module}` && new RegExp(`\\b${name}\\b`).test(names),
  )

function commentsOf(page: DeclarationReflection): Comment[] {
  const [signature] = page.signatures ?? []
  const owner = signature ?? page
  owner.comment ??= new Comment()
  return [owner.comment]
}

function write(comment: Comment, uses: readonly Example[], related: readonly Reflection[]) {
  const hasExample = comment.summary.some(({ text }) => text.includes('**Example**'))
  const [best] = uses
    .map(({ code, runs }) => ({ code: code.replaceAll(/\n{3,}/g, '\n\n').trim(), runs }))
    .filter(({ code }) => code.split('\n').length <= LONGEST)
    .sort((a, b) => Number(b.runs) - Number(a.runs) || a.code.length - b.code.length)
  if (!hasExample && best !== undefined)
    comment.summary.push({
      kind: 'text',
      text: `\n\n**Example**${best.runs ? ', which runs as a test' : ''}:\n\n\`\`\`ts\n${best.code}\n\`\`\``,
    })
  if (related.length === 0) return
  const links = related.flatMap((target, i): CommentDisplayPart[] => [
    ...(i === 0 ? [] : [{ kind: 'text' as const, text: ', ' }]),
    { kind: 'inline-tag', tag: '@link', text: titleOf(target), target },
  ])
  comment.summary.push({ kind: 'text', text: '\n\n**See also** ' }, ...links)
}

const titleOf = ({ name, kind }: Reflection) => (kind === ReflectionKind.Document ? `the chapter ${name}` : name)
