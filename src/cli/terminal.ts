/** Where the program reads and writes. */
export interface Terminal {
  /** A line of the result. */
  readonly out: (text: string) => void
  /** A line for the person who waits: progress and errors. */
  readonly note: (text: string) => void
  /** The text of a file, or of what is piped in where the name is `-`. */
  readonly readText: (name: string) => string
  /** Writes a file, with the folders above it. */
  readonly writeText: (name: string, text: string) => void
  /** Whether a file is there already. */
  readonly exists: (name: string) => boolean
  /** A file that the package carries, such as an example. */
  readonly packaged: (name: string) => string
}

/** How a run ended. A build that waits for the verdict takes it from the exit code. */
export const EXIT = {
  /** The work is done, and every check holds. */
  holds: 0,
  /** A check fails or is short of its required reserve. */
  falls: 1,
  /** The command line or a document cannot be used. */
  unusable: 2,
} as const

/** The code of a run. */
export type Exit = (typeof EXIT)[keyof typeof EXIT]

/** Reports each step and how long it took, on the stream for people. */
export function progress(terminal: Terminal, quiet: boolean): (text: string) => void {
  const started = performance.now()
  return (text) => {
    if (!quiet) terminal.note(`[${((performance.now() - started) / 1000).toFixed(1)} s] ${text}`)
  }
}
