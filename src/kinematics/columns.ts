/** A record of typed arrays that `JSON.stringify` writes as plain lists. */
export function withLists<T extends object>(record: T): T & { toJSON(): Record<string, unknown> } {
  return Object.defineProperty(record, 'toJSON', {
    value: () => Object.fromEntries(Object.entries(record).map(([name, x]) => [name, ArrayBuffer.isView(x) ? Array.from(x as never) : x])),
  }) as never
}
