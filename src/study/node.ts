/** The parts of Node that long sweeps use. */
interface NodeParts {
  readonly 'node:fs/promises': typeof import('node:fs/promises')
  readonly 'node:os': typeof import('node:os')
  readonly 'node:url': typeof import('node:url')
  readonly 'node:worker_threads': typeof import('node:worker_threads')
}

/** A part of Node, by a name that bundlers do not follow: everything else here runs in browsers too, and bundles for them. */
export const node = <N extends keyof NodeParts>(name: N): Promise<NodeParts[N]> =>
  import(/* @vite-ignore */ /* webpackIgnore: true */ name) as Promise<NodeParts[N]>
