interface NodeParts {
    readonly 'node:fs/promises': typeof import('node:fs/promises');
    readonly 'node:url': typeof import('node:url');
    readonly 'node:worker_threads': typeof import('node:worker_threads');
}
export declare const node: <N extends keyof NodeParts>(name: N) => Promise<NodeParts[N]>;
export {};
