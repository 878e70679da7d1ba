import { NoResultError, ValidityError } from '../formula/index.js'
import { InputError, type Issue } from '../units/index.js'

/** A mistake in a file, with the file's name. */
export class FileError extends Error {
  override readonly name = 'FileError'

  constructor(
    readonly file: string,
    cause: unknown,
  ) {
    super(`${file}: ${(cause as Error).message}`, { cause })
  }
}

/** Does some work on what a file says. Mistakes carry its name. */
export function inFile<T>(file: string, work: () => T): T {
  try {
    return work()
  } catch (error) {
    throw new FileError(file, error)
  }
}

/** One mistake as data. */
interface Mistake extends Issue {
  readonly file?: string
}

/** The mistakes behind an error; nothing where the error is a fault of the program. */
export function mistakesOf(error: unknown): readonly Mistake[] | undefined {
  if (error instanceof FileError) return mistakesOf(error.cause)?.map((mistake) => ({ file: error.file, ...mistake }))
  if (error instanceof InputError) return error.issues.map(placed)
  if (error instanceof NoResultError || error instanceof ValidityError) return [{ path: '', given: '', accepts: error.message }]
  const { code, message, path } = (error ?? {}) as NodeJS.ErrnoException
  if (typeof code !== 'string' || !/^E[A-Z]+$/.test(code)) return undefined
  const words = SYSTEM_ERRORS[code]
  return [{ path: path ?? '', given: '', accepts: path === undefined || words === undefined ? message : `${path}: ${words}` }]
}

/** What the system's codes mean, in words. */
const SYSTEM_ERRORS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'is a folder; a file is needed',
  EACCES: 'may not be read or written',
}

/** Text that cannot be parsed has its place in the path; here it is a place like any other. */
function placed(issue: Issue): Issue {
  const place = issue.path.match(/^line (\d+), column (\d+)$/)
  return place === null ? issue : { ...issue, path: 'text', line: Number(place[1]), column: Number(place[2]) }
}

/** A mistake as compilers print it: `leg.yaml:12:5: robot.mass is …`. Editors and CI jump to the place. */
export function mistakeText({ file, path, given, accepts, line, column }: Mistake): string {
  const place = [file, line, column].filter((part) => part !== undefined).join(':')
  const what = given === '' ? accepts : `${path === '' ? "''" : path} is ${given}; ${accepts}`
  return place === '' ? what : `${place}: ${what}`
}
