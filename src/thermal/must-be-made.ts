import { refuse } from '../units/index.js'

/** Throws for a mount or a network that was not made by its function, which is the commonest slip in a call. */
export function requireMadeBy(where: string, path: string, given: unknown, maker: 'motorMount' | 'network'): void {
  const si = (given as { readonly si?: { readonly network?: unknown; readonly numbers?: unknown } } | null | undefined)?.si
  if ((maker === 'network' ? si?.numbers : si?.network) === undefined) refuse(where, path, given, `must be made by ${maker}`)
}
