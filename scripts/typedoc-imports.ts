// Writes under each description on the reference pages from where the name is imported.
import { type Application, type Comment, type Context, Converter, type DeclarationReflection, ReflectionKind } from 'typedoc'

const IMPORTED = ReflectionKind.Function | ReflectionKind.Class | ReflectionKind.Variable

export function load(app: Application) {
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }: Context) => {
    for (const each of project.getReflectionsByKind(IMPORTED)) {
      const reflection = each as DeclarationReflection
      const { name, parent } = reflection
      if (parent === undefined || !parent.kindOf(ReflectionKind.Module)) continue
      const comments = [reflection.comment, ...(reflection.signatures ?? []).map(({ comment }) => comment)]
      for (const comment of comments) if (comment !== undefined) addImport(comment, name, parent.name)
    }
  })
}

/** After the first paragraph, which is what lists show. */
function addImport(comment: Comment, name: string, module: string) {
  if (comment.summary.some(({ text }) => text.includes(`from 'limbwright/${module}'`))) return
  comment.summary.push({ kind: 'text', text: `\n\n\`\`\`ts\nimport { ${name} } from 'limbwright/${module}'\n\`\`\`` })
}
