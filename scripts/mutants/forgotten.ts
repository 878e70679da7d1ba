// Folders of `src` with code of their own that no entry of `folders.ts` covers: of those no mutant would ever be drawn.
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Folder } from './folders.js'

const COMMENT = /\/\*[\s\S]*?\*\/|\/\/.*$/gm
const PASSED_ON = /\b(?:import|export)\b[^'"]*from\s*['"][^'"]*['"];?/g

/** Whether a file does more than pass on what others export. */
const hasCode = (file: string) => readFileSync(file, 'utf8').replace(COMMENT, '').replace(PASSED_ON, '').trim() !== ''

const covers = ({ source, flat }: Folder, folder: string) => folder === source || (flat !== true && folder.startsWith(`${source}/`))

export function forgottenFolders(root: string, folders: readonly Folder[]): string[] {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  const paths = files.map((name) => join(root, name).replaceAll('\\', '/'))
  const withCode = new Set(paths.filter(hasCode).map((path) => dirname(path)))
  return [...withCode].filter((folder) => !folders.some((one) => covers(one, folder))).sort()
}
