// Counts words that do not belong in plain technical prose, and sentences that are too long to be read once.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** Things do not ask, tell, say, want or hang; the verb of the trade says what they do. Each has a plain replacement. */
const WORDS =
  /\b(asked|asks|wanted|told|said|says so|refused|refuses|gives? way|gives? first|hangs? on|stands? under|comes? to (?:no )?rest|evenly|without end|for ever|taken as|left out, none|bad end|good end)\b/gi

const LONGEST_SENTENCE = 30

const count = (text: string) => text.match(WORDS)?.length ?? 0

/** Counts by place: guide pages by file, the source by folder. */
export type Counts = Readonly<Record<string, Readonly<Record<string, number>>>>

/** The words and long sentences of every page, and the words in the strings and comments of every folder of the source. */
export function proseCounts(): Counts {
  const guide = readdirSync(`${root}docs/guide`).filter((file) => file.endsWith('.md') && file !== 'material-values.md')
  const pages = ['README.md', 'DEVELOPERS.md', ...guide.map((file) => `docs/guide/${file}`)]
  const folders = readdirSync(`${root}src`, { withFileTypes: true }).filter((each) => each.isDirectory())
  return Object.fromEntries([
    ...pages.sort().map((page) => [page, pageCounts(readFileSync(root + page, 'utf8'))] as const),
    ...folders.map(({ name }) => [`src/${name}`, folderCounts(`${root}src/${name}`)] as const).sort(([a], [b]) => (a < b ? -1 : 1)),
  ])
}

/** Words and long sentences of a page. */
export function pageCounts(markdown: string): { words: number; longSentences: number } {
  const sentences = sentencesOf(markdown)
  return { words: sentences.reduce((sum, text) => sum + count(text), 0), longSentences: sentences.filter(isLong).length }
}

const isLong = (sentence: string) => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length > LONGEST_SENTENCE

/** The sentences of a page's running text: no code, no tables, no headings' marks, no addresses of links. */
export function sentencesOf(markdown: string): string[] {
  const prose = markdown
    .replaceAll(/^(```|~~~)[\s\S]*?^\1.*$/gm, '')
    .replaceAll(/<!--[\s\S]*?-->/g, '')
    .replaceAll(/`[^`\n]*`/g, 'code')
    .replaceAll(/\]\([^)]*\)/g, ']')
    .replaceAll(/^\|.*$/gm, '')
    .replaceAll(/^ {4}.*$/gm, '')
  return prose
    .split(/\n\s*\n|\n(?=\s*(?:[-*]|\d+\.|#+) )/)
    .flatMap((block) => block.replaceAll(/\s+/g, ' ').split(/(?<=[.!?:])[*_)]*\s+/))
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '')
}

function folderCounts(folder: string): { strings: number; comments: number } {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
  const texts = files.map((file) => textsOf(readFileSync(`${folder}/${file}`, 'utf8')))
  const sum = (of: 'strings' | 'comments') => texts.reduce((total, each) => total + each[of].reduce((n, text) => n + count(text), 0), 0)
  return { strings: sum('strings'), comments: sum('comments') }
}

/** The strings with a blank in them, and the comments of a source file. */
export function textsOf(code: string): { strings: string[]; comments: string[] } {
  const source = ts.createSourceFile('file.ts', code, ts.ScriptTarget.Latest, true)
  const strings: string[] = []
  const comments = new Map<number, string>()
  const visit = (node: ts.Node): void => {
    for (const range of [
      ...(ts.getLeadingCommentRanges(code, node.getFullStart()) ?? []),
      ...(ts.getTrailingCommentRanges(code, node.end) ?? []),
    ])
      comments.set(range.pos, code.slice(range.pos, range.end))
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      if (/\s/.test(node.text)) strings.push(node.text)
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return { strings, comments: [...comments.values()] }
}

const file = fileURLToPath(new URL('prose-counts.json', import.meta.url))

/** The committed counts: no count may be larger. */
export const committedCounts = (): Counts => (existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Counts) : {})

/** Where the committed counts are kept. */
export const countsFile = file
